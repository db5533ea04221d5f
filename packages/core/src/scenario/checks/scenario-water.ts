import type { Named } from '../file/report.js';
import type { Path } from '../file/tree.js';
import type { Flow, Pump, RainTank, Scenario, SourceWater, TopUp, TopUpSource, Vessel } from '../scenario.js';
import { checkDrain, checkFloat, checkPumpLevels, checkRainTank } from './levels.js';
import { checkEnds, checkShares, type FlowReading, sourcesOf } from './network.js';
import {
  airRanges,
  floodedRanges,
  capRanges,
  dailyRanges,
  drainRanges,
  flowRanges,
  limeRanges,
  most,
  pumpRanges,
  rainTankRanges,
  timerRanges,
  topUpRanges,
  vesselRanges,
  waterRanges,
  words,
} from './ranges.js';
import type { ScenarioReport } from './scenario-report.js';
import type { LibraryNames } from './scenario-stock.js';
import { anyNumber, checkDailyValue, checkNamed } from './scenario-values.js';

/** Checks the vessels by themselves. */
export function checkVessels(
  report: ScenarioReport,
  { vessels, days }: Scenario,
  names: Pick<LibraryNames, 'lime'>,
): Named<Vessel> {
  if (vessels.length === 0) report.fault(['vessels'], 'missing', { expected: 'at least one vessel' });
  const water = { ...dailyRanges.water, days };
  return checkNamed(report, 'vessels', vessels, most.vessels, (vessel, path) => {
    const { kind, volume, temperature, drain, lime } = vessel;
    const sound = [
      report.oneOf(kind, words.vesselKind, [...path, 'kind']),
      report.numbers(vessel, vesselRanges, path),
      report.numbers(vessel, airRanges, path, { optional: ['airShare'] }),
      report.numbers(vessel, floodedRanges, path, { optional: ['flooded'] }),
      checkDailyValue(report, temperature, [...path, 'temperature'], water),
      drain === undefined ||
        (report.holds(drain, [...path, 'drain']) &&
          (drain.by === undefined || report.oneOf(drain.by, words.drainedBy, [...path, 'drain', 'by'])) &&
          report.numbers(drain, drainRanges, [...path, 'drain'])),
      lime === undefined ||
        (report.holds(lime, [...path, 'lime']) &&
          report.known(lime.kind, names.lime, [...path, 'lime', 'kind'], 'lime') &&
          report.numbers(lime, limeRanges, [...path, 'lime'])),
    ].every(Boolean);
    const { flooded } = vessel;
    if (drain !== undefined && flooded !== undefined)
      report.fault([...path, 'flooded'], 'a bed that drains is not averaged too', {
        expected: 'one of both',
      });
    return sound && (drain === undefined || checkDrain(report, path, drain.to, volume));
  });
}

/** Checks waters from outside. */
export function checkWaters(report: ScenarioReport, { waters }: Scenario): Named<SourceWater> {
  return checkNamed(report, 'waters', waters, most.waters, (water, path) =>
    report.numbers(water, waterRanges, path),
  );
}

function checkFlow(
  report: ScenarioReport,
  flow: Flow,
  path: Path,
  vessels: Named<Vessel>,
  pumps: Named<Pump>,
): boolean {
  const before = report.faults.length;
  checkEnds(report, path, flow, vessels);
  if (!report.oneOf(flow.kind, ['pumped', 'gravity'], [...path, 'kind'])) return false;
  if (flow.kind === 'pumped') {
    report.known(flow.pump, pumps, [...path, 'pump'], 'pump');
    report.within(flow.rate, flowRanges.rate, [...path, 'rate']);
  } else report.within(flow.share, flowRanges.share, [...path, 'share']);
  return report.faults.length === before;
}

/** Checks pumps by themselves. */
export function checkPumps(report: ScenarioReport, { pumps }: Scenario): Named<Pump> {
  return checkNamed(report, 'pumps', pumps, most.pumps, (pump, path) => {
    const { timer } = pump;
    const at = [...path, 'timer'];
    const sound = report.numbers(pump, pumpRanges, path);
    if (timer === undefined) return sound;
    const { on, off } = timerRanges;
    return report.holds(timer, at) && report.numbers(timer, { on, off, offset: anyNumber }, at) && sound;
  });
}

/** Checks flows, and the pumps against what they draw from. */
export function checkFlows(
  report: ScenarioReport,
  { flows }: Scenario,
  vessels: Named<Vessel>,
  pumps: Named<Pump>,
): FlowReading {
  if (!report.checkCount(['flows'], flows.length, most.flows)) return { flows: [], edges: [], whole: false };
  const sound = flows.map((flow, index) => checkFlow(report, flow, ['flows', index], vessels, pumps));
  const edges = flows.map(({ kind, from, to }, index) => ({
    path: ['flows', index],
    ...{ from, to, pumped: kind === 'pumped' },
  }));
  const reading = { flows: flows.filter((_, index) => sound[index]), edges, whole: sound.every(Boolean) };
  if (reading.whole) {
    const falling = new Map<string, { path: Path; share: number }[]>();
    flows.forEach((flow, index) => {
      if (flow.kind !== 'gravity') return;
      const others = falling.get(flow.from) ?? [];
      others.push({ path: ['flows', index], share: flow.share });
      falling.set(flow.from, others);
    });
    for (const [from, leaving] of falling) checkShares(report, from, leaving);
  }
  for (const [name, pump] of pumps) {
    const path = ['pumps', name];
    const [from, ...others] = sourcesOf(report, path, name, reading);
    const source = from === undefined || others.length > 0 ? undefined : vessels.get(from);
    if (pump !== undefined && source !== undefined) checkPumpLevels(report, path, pump, source);
  }
  return reading;
}

function checkRain(
  report: ScenarioReport,
  { rainTank, days }: Scenario,
  waters: Named<SourceWater>,
): RainTank | undefined {
  const path = ['rainTank'];
  if (rainTank === undefined || !report.holds(rainTank, path)) return undefined;
  const before = report.faults.length;
  report.known(rainTank.water, waters, [...path, 'water'], 'water');
  if (report.numbers(rainTank, rainTankRanges, path)) checkRainTank(report, path, rainTank);
  checkDailyValue(report, rainTank.rain, [...path, 'rain'], { ...dailyRanges.rain, days });
  return report.faults.length > before ? undefined : rainTank;
}

function checkSource(
  report: ScenarioReport,
  source: TopUpSource,
  path: Path,
  waters: Named<SourceWater>,
): void {
  if (!report.holds(source, path)) return;
  if (!report.oneOf(source.kind, ['rain-tank', 'mains'], [...path, 'kind'])) return;
  if (source.kind === 'rain-tank') {
    report.lacks(path, 'rain tank', 'rain-tank');
    return;
  }
  report.known(source.water, waters, [...path, 'water'], 'water');
  report.numbers(source, capRanges, path, { optional: ['weeklyCap'], endless: ['dailyCap', 'weeklyCap'] });
}

function checkValve(
  report: ScenarioReport,
  { topUp }: Scenario,
  waters: Named<SourceWater>,
  reservoir: Vessel | undefined,
): TopUp | undefined {
  const list = ['topUp', 'sources'];
  if (topUp === undefined || !report.holds(topUp, ['topUp'])) return undefined;
  if (!report.isList(topUp.sources, list)) return undefined;
  const before = report.faults.length;
  const sound = report.numbers(topUp, topUpRanges, ['topUp']);
  const supplies = { path: list, count: topUp.sources.length };
  checkFloat(report, ['topUp'], topUp.level, supplies, sound ? reservoir : undefined);
  topUp.sources.forEach((source, index) => checkSource(report, source, [...list, index], waters));
  return report.faults.length > before ? undefined : topUp;
}

/** Checks the float valve and the rain tank; gives those that are there and without fault. */
export function checkSupply(
  report: ScenarioReport,
  scenario: Scenario,
  waters: Named<SourceWater>,
  reservoir: Vessel | undefined,
): { readonly topUp: TopUp | undefined; readonly rainTank: RainTank | undefined } {
  const rainTank = checkRain(report, scenario, waters);
  return { rainTank, topUp: checkValve(report, scenario, waters, reservoir) };
}
