import { marks, type BibliographyEntry } from '@leat/core';
import { wrap } from './columns.js';

/** The bibliography of a run: what it used, from where, and how that came here. */
export function sourceLines(entries: readonly BibliographyEntry[]): readonly string[] {
  return [
    'Sources of the numbers that were used',
    ...entries.flatMap(({ key, citation, mark, given, ids }) => [
      ...wrap(
        `[${mark}: ${marks[mark]}] ${key === citation ? '' : `${key}: `}${citation}` +
          (given === undefined ? '' : ` (given in ${given})`),
        98,
        '  ',
      ),
      ...wrap(`  ${ids.join(' ')}`, 98, '  '),
    ]),
  ];
}
