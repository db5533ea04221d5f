import type { SavedState } from '../saved-state.js';
import { checkGoesOn, checkSavedContent, type SavedPlaces } from './saved.js';
import { checkRation } from './scenario-stock.js';
import type { Bound } from '../../base/bounds.js';
import type { Named } from '../file/report.js';
import type { Path } from '../file/tree.js';
import type { Scenario, StartVessel, Vessel } from '../scenario.js';
import { checkStartVolume, roomProblem } from './levels.js';
import {
  grownRange,
  savedRanges,
  startBesideRanges,
  startOrganicRanges,
  startRanges,
  startWaterRanges,
} from './ranges.js';
import type { ScenarioReport } from './scenario-report.js';

function checkStartVessel(
  report: ScenarioReport,
  start: StartVessel,
  path: Path,
  vessel: Vessel | undefined,
  reservoir: string,
): void {
  const { water, volume } = start;
  if (report.holds(water, [...path, 'water'])) {
    report.numbers(water, startWaterRanges, [...path, 'water']);
    const optional = Object.keys(startOrganicRanges);
    report.numbers(water, startOrganicRanges, [...path, 'water'], { optional });
  }
  report.numbers(start, startBesideRanges, path, { optional: Object.keys(startBesideRanges) });
  const { grownAt } = start;
  if (grownAt !== undefined && grownAt !== 'fresh') report.within(grownAt, grownRange, [...path, 'grownAt']);
  if (!report.numbers(start, startRanges, path)) return;
  const problem = roomProblem(start);
  if (problem !== undefined) {
    const got = `aob ${start.aob} and nob ${start.nob}`;
    report.fault(path, problem, { got, expected: 'shares that sum to 1 or less' });
  }
  if (vessel !== undefined)
    checkStartVolume(report, [...path, 'volume'], volume, vessel, vessel.name === reservoir);
}

/** Checks what every vessel holds at the start: one entry for each that no saved state tells of. */
export function checkStart(
  report: ScenarioReport,
  { start, reservoir, saved }: Scenario,
  vessels: Named<Vessel>,
): void {
  const seen = new Set<string>();
  start.forEach((entry, index) => {
    const { vessel } = entry;
    const at = ['start', index, 'vessel'];
    if (!report.known(vessel, vessels, at, 'vessel')) return;
    if (seen.has(vessel)) report.fault(at, 'a name given twice');
    else if (saved?.volumes?.[vessel] === undefined)
      checkStartVessel(report, entry, ['start', vessel], vessels.get(vessel), reservoir);
    seen.add(vessel);
  });
  for (const name of vessels.keys()) {
    if (seen.has(name) || saved?.volumes?.[name] !== undefined) continue;
    report.fault(['start', name], 'missing', { expected: 'what the vessel holds at the start' });
  }
}

function checkEach(
  report: ScenarioReport,
  values: Readonly<Record<string, number>>,
  bound: Bound,
  path: Path,
): void {
  if (!report.holds(values, path)) return;
  for (const name in values) report.within(values[name], bound, [...path, name]);
}

/** What a saved state has of lists and of objects, by the path of each. */
const lists = [
  ['states'],
  ['tripped'],
  ['parched'],
  ['spent'],
  ['sources'],
  ['rules'],
  ['operation', 'pumpsOff'],
  ['operation', 'airOff'],
  ['operation', 'dosersOff'],
] as const;
const objects = [
  ['volumes'],
  ['ages'],
  ['species'],
  ['crops'],
  ['operation'],
  ['operation', 'rations'],
  ['operation', 'factors'],
  ['operation', 'feeds'],
  ['operation', 'waters'],
] as const;

function within(saved: SavedState, path: Path): unknown {
  return path.reduce<unknown>((inner, key) => (inner as Record<string, unknown> | undefined)?.[key], saved);
}

/** Checks a state to go on from: its numbers, that it is of this system, and that the run ends after it. */
export function checkSaved(
  report: ScenarioReport,
  saved: SavedState,
  days: number,
  places: SavedPlaces,
): void {
  const path = ['saved'];
  if (!report.holds(saved, path)) return;
  const whole = [
    ...objects.map((at) => report.holds(within(saved, at), [...path, ...at])),
    ...lists.map((at) => report.isList(within(saved, at), [...path, ...at])),
    saved.siphoning === undefined || report.isList(saved.siphoning, [...path, 'siphoning']),
  ];
  if (!whole.every(Boolean)) return;
  const { volumes, ages, operation, states, time } = saved;
  checkEach(report, volumes, savedRanges.volume, [...path, 'volumes']);
  checkEach(report, ages, savedRanges.age, [...path, 'ages']);
  checkEach(report, operation.factors, savedRanges.factor, [...path, 'operation', 'factors']);
  for (const [cohort, ration] of Object.entries(operation.rations))
    checkRation(report, ration, [...path, 'operation', 'rations', cohort]);
  report.within(saved.rainTank, savedRanges.rainTank, [...path, 'rainTank']);
  const sound = states.map((state, index) => {
    const at = [...path, 'states', index];
    return report.holds(state, at) && report.within(state.amount, savedRanges.amount, [...at, 'amount']);
  });
  if (sound.every(Boolean)) checkSavedContent(report, path, saved, places);
  if (report.within(time, savedRanges.time, [...path, 'time']))
    checkGoesOn(report, [...path, 'time'], time, days, '');
}
