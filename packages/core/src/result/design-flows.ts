import type { Scenario, Timer } from '../scenario/scenario.js';

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
