// Designs, steady states, measures, draws and ensembles: what is done with many runs.
export { domainAtStart } from './analysis/design/domain-at-start.js';
export {
  aerationFor,
  appetiteOf,
  appetiteShare,
  massByGrowthCoefficient,
  type AirDemand,
  type GrowthGuess,
} from './analysis/design/first-guess.js';
export { auditOf, type AuditItem } from './analysis/design/audit.js';
export { handbookFilter, type FilterDemand, type FilterSize } from './analysis/design/handbook.js';
export { conditionOf, type Condition } from './analysis/measures/condition.js';
export { measureOf, type Measure } from './analysis/measures/measure.js';
export { NoAnswerError } from './analysis/measures/phrase.js';
export type { Judgement } from './analysis/measures/scale.js';
export type { RankCorrelation } from './library/correlations.js';
export { openSampling, type Sampling } from './analysis/uncertainty/sampling.js';
export { openRuns } from './analysis/uncertainty/open-runs.js';
export {
  basisOf,
  outlineOf,
  type Basis,
  type Outline,
  type Questions,
} from './analysis/uncertainty/members.js';
export { ensembleOf, openMembers } from './analysis/uncertainty/ensemble.js';
export type { Answer, MemberOutcome } from './analysis/uncertainty/members.js';
export {
  ensembleResult,
  type MeasureSummary,
  type EnsembleResult,
  type ConditionSummary,
  type LimitOdds,
  type SeriesBands,
} from './analysis/uncertainty/ensemble.js';
export type { Spreads, SpreadsState } from './analysis/uncertainty/spreads.js';
export { summaryOf, type Bands, type Summary } from './analysis/uncertainty/quantiles.js';
export {
  openAccumulator,
  type MemberNote,
  type Accumulator,
  type AccumulatorState,
} from './analysis/uncertainty/accumulator.js';
export { fewOf } from './analysis/uncertainty/one-at-a-time.js';
export {
  localDesign,
  localEffects,
  middleOf,
  type LocalEffect,
} from './analysis/uncertainty/one-at-a-time.js';
export {
  elementaryEffects,
  morrisDesign,
  type ElementaryEffects,
  type Points,
} from './analysis/uncertainty/one-at-a-time.js';
export {
  sobolDesign,
  sobolIndices,
  type Estimate,
  type SobolAnswer,
  type SobolIndices,
} from './analysis/uncertainty/sobol-indices.js';
export { NoSteadyStateError } from './analysis/steady/constant-state.js';
export { dayOn } from './analysis/steady/steady-state.js';
export type { Held } from './analysis/steady/held.js';
export type { Mode } from './analysis/steady/modes.js';
export type { RepeatedAction } from './analysis/steady/spread-actions.js';
export { steadyState, type SteadyOptions, type SteadyState } from './analysis/steady/steady-state.js';
export { findSize, type SizeAnswer, type SizeSearch } from './analysis/design/size.js';
export {
  handbookOf,
  surfacesVaried,
  type Handbook,
  type HandbookValue,
  type SizeEnds,
} from './analysis/design/handbook.js';
export { judgeRun } from './analysis/design/trial.js';
export { openSizeMembers, type SizeDraws, type SizeMember } from './analysis/design/size-spread.js';
export { sizeReasons, type SizeReasons } from './analysis/design/size-reasons.js';
export { sizeSpread, type SizeSpread } from './analysis/design/size-spread.js';
export type { Trial } from './analysis/design/trial.js';
export {
  partsOf,
  valueInUnit,
  valueRange,
  type EndNames,
  type ValueRange,
} from './analysis/design/value-range.js';
export { sweepPoint, type SweepPoint } from './analysis/design/sweep.js';
export { sweepGrid, sweepValues } from './analysis/design/sweep.js';
export type { Spread as RowSpread } from './analysis/uncertainty/one-at-a-time.js';
export type { RunsOptions } from './analysis/uncertainty/open-runs.js';
export type { SizeRange } from './analysis/design/size.js';
export { overlayOf, overlayText, type FileLines, type PlainFile } from './analysis/advice/file-edit.js';
export {
  adviceOf,
  openChanges,
  pairsOf,
  tryChange,
  tryPair,
  type AdviceSearch,
  type Proposal,
  type ProposedChange,
} from './analysis/advice/advise.js';
export type { changeNames, Change, ChangeContext, ChangeName, Effort } from './analysis/advice/change.js';
export {
  adviceOutcome,
  aimOf,
  compareHarm,
  type AdviceAim,
  type AdviceOutcome,
  type RunHarm,
} from './analysis/advice/run-harm.js';
export { situationsOf, type Situation } from './analysis/advice/situation.js';
export {
  searchPlan,
  planValue,
  type PlanFound,
  type PlanRange,
  type PlanTrial,
} from './analysis/plan/plan-search.js';
export { planQuantity, usualQuantities, type PlanQuantity } from './analysis/plan/plan-quantity.js';
export { noTrial, planAim, planTrial, type PlanAim } from './analysis/plan/plan-aim.js';
export {
  dosersPerWeek,
  planStart,
  planWeeks,
  type PlanStart,
  type PlanWeek,
  type WeekOfCrop,
  type WeekOfHarvest,
} from './analysis/plan/plan-calendar.js';
export { withRation } from './analysis/plan/ration.js';
export { planChanges, type ChangePlan } from './analysis/design/split-changes.js';
export { shapley, type ChangeShare } from './analysis/design/shapley.js';
export { offBy, ownValues, type OwnValue, type StatedError } from './analysis/design/own-values.js';
