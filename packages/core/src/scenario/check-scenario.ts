// Reads numbers as: check of a scenario
import { isDate } from '../base/calendar.js';
import { type Fault, InputError } from '../base/faults.js';
import { createParameters, type Parameters } from '../library/parameters.js';
import { checkDosers } from './checks/dosers.js';
import { checkPrices } from './checks/prices.js';
import { checkNetwork } from './checks/network.js';
import { climateRanges, dailyRanges, runRanges } from './checks/ranges.js';
import { checkKept, checkOutputs } from './checks/run.js';
import { checkAction, checkActions, checkRules } from './checks/scenario-operation.js';
import { ScenarioReport } from './checks/scenario-report.js';
import { checkSaved, checkStart } from './checks/scenario-start.js';
import { checkCohorts, checkPlantings, type LibraryNames } from './checks/scenario-stock.js';
import { checkDailyValue } from './checks/scenario-values.js';
import { checkFlows, checkPumps, checkSupply, checkVessels, checkWaters } from './checks/scenario-water.js';
import { checkPlausible } from './checks/plausible.js';
import { checkBeds, checkTrays } from './checks/stock.js';
import type { Action, Scenario } from './scenario.js';

const lists = [
  'waters',
  'vessels',
  'pumps',
  'flows',
  'fish',
  'plantings',
  'start',
  'actions',
  'rules',
  'overrides',
] as const satisfies readonly (keyof Scenario)[];

/** Whether every section is a list of objects; a fault for each that is not. */
function hasSections(report: ScenarioReport, scenario: Scenario): boolean {
  return lists
    .map((key) => {
      const section: unknown = scenario[key];
      if (!report.isList(section, [key])) return false;
      return (section as readonly unknown[])
        .map((entry, index) => report.holds(entry, [key, index]))
        .every(Boolean);
    })
    .every(Boolean);
}

/** The numbers that a scenario gives; those of the tables where they are faulty, and the faults. */
function parametersOf({ overrides }: Scenario): { parameters: Parameters; faults: readonly Fault[] } {
  try {
    return { parameters: createParameters(overrides), faults: [] };
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    return { parameters: createParameters(), faults: error.faults };
  }
}

/** Checks length, clock and weather. */
function checkRun(report: ScenarioReport, scenario: Scenario): void {
  const { days, startDate, et0, air, vessels } = scenario;
  if (report.numbers(scenario, runRanges, [])) {
    checkOutputs(report, scenario);
    checkKept(report, scenario, vessels.length);
  }
  if (typeof startDate !== 'string' || !isDate(startDate))
    report.fault(['startDate'], 'no such date', { expected: 'a date such as 2026-03-01' });
  checkDailyValue(report, et0, ['et0'], { ...dailyRanges.et0UnderCover, days });
  if (air !== undefined) checkDailyValue(report, air, ['air'], { ...dailyRanges.air, days });
  const { carbonDioxide, light, plantings } = scenario;
  if (light !== undefined) checkDailyValue(report, light, ['light'], { ...dailyRanges.light, days });
  for (const { name, light: own, shelter } of plantings) {
    const path = ['plantings', name];
    if (own !== undefined) checkDailyValue(report, own, [...path, 'light'], { ...dailyRanges.light, days });
    if (shelter !== undefined)
      checkDailyValue(report, shelter, [...path, 'shelter'], { ...dailyRanges.shade, days });
  }
  if (carbonDioxide !== undefined)
    checkDailyValue(report, carbonDioxide, ['carbonDioxide'], { ...dailyRanges.carbonDioxide, days });
  report.numbers(scenario, climateRanges, [], { optional: ['altitude'] });
}

function libraryNames(parameters: Parameters): LibraryNames {
  return {
    species: parameters.subjects('fish'),
    crops: parameters.subjects('crop'),
    feeds: parameters.subjects('feed'),
    products: parameters.subjects('dose'),
    lime: parameters.subjects('lime'),
    alkalinity: (product) => parameters.value(`dose.${product}.alkalinity`),
  };
}

function checkSections(report: ScenarioReport, scenario: Scenario, names: LibraryNames): void {
  const { reservoir, saved } = scenario;
  checkRun(report, scenario);
  const waters = checkWaters(report, scenario);
  const vessels = checkVessels(report, scenario, names);
  const pumps = checkPumps(report, scenario);
  const flows = checkFlows(report, scenario, vessels, pumps);
  checkNetwork(report, vessels, flows, reservoir);
  const supply = checkSupply(report, scenario, waters, vessels.get(reservoir));
  const cohorts = checkCohorts(report, scenario, vessels, names);
  checkPlausible(report, cohorts, vessels);
  const plantings = checkPlantings(report, scenario, vessels, names);
  checkBeds(report, plantings, vessels);
  checkTrays(report, plantings);
  checkStart(report, scenario, vessels);
  if (saved !== undefined) checkSaved(report, saved, scenario.days, { vessels, cohorts, plantings });
  const { products } = names;
  const dosers = checkDosers(report, scenario, vessels, names);
  const cast = { vessels, waters, pumps, cohorts, plantings, products, dosers, ...supply };
  checkActions(report, scenario, cast, names);
  checkRules(report, scenario, cast, names);
  checkPrices(report, scenario, products);
}

/**
 * Checks a scenario built in code as a file is checked: names (vessels, pumps, waters, and those of the tables),
 * numbers, the network, levels, what stands in the beds, state at the start, actions, rules.
 *
 * @param parameters the numbers that it runs with; absent: those that its overrides make, which are checked too
 * @throws InputError with every fault, each at the path of its field: `vessels.tank.volume`, `actions[2].action.pump`
 */
export function checkScenario(scenario: Scenario, parameters?: Parameters): void {
  const report = new ScenarioReport(scenario);
  if (!hasSections(report, scenario)) throw new InputError(report.faults);
  const given = parameters === undefined ? parametersOf(scenario) : { parameters, faults: [] };
  checkSections(report, scenario, libraryNames(given.parameters));
  const faults = [...given.faults, ...report.faults];
  if (faults.length > 0) throw new InputError(faults);
}

const byName = <T extends { readonly name: string }>(entries: readonly T[]): ReadonlyMap<string, T> =>
  new Map(entries.map((entry) => [entry.name, entry]));

/**
 * Checks one action against a scenario that was checked, as if it stood there.
 *
 * @throws InputError with every fault, each at the path of its field in the action: `action.cohort`
 */
export function checkOneAction(scenario: Scenario, action: Action, parameters: Parameters): void {
  // The action stands beside the sections, so that what came is told of it too.
  const report = new ScenarioReport({ ...scenario, action } as Scenario);
  const names = libraryNames(parameters);
  const cast = {
    vessels: byName(scenario.vessels),
    waters: byName(scenario.waters),
    pumps: byName(scenario.pumps),
    cohorts: byName(scenario.fish),
    plantings: byName(scenario.plantings),
    products: names.products,
    topUp: scenario.topUp,
    rainTank: scenario.rainTank,
    dosers: scenario.dosers ?? [],
  };
  checkAction(report, action, ['action'], cast, names);
  if (report.faults.length > 0) throw new InputError(report.faults);
}
