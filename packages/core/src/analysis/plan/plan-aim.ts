import { InputError } from '../../base/faults.js';
import type { Model } from '../../model/model.js';
import { costsOf } from '../../result/costs.js';
import type { Run } from '../../run/run.js';
import { type AdviceOutcome, aimOf, type RunHarm } from '../advice/run-harm.js';
import { NoAnswerError } from '../measures/phrase.js';
import { measureOf } from '../measures/measure.js';
import type { PlanTrial } from './plan-search.js';

/** What a plan is to have most or least of. */
export interface PlanAim {
  /** As written. */
  readonly text: string;
  readonly unit: string;
  readonly want: 'most' | 'least';
  /** How much of it a run gives; NaN where it has no answer. */
  of(run: Run, outcome: AdviceOutcome): number;
}

/** Aims in a word: what each is counted in. */
const words: Readonly<Record<string, Pick<PlanAim, 'unit' | 'of'>>> = {
  harvest: { unit: 'kg', of: (_run, { crops }) => crops },
  fish: { unit: 'kg', of: (_run, { fish }) => fish },
  water: { unit: 'm3', of: (_run, { water }) => water },
  feed: { unit: 'kg', of: (_run, { feed }) => feed },
  income: {
    unit: '',
    of: (run) => {
      const costs = costsOf(run);
      return costs === undefined ? Number.NaN : costs.earned - costs.spent;
    },
  },
};

/**
 * Reads an aim: `most` or `least`, and `harvest` (crops, kg fresh), `fish` (kg gained), `water` (m3 taken in), `feed`,
 * `income` (what is left over by the prices of the file), or a measure: see `measureOf`. Throws InputError with every fault.
 */
export function planAim(text: string, model: Model): PlanAim {
  const fault = (problem: string, expected: string): InputError =>
    new InputError([{ file: '--aim', got: JSON.stringify(text), problem, expected }]);
  const match = /^\s*(most|least)\s+(\S.*?)\s*$/.exec(text);
  if (match === null)
    throw fault('not an aim', `most or least, and ${Object.keys(words).join(', ')} or a measure`);
  const want = match[1] === 'most' ? 'most' : 'least';
  const [, , what] = match;
  if (what === 'income' && model.scenario.prices === undefined)
    throw fault('no prices in this file', 'a section `prices`');
  if (Object.hasOwn(words, what)) return { text: `${want} ${what}`, want, ...words[what] };
  const measure = measureOf(what, model, '--aim');
  return {
    ...{ text: `${want} ${measure.text}`, want, unit: measure.unit },
    of: (run) => {
      try {
        return measure.of(run);
      } catch (error) {
        if (!(error instanceof NoAnswerError)) throw error;
        return Number.NaN;
      }
    },
  };
}

const kinds: readonly (keyof RunHarm)[] = [
  ...(['missing', 'died', 'lethal', 'harmful', 'broken', 'water', 'salt'] as const),
];

/**
 * Holds a run of a choice (`at` the step of each quantity) against an aim: it holds where nothing harms fish, water or crops, the reservoir is never low, and every
 * condition of one's own is kept. Of aims that are alike the one with more crops and fish is better.
 */
export function planTrial(at: readonly number[], run: Run, outcome: AdviceOutcome, aim: PlanAim): PlanTrial {
  const { harm, verdict } = outcome;
  const amount = aim.of(run, outcome);
  const known = Number.isFinite(amount);
  return {
    at,
    holds: known && aimOf(harm) !== 'harm' && verdict.water.state === 'enough',
    aim: known ? (aim.want === 'most' ? amount : -amount) : 0,
    beside: outcome.crops + outcome.fish,
    harm: [...kinds.map((kind) => harm[kind]), verdict.water.lowDays],
  };
}

/** The trial of a choice (`at` the step of each quantity) that makes no system at all: worse than any that does. */
export function noTrial(at: readonly number[]): PlanTrial {
  return { at, holds: false, aim: 0, beside: 0, harm: [...kinds.map(() => Infinity), Infinity] };
}
