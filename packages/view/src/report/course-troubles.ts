import { type LimitResult, worstFirst } from '@leat/core';
import type { CourseSet } from '../pictures/index.js';
import { boundPhrase, dayNames, type Display, plain } from '../text/index.js';
import type { RunSummary } from './run-summary.js';

/** What went wrong with one quantity in one run. */
export interface CourseTrouble {
  readonly letter: string;
  /** For the order of charts: by harm, then by how long. */
  readonly limit: Pick<LimitResult, 'harm' | 'total'>;
  readonly text: string;
  /** Whether it harms neither fish nor crops: advice for a crop or a design, or a criterion of release. */
  readonly advice: boolean;
}

/** Harms that are advice; too much chloride is what a verdict calls salt. */
const advised: ReadonlySet<string> = new Set(['crop', 'design', 'release']);

/** The worst limit of a quantity that each run passed: none where it kept all of them. */
export function troublesOf(
  { quantity }: CourseSet,
  runs: readonly RunSummary[],
  display: Display,
): readonly CourseTrouble[] {
  const words = display.words.report.courses;
  return runs.flatMap(({ letter, account }): CourseTrouble[] => {
    const on = dayNames(account.startDate, display);
    if (quantity === 'volume') {
      const { state, lowDays, lowFirst } = account.verdict.water;
      if (state === 'enough' || lowFirst === undefined) return [];
      const text = words.belowFloat(on(lowFirst));
      return [{ letter, limit: { harm: 'design', total: lowDays }, text, advice: false }];
    }
    const [worst] = account.limits
      .filter((limit) => limit.passed && limit.quantity === quantity)
      .sort(worstFirst);
    if (worst === undefined) return [];
    const from = worst.first === undefined ? '' : words.from(on(worst.first));
    const whom = worst.whom === '' ? '' : words.forWhom(plain(worst.whom, display));
    const text = words.passed(boundPhrase(worst, display), whom, worst.place, from);
    const advice = advised.has(worst.harm) && quantity !== 'chloride';
    return [{ letter, limit: worst, text, advice }];
  });
}

/** The mark over a chart in trouble, in words; milder where only advice was passed. */
export function troubleText(
  troubles: readonly CourseTrouble[],
  runs: readonly RunSummary[],
  { words }: Display,
): string {
  const many = runs.length > 1;
  const list = troubles.map(({ letter, text }) => (many ? `${letter} ${text}` : text));
  const { advice, trouble } = words.report.courses;
  return (troubles.every((each) => each.advice) ? advice : trouble)(list.join('; '));
}

/** Sets of courses parted into those in trouble, the worst at the head, and the others in their order. */
export function byTrouble(
  sets: readonly CourseSet[],
  runs: readonly RunSummary[],
  display: Display,
): { readonly troubled: readonly CourseSet[]; readonly others: readonly CourseSet[] } {
  const judged = sets.map((set) => ({
    set,
    worst: troublesOf(set, runs, display)
      .map(({ limit }) => limit)
      .sort(worstFirst)
      .at(0),
  }));
  const troubled = judged.flatMap(({ set, worst }) => (worst === undefined ? [] : [{ set, worst }]));
  return {
    troubled: troubled.sort((a, b) => worstFirst(a.worst, b.worst)).map(({ set }) => set),
    others: judged.filter(({ worst }) => worst === undefined).map(({ set }) => set),
  };
}
