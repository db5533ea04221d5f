// What was wrong with the input.
export { describeFault, InputError, type Fault } from './base/faults.js';
export type { Bound, NumberBound, QuantityBound, ShareBound } from './base/bounds.js';
export { formProblem, type FormProblem } from './base/form-problem.js';
export { sealed, sealProblem, type TextHash } from './base/seal.js';
export { nearest } from './base/nearest.js';

// The numbers of the science and where they are from.
export { createParameters, drawParameters, parametersAt, type Parameters } from './library/parameters.js';
export { bibliography, type BibliographyEntry } from './library/sources.js';
export { bibtex } from './library/bibtex.js';
export { names } from './library/names.js';
export { lookUp, tableNames, type Found, type TableName } from './library/look-up.js';
export { rowOf, rowsOf } from './library/rows-in-use.js';
export { marks } from './library/table-row.js';
export { sourceList, type Source } from './library/sources.js';
export { createRandom, type RandomState } from './base/random.js';
export type { RangedRow, TableRow } from './library/table-row.js';
export type { Origin } from './library/table-row.js';

// A scenario, from text or built by hand.
export {
  openScenarioText,
  readScenario,
  readScenarioFully,
  type OpenScenario,
  type ReadOptions,
  type ScenarioReading,
} from './scenario/read-scenario.js';
export {
  buildScenario,
  startWater,
  type CohortGiven,
  type Daily,
  type PlantingGiven,
  type ScenarioGiven,
  type VesselGiven,
  type WaterGiven,
} from './scenario/build-scenario.js';
export {
  capRanges,
  cohortRanges,
  dailyRanges,
  feedRanges,
  plantingRanges,
  rainTankRanges,
  rationRanges,
  vesselRanges,
} from './scenario/checks/ranges.js';
export { scenarioJsonSchema } from './scenario/json-schema.js';
export { readOwnTables } from './scenario/sections/parameters.js';
export type { Load } from './scenario/file/include-tree.js';
export type * from './scenario/saved-state.js';
export type * from './scenario/scenario.js';
export type { Given, GivenRow, NumberInUse, Override } from './library/own-row.js';

// A model, compiled and checked.
export { compileModel, compileUnchecked } from './model/compile.js';
export { extension } from './model/extend.js';
export { checkScenario } from './scenario/check-scenario.js';
export { extendedBy, openModel, type OpenModel } from './model/open-model.js';
export type { ExtendedReading, ExtendedScenario } from './model/open-model.js';
export type { Model, Row } from './model/model.js';
export { openRates, type Rates } from './model/rates.js';
export { conserved, type Conserved } from './processes/components.js';
export { processes } from './processes/index.js';
export type { Process } from './processes/process.js';

// A run.
export { run, type TextRun } from './result/run-text.js';
export { openPlainRun, plainRun, type PlainRun } from './result/plain-run.js';
export { openRun, type SteppedRun } from './result/open-run.js';
export { simulate } from './run/stepping.js';
export type { SimulateOptions } from './run/driver.js';
export { endStateOf, type EndState } from './run/saved.js';
export type { Dose, Outcome, Run, RunEvent, Sample } from './run/run.js';
export type { ResumableRun } from './run/run-state.js';

// What a run says.
export { noSeriesNamed } from './result/no-series.js';
export { allSeries, seriesNames, seriesOf, type Series } from './result/series.js';
export { costsOf, type CostRow, type Costs } from './result/costs.js';
export type { NamedPrice } from './scenario/prices.js';
export { basePlan, type BasePlan, type BaseUse } from './result/base-plan.js';
export { budgetOf, budgetsOf, relativeResidual, worstResidual, type Budget } from './result/budget.js';
export { fatesOf, type Fates, type Share } from './result/fates.js';
export { fatesOver, type FatesOver } from './result/fates.js';
export { nitrogenPaths, type NitrogenPaths } from './result/nitrogen-paths.js';
export { deathsOf, type CohortDeaths, type DeathsOfDay } from './result/deaths.js';
export type { CauseOfDeath } from './processes/kernels/hazard.js';
export { domainAtStart } from './analysis/design/domain-at-start.js';
export { limitsOf, worstFirst, type LimitResult } from './result/limits.js';
export { groupParts, type PartGroup } from './result/why-groups.js';
export { afterEvents, type AfterEvent, type PassedAfter } from './result/after-events.js';
export { verdictOf, type RunVerdict, type Trouble } from './result/verdict.js';
export type {
  Beginning,
  CropsVerdict,
  FishVerdict,
  HoldsUntil,
  ToldDeaths,
  ToldLosses,
} from './result/verdict.js';
export type { LostWeight } from './result/lost-weight.js';
export type { UneatenFeed } from './result/uneaten.js';
export type { FilterHeld, FilterVerdict } from './result/filter-verdict.js';
export type { StoppedPump, WaterVerdict } from './result/water-verdict.js';
export {
  harvestOf,
  type CropYield,
  type FishYield,
  type Harvest,
  type MonthlyYield,
} from './result/harvest.js';
export { harms, type Harm } from './result/limit-check.js';
export { contentHash } from './base/content-hash.js';
export { manifestOf, scenarioHash, version, type Manifest } from './result/record.js';
export { numberUses, type Use } from './result/uses-of.js';
export { processTable, type TableProcess } from './result/process-table.js';
export { compareRuns, type Comparison } from './result/compare.js';
export type { ComparedFates, ComparedShare } from './result/compare.js';
export type { ComparedLimit } from './result/compare.js';
export { apartness, type ComparedQuantity } from './result/compare.js';
export type { RunAccount } from './result/compare.js';
export {
  why,
  valueOn,
  whyNames,
  type Difference,
  type DifferencePart,
  type Moment,
  type WhyOptions,
} from './result/why.js';

// A water-test log.
export { unitOfMeasurable } from './scenario/measurables.js';

// Evapotranspiration from weather.
export { dateAfter, daysBetween } from './base/calendar.js';
export { hargreaves } from './weather/evapotranspiration.js';
export { penmanMonteith, type ReferenceDay } from './weather/penman-monteith.js';
export type { WeatherDay, WeatherSite } from './weather/weather-day.js';

// Types that those above are made of.
export type { SubjectGroup } from './library/names.js';
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
export type { LoopsBy } from './solve/room.js';
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
export type { AcidBaseConstants } from './chemistry/acid-base.js';
export type { FixedComponent, OutsideComponent, WaterComponent } from './processes/components.js';
export type { Content } from './processes/components.js';
export type { Reading } from './model/instance.js';
export type { causesOfDeath } from './processes/kernels/hazard.js';
export type { Batch, FishStates, OwnStates, State } from './model/layout.js';
export type { Sites } from './processes/kernels/kernel.js';
export type { Coefficient } from './processes/process.js';
export type { ResolvedValue } from './scenario/file/resolve-tree.js';
export type { Path, Plain } from './scenario/file/tree.js';
export type { waterComponents } from './processes/components.js';

// What has an entry of its own too: `@leat/core/units`, `@leat/core/analysis`, `@leat/core/calibration`.
export * from './units.js';
export * from './analysis.js';
export * from './calibration.js';
export { valuesLike, type ValueAtPath } from './scenario/file/paths-like.js';
export type { Box, FileChange, Piece } from './scenario/file/tree-changes.js';
export type { FileDisplay } from './scenario/sections/display.js';
export { changesBetween } from './scenario/file/tree-changes.js';
