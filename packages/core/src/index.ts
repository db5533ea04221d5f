// What was wrong with the input.
export { describeFault, InputError, type Fault } from './base/faults.js';
export { formProblem, type FormProblem } from './base/form-problem.js';
export { sealed, sealProblem, type TextHash } from './base/seal.js';
export { nearest } from './base/nearest.js';

// Units.
export { convert, formatQuantity, internalUnit, parseQuantity, type Dimension } from './base/units.js';

// The numbers of the science and where they are from.
export { createParameters, drawParameters, parametersAt, type Parameters } from './library/parameters.js';
export { bibliography, type BibliographyEntry } from './library/sources.js';
export { names } from './library/names.js';
export { lookUp, tableNames, type Found, type TableName } from './library/look-up.js';
export { conditionsOf, wholeRow } from './library/conditions.js';
export { marks } from './library/table-row.js';
export { sourceList, type Source } from './library/sources.js';
export { createRandom, type RandomState } from './base/random.js';
export type { TableRow } from './library/table-row.js';

// A scenario, from text or built by hand.
export {
  openScenarioText,
  readScenario,
  readScenarioFully,
  type OpenScenario,
  type ReadOptions,
  type ScenarioReading,
} from './scenario/read-scenario.js';
export { readOwnTables } from './scenario/sections/parameters.js';
export type { Load } from './scenario/file/include-tree.js';
export type * from './scenario/saved-state.js';
export type * from './scenario/scenario.js';
export type { GivenRow, Override } from './library/override.js';

// A model, compiled and checked.
export { compileModel } from './model/compile.js';
export { extension } from './model/extend.js';
export { checkScenario } from './scenario/check-scenario.js';
export { openModel, type OpenModel } from './model/open-model.js';
export type { Model, Row } from './model/model.js';
export { openRates, type Rates } from './model/rates.js';
export { conserved, type Conserved } from './processes/components.js';
export { processes } from './processes/index.js';
export type { Process } from './processes/process.js';

// A run.
export { openRun, type SteppedRun } from './result/open-run.js';
export { simulate } from './run/stepping.js';
export type { SimulateOptions } from './run/driver.js';
export { endStateOf, type EndState } from './run/saved.js';
export { actionOrder } from './scenario/action-kinds.js';
export type { Dose, Outcome, Run, RunEvent, Sample } from './run/run.js';
export type { ResumableRun } from './run/run-state.js';

// What a run says.
export { allSeries, seriesNames, seriesOf, type Series } from './result/series.js';
export { basePlan, type BasePlan, type BaseUse } from './result/base-plan.js';
export { budgetOf, budgetsOf, relativeResidual, worstResidual, type Budget } from './result/budget.js';
export { fatesOf, type Fates, type Share } from './result/fates.js';
export { fatesOver, type FatesOver } from './result/fates.js';
export { nitrogenPaths, type NitrogenPaths } from './result/nitrogen-paths.js';
export { domainAtStart } from './analysis/design/domain-at-start.js';
export { limitsOf, marginOf, worstFirst, type LimitResult } from './result/limits.js';
export { verdictOf, type RunVerdict, type Trouble } from './result/verdict.js';
export type { Beginning, CropsVerdict, FishVerdict, HoldsUntil } from './result/verdict.js';
export type { FilterVerdict } from './result/filter-verdict.js';
export type { StoppedPump, WaterVerdict } from './result/water-verdict.js';
export { deathsOf, type CohortDeaths } from './result/deaths.js';
export { harvestOf, type CropYield, type FishYield, type Harvest, type MonthlyYield } from './result/harvest.js';
export { harms, type Harm } from './result/limit-check.js';
export { contentHash } from './base/content-hash.js';
export { manifestOf, scenarioHash, version, type Manifest } from './result/record.js';
export { auditOf, type AuditItem } from './analysis/design/audit.js';
export { handbookFilter, type FilterDemand, type FilterSize } from './analysis/design/handbook.js';
export { numberUses, type Use } from './result/uses-of.js';
export { processTable, type TableProcess } from './result/process-table.js';
export { compareRuns, type Comparison } from './result/compare.js';
export type { ComparedFates, ComparedShare } from './result/compare.js';
export type { ComparedLimit } from './result/compare.js';
export { apartness, type ComparedQuantity } from './result/compare.js';
export type { RunAccount } from './result/compare.js';
export { why, type Difference, type DifferencePart, type Moment, type WhyOptions } from './result/why.js';

// A water-test log.
export { unitOfMeasurable } from './scenario/measurables.js';
export { csvTable, logTable } from './log/log-table.js';
export { guessLogMap, type ColumnGuess, type MapGuess } from './log/guess-map.js';
export type { LogMap } from './log/log-map.js';
export { summaryOfLog, type LogCourse, type LogSummary } from './log/log-summary.js';
export type { LogTable } from './log/log-table.js';
export { readLog } from './log/read-log.js';
export { readLogMap } from './log/read-map.js';
export type { LogFeed, LogNote, LogReading, Oddity, WaterLog } from './log/water-log.js';

// A system fitted to its log.
export { fit, type Fit, type FitSearch } from './calibration/fit.js';
export { fitText, readFit, type SavedFit } from './calibration/fit-file.js';
export { fittedCorrelations, fittedSettings, fittedTable } from './calibration/fit-file.js';
export { withFittedStart, type FitSystem } from './calibration/fitted-system.js';
export type { UnloggedFeed } from './calibration/with-log.js';

// What a fitted system will do, and what such forecasts were worth.
export { forecast, type Forecast, type ForecastCourse } from './calibration/forecast.js';
export { backtest, type Backtest, type BacktestScore } from './calibration/backtest.js';

// Evapotranspiration from weather.
export { dateAfter, dayOfYear, daysBetween, isDate } from './base/calendar.js';
export { hargreaves } from './weather/evapotranspiration.js';
export { penmanMonteith, type ReferenceDay } from './weather/penman-monteith.js';
export { referenceEvapotranspiration, type Et0Method } from './weather/evapotranspiration.js';
export type { WeatherDay, WeatherSite } from './weather/weather-day.js';

// Answers for a design: one number of a run, and what a run must do.
export { conditionOf, type Condition } from './analysis/measures/condition.js';
export { measureOf, type Measure } from './analysis/measures/measure.js';
export { NoAnswerError } from './analysis/measures/phrase.js';
export type { Judgement } from './analysis/measures/scale.js';

// Draws of the numbers of the tables, and ensembles of runs.
export type { RankCorrelation } from './analysis/uncertainty/correlate.js';
export { openSampling, type Sampling } from './analysis/uncertainty/sampling.js';
export { sobolDimensions, sobolSequence } from './analysis/uncertainty/sobol-sequence.js';
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

// What an outcome depends on: designs of points, and what the outcomes at them say.
export { shareBelow } from './analysis/uncertainty/one-at-a-time.js';
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

// The state that a system comes to and keeps.
export { NoSteadyStateError } from './analysis/steady/constant-state.js';
export { dayOn } from './analysis/steady/steady-state.js';
export type { Held } from './analysis/steady/held.js';
export type { Mode } from './analysis/steady/modes.js';
export type { RepeatedAction } from './analysis/steady/spread-actions.js';
export { steadyState, type SteadyOptions, type SteadyState } from './analysis/steady/steady-state.js';

// The size of one thing at which every condition holds.
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
export { valueInUnit, valueRange, type EndNames, type ValueRange } from './analysis/design/value-range.js';

// A table or map of outcomes over one or two quantities.
export { sweepPoint, type SweepPoint } from './analysis/design/sweep.js';
export { sweepGrid, sweepValues } from './analysis/design/sweep.js';

// Types that those above are made of.
export type { Spread as RowSpread } from './analysis/uncertainty/one-at-a-time.js';
export type { RunsOptions } from './analysis/uncertainty/open-runs.js';
export type { SizeRange } from './analysis/design/size.js';
export type { FitProvenance, FitStart } from './calibration/fit.js';
export type { FittedValue } from './calibration/fitted-system.js';
export type { Free as FreeNumber } from './calibration/free-parameter.js';
export type { NextTest } from './calibration/diagnostics.js';
export type { Prior } from './calibration/free-parameter.js';
export type { FittedCourse, FittedNumber, SpoiltReading } from './calibration/diagnostics.js';
export type { BacktestRequest } from './calibration/backtest.js';
export type { ForecastRequest } from './calibration/forecast.js';
export type { SubjectGroup } from './library/names.js';
export type { System as MappedSystem } from './log/guess-map.js';
export type { ColumnUse, DateOrder } from './log/log-map.js';
export type { CompileOptions } from './model/compile.js';
export type {
  Additions,
  ComponentName,
  Extension,
  OwnComponent,
  OwnNumber,
  OwnProcess,
  OwnTerm,
} from './model/own.js';
export type { Component } from './processes/components.js';
export type { Values as ParameterValues } from './library/values.js';
export type { Instance as ModelInstance } from './model/instance.js';
export type { Layout as ModelLayout } from './model/layout.js';
export type { Entry as RowEntry } from './model/model.js';
export type { RateOptions } from './model/rates.js';
export type { PhMemory } from './model/water-look.js';
export type { ActionOf, actionKinds, SpreadableAction } from './scenario/action-kinds.js';
export type { Regime } from './model/model.js';
export type { Stream } from './model/streams.js';
export type { Kernel as RateKernel } from './processes/kernels/kernel.js';
export type {
  Conditions as ProcessConditions,
  PlaceKind,
  Term as ProcessTerm,
  Variable as ProcessVariable,
  VesselForm,
} from './processes/process.js';
export type { BudgetLine, StoredLine } from './result/budget.js';
export type { Parting, QuantityOfRun } from './result/compare.js';
export type { Boundary } from './result/crossings.js';
export type { Direction as LimitDirection, Verdict } from './result/judge.js';
export type { Limit, PlacedLimit } from './result/limit-check.js';
export type { PathLink, PathPlace } from './result/nitrogen-paths.js';
export type { TableEntry } from './result/process-table.js';
export type { Posting, SampledRun } from './run/run.js';
export type { SampleBuffer } from './run/sample-buffer.js';
export type { ResolvedTree } from './scenario/file/resolve-tree.js';
export type { Setting as ReadSetting } from './scenario/file/set-value.js';
export type { RateSystem, SparsePattern, SparseRows, WorkCounts } from './solve/contract.js';
export type {
  Ending,
  Integrator,
  IntegratorFactory,
  OutputPlan,
  StepMemory,
  Tolerance,
} from './solve/contract.js';
export type { QuantityAnswer } from './base/units.js';
export type { AcidBaseConstants } from './chemistry/acid-base.js';
export type { FixedComponent, OutsideComponent, WaterComponent } from './processes/components.js';
export type { Content } from './processes/components.js';
export type { Reading } from './model/instance.js';
export type { Batch, OwnStates, State } from './model/layout.js';
export type { Sites } from './processes/kernels/kernel.js';
export type { Coefficient } from './processes/process.js';
export type { ResolvedValue } from './scenario/file/resolve-tree.js';
export type { Plain } from './scenario/file/tree.js';
export type { QuantityFault } from './base/units.js';
export type { waterComponents } from './processes/components.js';
