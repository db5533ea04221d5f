// Reads numbers as: audit of a design
import { sum } from '../../base/sum.js';
import { originOf } from '../../library/origins.js';
import type { Mark } from '../../library/table-row.js';
import type { Model } from '../../model/model.js';
import { areaByClass } from '../../result/limits-for-crops.js';
import type { Scenario, Timer } from '../../scenario/scenario.js';
import { feedAtStart, fishOfDesign, tanByModel, tanByRule, waterLost } from './design-loads.js';

const duty = (timer: Timer | undefined): number =>
  timer === undefined ? 1 : timer.on / (timer.on + timer.off);

/**
 * Water led into each vessel, m3 d-1, with every pump running by its clock and every vessel at its
 * standpipe: pumped flows, and what comes down by gravity. Top-up and losses are left out. Throws
 * RangeError where gravity leads round in a circle.
 */
export function designFlows(scenario: Scenario): Map<string, number> {
  const clocks = new Map(scenario.pumps.map(({ name, timer }) => [name, duty(timer)]));
  const pumped = scenario.flows.flatMap((flow) =>
    flow.kind === 'pumped'
      ? [{ from: flow.from, to: flow.to, rate: flow.rate * (clocks.get(flow.pump) ?? 1) }]
      : [],
  );
  const gravity = scenario.flows.flatMap((flow) => (flow.kind === 'gravity' ? [flow] : []));
  const known = new Map<string, number>();
  const inflow = (vessel: string, above: readonly string[]): number => {
    const found = known.get(vessel);
    if (found !== undefined) return found;
    if (above.includes(vessel))
      throw new RangeError(`water runs down in a circle: ${[...above, vessel].join(' > ')}`);
    let total = 0;
    for (const flow of pumped) if (flow.to === vessel) total += flow.rate;
    for (const flow of gravity) {
      if (flow.to === vessel) total += flow.share * overflow(flow.from, [...above, vessel]);
    }
    known.set(vessel, total);
    return total;
  };
  const overflow = (vessel: string, above: readonly string[]): number => {
    if (vessel === scenario.reservoir) return 0;
    const drawn = pumped.filter(({ from }) => from === vessel).reduce((total, { rate }) => total + rate, 0);
    return Math.max(0, inflow(vessel, above) - drawn);
  };
  return new Map(scenario.vessels.map(({ name }) => [name, inflow(name, [])]));
}

/** One number of a design beside what is published for it. */
export interface AuditItem {
  readonly name: string;
  /** Vessel, or `system`. */
  readonly place: string;
  /** In `unit`. */
  readonly value: number;
  readonly unit: string;
  /** Published range; an end that is absent is open. */
  readonly low?: number;
  /** Upper end. */
  readonly high?: number;
  /** `none`: no range is published for it here. */
  readonly verdict: 'inside' | 'below' | 'above' | 'none';
  readonly source?: string;
  readonly page?: string;
  readonly mark?: Mark;
  /** How the number was come by. */
  readonly note: string;
}

type Bare = Pick<AuditItem, 'name' | 'place' | 'value' | 'unit' | 'note'>;
type Bounds = { readonly low?: number; readonly high?: number };

function verdictOf(value: number, { low, high }: Bounds): AuditItem['verdict'] {
  if (low === undefined && high === undefined) return 'none';
  if (low !== undefined && value < low) return 'below';
  return high !== undefined && value > high ? 'above' : 'inside';
}

/** An item with its bounds, sourced to a row of the tables. */
function item(model: Model, bare: Bare, bounds: Bounds = {}, id?: string): AuditItem {
  const cited = id === undefined ? {} : originOf(model.parameters.number(id));
  return { ...bare, ...bounds, verdict: verdictOf(bare.value, bounds), ...cited };
}

/** An item whose bounds follow from the balance of water alone. */
const byBalance = (bare: Bare, bounds: Bounds): AuditItem => ({
  ...bare,
  ...bounds,
  verdict: verdictOf(bare.value, bounds),
  source: 'balance of its water',
});

function turnover(model: Model): AuditItem[] {
  const { scenario, parameters } = model;
  const flows = designFlows(scenario);
  return scenario.vessels.map(({ name, kind, volume }) => {
    const bare = {
      name: 'turnover',
      place: name,
      value: (flows.get(name) ?? 0) / volume,
      unit: '1/d',
      note: 'water led in per day over volume, pumps by their clocks',
    };
    if (kind !== 'fish-tank') return item(model, bare);
    const bound = (end: string): number => parameters.value(`limit.turnover-tank-${end}.value`);
    return item(model, bare, { low: bound('low'), high: bound('high') }, 'limit.turnover-tank-low.value');
  });
}

function feedPerArea(model: Model): AuditItem[] {
  const { scenario, parameters } = model;
  const { leafy, fruiting } = areaByClass(scenario.plantings);
  const area = leafy + fruiting;
  if (area === 0) return [];
  const bound = (end: string): number =>
    (leafy * parameters.value(`limit.feed-per-area-leafy-${end}.value`) +
      fruiting * parameters.value(`limit.feed-per-area-fruiting-${end}.value`)) /
    area;
  const bare = {
    name: 'feed per planted area',
    place: 'system',
    value: sum(feedAtStart(scenario)) / area,
    unit: 'g/(m2 d)',
    note: `feed at the start over ${area} m2 (range by leafy and fruiting area, 32 % protein feed)`,
  };
  return [
    item(model, bare, { low: bound('low'), high: bound('high') }, 'limit.feed-per-area-leafy-low.value'),
  ];
}

/** What each cohort leaves of its feed at the start, in sound water. */
function feedLeft(model: Model): AuditItem[] {
  const id = 'limit.feed-uneaten.value';
  return fishOfDesign(model)
    .filter(({ offered }) => offered > 0)
    .map(({ cohort, offered, eaten }) => {
      const note =
        'share of the feed at the start that fish leave, in sound water at the temperature for which their upkeep is stated';
      const bare = { name: 'feed not eaten', place: cohort, value: 1 - eaten / offered, unit: '1', note };
      return item(model, bare, { high: model.parameters.value(id) }, id);
    });
}

function tan(model: Model): AuditItem[] {
  const bare = (name: string, value: number, note: string): Bare => ({
    name,
    place: 'system',
    value,
    unit: 'g N/d',
    note,
  });
  return [
    item(
      model,
      bare('TAN by rule', tanByRule(model), 'rule x protein fed at the start'),
      {},
      'limit.tan-per-protein.value',
    ),
    item(
      model,
      bare(
        'TAN by this model',
        tanByModel(model),
        'what fish give off at the start: TAN, and urea that becomes it',
      ),
    ),
  ];
}

function surface(model: Model): AuditItem[] {
  const { scenario, parameters } = model;
  const load = tanByModel(model);
  const present = sum(scenario.vessels.map((vessel) => vessel.surface));
  if (load === 0) return [];
  return ['areal-rate', 'areal-rate-warm'].map((rate) => {
    const at = (end: string): number => parameters.value(`limit.${rate}-${end}.value`);
    const low = load / at('high');
    const high = load / at('low');
    const bare = {
      name: rate === 'areal-rate' ? 'surface, 15-20 degC' : 'surface, above 25 degC',
      place: 'system',
      value: present,
      unit: 'm2',
      note: `present, against what ${load.toPrecision(3)} g TAN/d needs at ${at('low')} to ${at('high')} g/(m2 d); spare surface is room to grow, not ready capacity`,
    };
    return item(model, bare, { low, high }, `limit.${rate}-low.value`);
  });
}

function stocking(model: Model): AuditItem[] {
  const { scenario, parameters } = model;
  return scenario.vessels.flatMap(({ name, volume }) => {
    const cohorts = scenario.fish.filter((cohort) => cohort.vessel === name && cohort.number > 0);
    if (cohorts.length === 0) return [];
    const bounds = cohorts.map(({ species }) => ({
      id: `fish.${species}.density-high`,
      value: parameters.value(`fish.${species}.density-high`),
    }));
    const least = bounds.reduce((a, b) => (b.value < a.value ? b : a));
    const bare = {
      name: 'stocking density',
      place: name,
      value: sum(cohorts.map(({ number, mass }) => number * mass)) / volume,
      unit: 'g/m3',
      note: 'fish at the start over volume',
    };
    return [item(model, bare, { high: least.value }, least.id)];
  });
}

function water(model: Model): AuditItem {
  const { scenario, parameters } = model;
  const bare = {
    name: 'water lost',
    place: 'system',
    value: waterLost(model) / sum(scenario.vessels.map(({ volume }) => volume)),
    unit: '1/d',
    note: 'evaporation, transpiration of full crops, leaks and exchange over volume',
  };
  const bound = (end: string): number => parameters.value(`limit.water-loss-${end}.value`);
  return item(model, bare, { low: bound('low'), high: bound('high') }, 'limit.water-loss-low.value');
}

/** What each siphon passes, over what comes into its bed while every pump runs: one that passes less never ends. */
function siphons({ scenario }: Model): AuditItem[] {
  if (!scenario.vessels.some(({ drain }) => drain?.by === 'siphon')) return [];
  const pumps = scenario.pumps.map(({ name, inlet, restart }) => ({ name, inlet, restart }));
  const running = designFlows({ ...scenario, pumps });
  return scenario.vessels.flatMap(({ name, drain }) => {
    const inflow = running.get(name) ?? 0;
    if (drain?.by !== 'siphon' || inflow === 0) return [];
    const note = 'what it passes over the water led in while all pumps run; under 1 the bed never drains';
    const value = drain.rate / inflow;
    return [byBalance({ name: 'siphon', place: name, value, unit: '1', note }, { low: 1 })];
  });
}

/** What each bed that drains lets out at once, over the room that the reservoir has above its float. */
function drainings({ scenario }: Model): AuditItem[] {
  const { vessels, topUp, reservoir } = scenario;
  const brim = vessels.find(({ name }) => name === reservoir)?.volume;
  if (topUp === undefined || brim === undefined || !(brim > topUp.level)) return [];
  return vessels.flatMap(({ name, volume, drain }) => {
    if (drain === undefined) return [];
    const note =
      'what the bed lets out over the room of the reservoir above its float; over 1 water runs over the rim';
    const value = (volume - drain.to) / (brim - topUp.level);
    return [byBalance({ name: 'draining', place: name, value, unit: '1', note }, { high: 1 })];
  });
}

/**
 * Looks a design over without running it: what it turns over, feeds, makes, filters, stocks and loses,
 * each beside its published range. Numbers are of the start of the run. A design aid, not an approval.
 */
export function auditOf(model: Model): readonly AuditItem[] {
  return [
    ...turnover(model),
    ...siphons(model),
    ...drainings(model),
    ...feedPerArea(model),
    ...feedLeft(model),
    ...tan(model),
    ...surface(model),
    ...stocking(model),
    water(model),
  ];
}
