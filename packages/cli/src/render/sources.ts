import type { BibliographyEntry } from '@leat/core';
import { wrap } from './columns.js';

/** How a number came here, by its mark. */
export const marks: Readonly<Record<string, string>> = {
  R: 'read in the publication',
  S: 'second-hand',
  C: 'computed from it',
  M: 'from memory of it',
  W: 'from memory, digits uncertain',
  P: 'common practice',
  U: 'given by the scenario',
};

/** The bibliography of a run: what it used, from where, and how that came here. */
export function sourceLines(entries: readonly BibliographyEntry[]): readonly string[] {
  return [
    'Sources of the numbers that were used',
    ...entries.flatMap(({ key, citation, mark, ids }) => [
      ...wrap(`[${mark}: ${marks[mark]}] ${key}: ${citation}`, 98, '  '),
      ...wrap(`  ${ids.join(' ')}`, 98, '  '),
    ]),
  ];
}
