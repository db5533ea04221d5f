import type { PlainFile } from '../analysis/advice/file-edit.js';
import { adviceOutcome, type AdviceOutcome } from '../analysis/advice/run-harm.js';
import { conditionOf } from '../analysis/measures/condition.js';
import { noTrial, planAim, type PlanAim, planTrial } from '../analysis/plan/plan-aim.js';
import { dosersPerWeek, planStart, type PlanWeek, planWeeks } from '../analysis/plan/plan-calendar.js';
import { planQuantity, type PlanQuantity, usualQuantities } from '../analysis/plan/plan-quantity.js';
import { type PlanFound, type PlanTrial, planValue } from '../analysis/plan/plan-search.js';
import { withRation } from '../analysis/plan/ration.js';
import { basisOf } from '../analysis/uncertainty/members.js';
import { openRuns } from '../analysis/uncertainty/open-runs.js';
import { openSampling } from '../analysis/uncertainty/sampling.js';
import { InputError } from '../base/faults.js';
import { openModel } from '../model/open-model.js';
import type { Run } from '../run/run.js';
import { simulate } from '../run/stepping.js';
import type { Scenario } from '../scenario/scenario.js';
import { openChanged } from './changed.js';
import { openTexts, type ReferencedFiles } from './texts.js';

/** What all trials of a plan share. */
export interface PlanShared {
  readonly texts: ReferencedFiles;
  /** Each `NAME=FROM:TO`; none: the usual ones. */
  readonly vary: readonly string[];
  readonly aim: string;
  readonly keep: readonly string[];
  /** Cap of the water, such as `160 L/d`; absent: those of the file. */
  readonly ration?: string;
  /** How many draws. */
  readonly members: number;
  /** Of the draws. */
  readonly seed: number;
}

/** What is to be run: a choice of all quantities, or the choice with the numbers of a draw. */
export interface PlanInput {
  /** Steps of each quantity. */
  readonly at: readonly number[];
  /** Which draw; absent: the numbers of the tables. */
  readonly member?: number;
}

/** What a choice came to: its trial, and what it gives; absent where it makes no system. */
export interface PlanOutput extends PlanTrial {
  readonly outcome?: AdviceOutcome;
}

/** What is planned, and the file that a choice makes. */
export interface OpenPlan {
  readonly scenario: Scenario;
  readonly quantities: readonly PlanQuantity[];
  /** What the file says with a choice. Throws InputError where it makes no system. */
  fileOf(at: readonly number[]): PlainFile;
  /** The texts of that. */
  textsOf(at: readonly number[]): ReferencedFiles;
}

/** Opens a plan: reads the file once. Throws InputError with the faults of what is varied. */
export function openPlan({ texts, vary, ration }: PlanShared): OpenPlan {
  const { scenario, resolved } = openTexts(texts).reading;
  const file = ration === undefined ? resolved.plain : withRation(resolved.plain, ration);
  const quantities =
    vary.length === 0 ? usualQuantities(scenario) : vary.map((text) => planQuantity(text, scenario, file));
  const changed = openChanged(texts);
  const fileOf = (at: readonly number[]): PlainFile =>
    quantities.reduce((so, quantity, i) => quantity.apply(so, planValue(quantity, at[i])), file);
  return { scenario, quantities, fileOf, textsOf: (at) => changed(fileOf(at)) };
}

/** Opens trials on a worker: runs a choice, or a draw of it. */
export function openPlanTrials(shared: PlanShared): (input: PlanInput) => PlanOutput {
  const plan = openPlan(shared);
  const judged = (at: readonly number[], run: Run): PlanOutput => {
    const conditions = shared.keep.map((text) => conditionOf(text, run.model, '--keep'));
    const outcome = adviceOutcome(run, conditions);
    return { ...planTrial(at, run, outcome, planAim(shared.aim, run.model)), outcome };
  };
  let draw: ((member: number) => Run) | undefined;
  const openDraw = (at: readonly number[]): ((member: number) => Run) => {
    const opened = openTexts(plan.textsOf(at));
    const { rows } = basisOf(opened, { measures: [], conditions: shared.keep });
    const { members, seed } = shared;
    const sampling = openSampling(
      { method: 'latin-hypercube', members, seed },
      rows.map(({ id }) => id),
    );
    const runAt = openRuns(opened, rows);
    return (member) => runAt(sampling(member));
  };
  return ({ at, member }) => {
    try {
      if (member !== undefined) return judged(at, (draw ??= openDraw(at))(member));
      const { model } = openModel(openTexts(plan.textsOf(at)).reading, { closureDraws: 0 });
      return judged(at, simulate(model));
    } catch (error) {
      if (!(error instanceof InputError)) throw error;
      return noTrial(at);
    }
  };
}

/** A plan: what was chosen of each quantity, what is to be done week by week, and what it gives. */
export interface Plan {
  readonly title: string;
  readonly startDate: string;
  readonly aim: Pick<PlanAim, 'text' | 'unit'>;
  readonly keep: readonly string[];
  readonly ration?: string;
  readonly quantities: readonly (Omit<PlanQuantity, 'apply'> & {
    /** In the unit of the quantity. */
    readonly value: number;
  })[];
  /** Whether every condition holds. */
  readonly holds: boolean;
  readonly outcome: AdviceOutcome;
  /** How much of the aim there is. */
  readonly amount: number;
  readonly start: ReturnType<typeof planStart>;
  /** Fish at the start. */
  readonly fish: readonly {
    readonly cohort: string;
    /** How many. */
    readonly number: number;
    /** Of one fish, g. */
    readonly mass: number;
  }[];
  readonly weeks: readonly PlanWeek[];
  /** What dosers give a week, `mass` in g. */
  readonly dosers: ReturnType<typeof dosersPerWeek>;
  /** Of each draw whose numbers make a system what it came to. */
  readonly drawn: readonly PlanOutput[];
  /** How many draws were made. */
  readonly members: number;
  /** Of the draws. */
  readonly seed: number;
  /** Choices that were run. */
  readonly tried: number;
  /** Those of them that held. */
  readonly held: number;
}

/** The run of the choice, which has been run before: it makes a system. */
function runOf(plan: OpenPlan, at: readonly number[]): Run {
  return simulate(openModel(openTexts(plan.textsOf(at)).reading, { closureDraws: 0 }).model);
}

/**
 * What a search found, as it is told.
 * @param drawn what each draw of the best choice came to
 */
export function planOf(
  shared: PlanShared,
  { best, trials }: PlanFound<PlanOutput>,
  drawn: readonly PlanOutput[],
): Plan {
  const plan = openPlan(shared);
  const { at } = best;
  const run = runOf(plan, at);
  const { members, seed, keep, ration } = shared;
  const outcome = adviceOutcome(
    run,
    keep.map((text) => conditionOf(text, run.model, '--keep')),
  );
  const aim = planAim(shared.aim, run.model);
  return {
    title: plan.scenario.title,
    startDate: plan.scenario.startDate,
    ...{
      aim: { text: aim.text, unit: aim.unit },
      keep,
      holds: best.holds,
      outcome,
      amount: aim.of(run, outcome),
    },
    ...(ration !== undefined && { ration }),
    quantities: plan.quantities.map((quantity, i) => {
      const { name, unit, from, to, steps } = quantity;
      return { ...{ name, unit, from, to, steps }, value: planValue(quantity, at[i]) };
    }),
    fish: run.model.scenario.fish.map(({ name, number, mass }) => ({ cohort: name, number, mass })),
    ...{ start: planStart(run), weeks: planWeeks(run), dosers: dosersPerWeek(run) },
    drawn: drawn.filter((each) => each.outcome !== undefined),
    ...{ members, seed },
    ...{ tried: trials.length, held: trials.filter(({ holds }) => holds).length },
  };
}
