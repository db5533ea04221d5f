import type { Scenario } from '../scenario/scenario.js';

/** What makes a stream run. */
export const streamKinds = [
  'pumped',
  'gravity',
  'top-up',
  'exchange',
  'leak',
  'overflow',
  'evaporation',
  'transpiration',
] as const;

export type StreamKind = (typeof streamKinds)[number];

/** A way that water takes: between vessels, in from a source, or out. */
export interface Stream {
  readonly id: string;
  readonly kind: StreamKind;
  /** Index of the vessel, or -1 for outside. */
  readonly from: number;
  /** The same where it goes. */
  readonly to: number;
  /** Account outside, where one end is outside. */
  readonly account?: 'source water' | 'discharge' | 'air';
  /** Name of the source water, for water that comes in. */
  readonly water?: string;
  /** Index in scenario.flows, topUp.sources or plantings, by kind. */
  readonly index: number;
  /** Whether what is dissolved goes with the water. */
  readonly carries: boolean;
}

/** All streams that a scenario can have, whether or not they run at a given time. */
export function layStreams(scenario: Scenario): readonly Stream[] {
  const places = new Map(scenario.vessels.map(({ name }, index) => [name, index]));
  const vesselOf = (name: string): number => places.get(name) ?? -1;
  const reservoir = vesselOf(scenario.reservoir);
  const flows = scenario.flows.map((flow, index): Stream => ({
    id: `${flow.from} > ${flow.to}`,
    kind: flow.kind,
    from: vesselOf(flow.from),
    to: vesselOf(flow.to),
    index,
    carries: true,
  }));
  const sources = (scenario.topUp?.sources ?? []).map((source, index): Stream => {
    const water = source.kind === 'mains' ? source.water : (scenario.rainTank?.water ?? '');
    return {
      id:
        source.kind === 'mains'
          ? `${source.water} > ${scenario.reservoir}`
          : `rain tank > ${scenario.reservoir}`,
      kind: 'top-up',
      from: -1,
      to: reservoir,
      account: 'source water',
      water,
      index,
      carries: true,
    };
  });
  const out = (kind: StreamKind, from: number, index = -1): Stream => ({
    id: `${scenario.vessels[from].name} > ${kind}`,
    kind,
    from,
    to: -1,
    account: kind === 'evaporation' ? 'air' : 'discharge',
    index,
    carries: kind !== 'evaporation',
  });
  const losses = scenario.vessels.flatMap((vessel, from) => [
    ...(vessel.exchange > 0 ? [out('exchange', from)] : []),
    ...(vessel.leak > 0 ? [out('leak', from)] : []),
    ...(vessel.open > 0 || vessel.covered > 0 ? [out('evaporation', from)] : []),
  ]);
  const transpiration = scenario.plantings.map((planting, index): Stream => ({
    id: `${planting.vessel} > ${planting.name}`,
    kind: 'transpiration',
    from: vesselOf(planting.vessel),
    to: -1,
    account: 'air',
    index,
    carries: false,
  }));
  return [...flows, ...sources, ...losses, out('overflow', reservoir), ...transpiration];
}
