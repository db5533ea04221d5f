import type { Named } from '../file/report.js';
import type { Path } from '../file/tree.js';
import type { Cohort, Feed, Planting, Ration, Scenario, Vessel } from '../scenario.js';
import { cohortRanges, cutRanges, feedRanges, most, plantingRanges, rationRanges, words } from './ranges.js';
import type { ScenarioReport } from './scenario-report.js';
import { checkNamed } from './scenario-values.js';
import { checkAge, checkPlanted, fallingRow, isWithinDay } from './stock.js';

/** Names in the tables. */
export interface LibraryNames {
  readonly species: readonly string[];
  readonly crops: readonly string[];
  readonly feeds: readonly string[];
  readonly products: readonly string[];
  readonly lime: readonly string[];
  /** eq per g of a product. */
  readonly alkalinity: (product: string) => number;
}

/** Checks a ration. */
export function checkRation(report: ScenarioReport, ration: Ration, path: Path): boolean {
  if (!report.holds(ration, path)) return false;
  if (!report.oneOf(ration.kind, ['mass', 'share', 'table'], [...path, 'kind'])) return false;
  const { gramsPerDay, perDay, mass } = rationRanges;
  if (ration.kind === 'mass') return report.numbers(ration, { gramsPerDay }, path);
  if (ration.kind === 'share') return report.numbers(ration, { perDay }, path);
  const list = [...path, 'rows'];
  if (!report.isList(ration.rows, list)) return false;
  if (ration.rows.length === 0) {
    report.fault(list, 'an empty table', { expected: 'rows of mass and perDay' });
    return false;
  }
  const sound = ration.rows.map((row, index) => {
    const at = [...list, index];
    return report.holds(row, at) && report.numbers(row, { mass, perDay }, at);
  });
  if (!sound.every(Boolean)) return false;
  const falling = fallingRow(ration.rows);
  if (falling < 0) return true;
  report.fault([...list, falling, 'mass'], 'masses of a table must rise');
  return false;
}

/** Checks a feed against those of the tables: its name tells its oxygen demand. */
export function checkFeed(report: ScenarioReport, feed: Feed, path: Path, { feeds }: LibraryNames): boolean {
  if (!report.holds(feed, path)) return false;
  const known = report.known(feed.name, feeds, [...path, 'name'], 'feed');
  return report.numbers(feed, feedRanges, path) && known;
}

/** Checks the fish. */
export function checkCohorts(
  report: ScenarioReport,
  { fish: cohorts }: Scenario,
  vessels: Named<Vessel>,
  names: LibraryNames,
): Named<Cohort> {
  return checkNamed(report, 'fish', cohorts, most.groups, (cohort, path) => {
    const before = report.faults.length;
    report.known(cohort.vessel, vessels, [...path, 'vessel'], 'vessel');
    report.known(cohort.species, names.species, [...path, 'species'], 'species');
    report.numbers(cohort, cohortRanges, path, { optional: ['feedConversion'] });
    if (cohort.dead !== undefined) report.oneOf(cohort.dead, words.deadFish, [...path, 'dead']);
    checkRation(report, cohort.ration, [...path, 'ration']);
    checkFeed(report, cohort.feed, [...path, 'feed'], names);
    const { hours } = cohort;
    if (hours !== undefined && report.holds(hours, [...path, 'hours']) && !isWithinDay(hours)) {
      const got = `${hours.from} to ${hours.to}`;
      const expected = 'shares of a day from 0 to 1, the second later';
      report.fault([...path, 'hours'], 'not hours of one day', { got, expected });
    }
    return report.faults.length === before;
  });
}

/** Checks the plantings, each by itself. */
export function checkPlantings(
  report: ScenarioReport,
  { plantings }: Scenario,
  vessels: Named<Vessel>,
  { crops }: LibraryNames,
): Named<Planting> {
  return checkNamed(report, 'plantings', plantings, most.groups, (planting, path) => {
    const before = report.faults.length;
    const bed = report.lookup(vessels, planting.vessel, [...path, 'vessel'], 'vessel');
    report.known(planting.crop, crops, [...path, 'crop'], 'crop');
    report.oneOf(planting.after, words.afterHarvest, [...path, 'after']);
    report.oneOf(planting.start, words.plantingStart, [...path, 'start']);
    if (report.numbers(planting, plantingRanges, path, { optional: ['cover', 'seedling', 'picks'] })) {
      checkPlanted(report, path, planting.area, bed);
      checkAge(report, path, planting.age, planting.harvest);
      const { cut } = planting;
      if (cut !== undefined && report.holds(cut, [...path, 'cut']))
        report.numbers(cut, cutRanges, [...path, 'cut']);
    }
    return report.faults.length === before;
  });
}
