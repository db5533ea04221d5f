import { courseSets, type Maker } from '../pictures/index.js';
import { courseFigures } from './course-figures.js';
import { byTrouble } from './course-troubles.js';
import { section } from './elements.js';
import type { RunSummary } from './run-summary.js';

/** Most charts of limits passed that stand with the limits: of one run, and of several side by side. */
const mostWorst = { one: 3, many: 1 } as const;

const worstOf = (runs: readonly RunSummary[]): number => (runs.length > 1 ? mostWorst.many : mostWorst.one);

/** The charts of the worst limits passed, for the section of limits; none where all were kept. */
export function worstCharts(maker: Maker, runs: readonly RunSummary[]): readonly HTMLElement[] {
  const { troubled } = byTrouble(courseSets(runs, maker.display), runs, maker.display);
  const worst = troubled.slice(0, worstOf(runs));
  return worst.length === 0 ? [] : [courseFigures(maker, worst, runs)];
}

/** The courses of what matters, those in trouble first, with limits drawn in; several runs side by side on the same scales. */
export function coursesSection(maker: Maker, runs: readonly RunSummary[]): HTMLElement {
  const words = maker.display.words.report.courses;
  const { troubled, others } = byTrouble(courseSets(runs, maker.display), runs, maker.display);
  const shownAbove = troubled.slice(0, worstOf(runs));
  const sets = [...troubled.slice(worstOf(runs)), ...others];
  const stands = sets.filter(({ panel }) => panel === true);
  const banded = runs.some(({ ensemble }) => ensemble !== undefined);
  const above = shownAbove.map(({ title }) => title).join(', ');
  return section(
    maker,
    'courses',
    words.title,
    maker.html(
      'p',
      { class: 'note' },
      runs.length > 1 ? words.many : words.one,
      ...(stands.length > 0 ? [` ${words.stands}`] : []),
      ...(above === '' ? [] : [` ${words.above(above)}`]),
      ...(banded ? [` ${words.bands}`] : []),
    ),
    courseFigures(
      maker,
      sets.filter(({ panel }) => panel !== true),
      runs,
    ),
    ...(stands.length === 0 ? [] : [courseFigures(maker, stands, runs)]),
  );
}
