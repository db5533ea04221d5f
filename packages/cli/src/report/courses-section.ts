import { courseSets, type Maker } from '@leat/view/pictures';
import { courseFigures } from './course-figures.js';
import { byTrouble } from './course-troubles.js';
import { section } from './elements.js';
import type { RunSummary } from './run-summary.js';

/** Most charts of limits passed that stand with the limits: of one run, and of several side by side. */
const mostWorst = { one: 3, many: 1 } as const;

const worstOf = (runs: readonly RunSummary[]): number => (runs.length > 1 ? mostWorst.many : mostWorst.one);

/** The charts of the worst limits passed, for the section of limits; none where all were kept. */
export function worstCharts(maker: Maker, runs: readonly RunSummary[]): readonly HTMLElement[] {
  const { troubled } = byTrouble(courseSets(runs), runs);
  const worst = troubled.slice(0, worstOf(runs));
  return worst.length === 0 ? [] : [courseFigures(maker, worst, runs)];
}

const oneText =
  'Lines are the water of the first fish tank; the shade behind is the lowest and the highest of all vessels. Limits are ' +
  'published means over hours or days and are judged as such in the table of limits.';
const manyText =
  'All runs of a row share their scales. The faint dotted line behind is the first run. Lines are the water of the first ' +
  'fish tank; the shade is the lowest and the highest of all vessels.';
const standText = 'Of crops a thin line is one batch, as it stands; it falls when the batch is harvested.';
const bandNote =
  'Where many runs with numbers drawn from their ranges were made, bands stand in place of that shade: the inner holds ' +
  'half of them, the outer nine tenths, and the dotted line is their median. Where the outer band is so wide that it would ' +
  'press the lines together, it ends at the frame, and the words below say how far it reaches.';

/** The courses of what matters, those in trouble first, with limits drawn in; several runs side by side on the same scales. */
export function coursesSection(maker: Maker, runs: readonly RunSummary[]): HTMLElement {
  const { troubled, others } = byTrouble(courseSets(runs), runs);
  const shownAbove = troubled.slice(0, worstOf(runs));
  const sets = [...troubled.slice(worstOf(runs)), ...others];
  const stands = sets.filter(({ panel }) => panel === true);
  const banded = runs.some(({ ensemble }) => ensemble !== undefined);
  const above = shownAbove.map(({ title }) => title).join(', ');
  return section(
    maker,
    'courses',
    'How it went, day by day',
    maker.html(
      'p',
      { class: 'note' },
      runs.length > 1 ? manyText : oneText,
      ...(stands.length > 0 ? [` ${standText}`] : []),
      ...(above === '' ? [] : [` Charts that stand with the limits passed: ${above}.`]),
      ...(banded ? [` ${bandNote}`] : []),
    ),
    courseFigures(
      maker,
      sets.filter(({ panel }) => panel !== true),
      runs,
    ),
    ...(stands.length === 0 ? [] : [courseFigures(maker, stands, runs)]),
  );
}
