// What was wrong with the input.
export { describeFault, InputError } from './base/faults.js';
export { formProblem } from './base/form-problem.js';
export { sealed, sealProblem } from './base/seal.js';
export { nearest } from './base/nearest.js';
// The numbers of the science and where they are from.
export { createParameters, drawParameters, parametersAt } from './library/parameters.js';
export { bibliography } from './library/sources.js';
export { names } from './library/names.js';
export { lookUp, tableNames } from './library/look-up.js';
export { conditionsOf, wholeRow } from './library/conditions.js';
export { marks } from './library/table-row.js';
export { sourceList } from './library/sources.js';
export { createRandom } from './base/random.js';
// A scenario, from text or built by hand.
export { openScenarioText, readScenario, readScenarioFully, } from './scenario/read-scenario.js';
export { buildScenario, startWater, } from './scenario/build-scenario.js';
export { readOwnTables } from './scenario/sections/parameters.js';
// A model, compiled and checked.
export { compileModel } from './model/compile.js';
export { extension } from './model/extend.js';
export { checkScenario } from './scenario/check-scenario.js';
export { openModel } from './model/open-model.js';
export { openRates } from './model/rates.js';
export { conserved } from './processes/components.js';
export { processes } from './processes/index.js';
// A run.
export { run } from './result/run-text.js';
export { openPlainRun, plainRun } from './result/plain-run.js';
export { openRun } from './result/open-run.js';
export { simulate } from './run/stepping.js';
export { endStateOf } from './run/saved.js';
export { actionOrder } from './scenario/action-kinds.js';
// What a run says.
export { allSeries, seriesNames, seriesOf } from './result/series.js';
export { basePlan } from './result/base-plan.js';
export { budgetOf, budgetsOf, relativeResidual, worstResidual } from './result/budget.js';
export { fatesOf } from './result/fates.js';
export { fatesOver } from './result/fates.js';
export { nitrogenPaths } from './result/nitrogen-paths.js';
export { deathsOf } from './result/deaths.js';
export { domainAtStart } from './analysis/design/domain-at-start.js';
export { limitsOf, marginOf, worstFirst } from './result/limits.js';
export { verdictOf } from './result/verdict.js';
export { harvestOf, } from './result/harvest.js';
export { harms } from './result/limit-check.js';
export { contentHash } from './base/content-hash.js';
export { manifestOf, scenarioHash, version } from './result/record.js';
export { numberUses } from './result/uses-of.js';
export { processTable } from './result/process-table.js';
export { compareRuns } from './result/compare.js';
export { apartness } from './result/compare.js';
export { why } from './result/why.js';
// A water-test log.
export { unitOfMeasurable } from './scenario/measurables.js';
// Evapotranspiration from weather.
export { dateAfter, dateAt, dayOfYear, daysBetween, isDate } from './base/calendar.js';
export { hargreaves } from './weather/evapotranspiration.js';
export { penmanMonteith } from './weather/penman-monteith.js';
export { referenceEvapotranspiration } from './weather/evapotranspiration.js';
// What has an entry of its own too: `@leat/core/units`, `@leat/core/analysis`, `@leat/core/calibration`.
export * from './units.js';
export * from './analysis.js';
export * from './calibration.js';
//# sourceMappingURL=index.js.map