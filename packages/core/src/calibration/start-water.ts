import { sum } from '../base/sum.js';
import type { Scenario, StartVessel, StartWater } from '../scenario/scenario.js';
import type { StartQuantity } from './free-parameter.js';

/** What a vessel or the whole system is to hold at the start: `start.nitrate@sump`. */
export interface StartAmount {
  readonly name: string;
  /** g m-3, eq m-3; g for settled solids. */
  readonly value: number;
}

/** Solids at the start of which a part hardly breaks down, made to be so many in all: the parts keep their shares. */
function scaled(degradable: number, refractory: number, value: number): readonly [number, number] {
  const all = degradable + refractory;
  const share = all > 0 ? refractory / all : 0;
  return [value * (1 - share), value * share];
}

/** What a scenario says of a quantity at the start: in one vessel, or the mean by volume (settled solids: in all). */
export function startAmount(scenario: Scenario, quantity: StartQuantity, vessel?: string): number {
  const starts = scenario.start.filter((start) => vessel === undefined || start.vessel === vessel);
  if (quantity === 'settled')
    return sum(starts.map((start) => start.settled + (start.settledRefractory ?? 0)));
  const held = (water: StartWater): number =>
    water[quantity] + (quantity === 'solids' ? (water.refractory ?? 0) : 0);
  return (
    sum(starts.map(({ water, volume }) => held(water) * volume)) / sum(starts.map(({ volume }) => volume))
  );
}

function changed(start: StartVessel, quantity: StartQuantity, value: number, places: number): StartVessel {
  if (quantity === 'settled') {
    const [settled, settledRefractory] = scaled(start.settled, start.settledRefractory ?? 0, value / places);
    return { ...start, settled, settledRefractory };
  }
  if (quantity === 'solids') {
    const [solids, refractory] = scaled(start.water.solids, start.water.refractory ?? 0, value);
    return { ...start, water: { ...start.water, solids, refractory } };
  }
  // More alkalinity comes as bicarbonate, so that pH stays about where it was.
  const carbon =
    quantity === 'alkalinity' ? start.water.carbon + value - start.water.alkalinity : start.water.carbon;
  return { ...start, water: { ...start.water, carbon: Math.max(carbon, 0), [quantity]: value } };
}

/** A scenario with other water at the start: all vessels alike where none is named. Settled solids are shared by floors. */
export function withStart(scenario: Scenario, amounts: readonly StartAmount[]): Scenario {
  const floors = new Set(scenario.vessels.filter(({ floor }) => floor > 0).map(({ name }) => name));
  const start = amounts.reduce<readonly StartVessel[]>((starts, { name, value }) => {
    const [, quantity, vessel] = /^start\.([a-z]+)(?:@(.+))?$/.exec(name) ?? [];
    const mine = ({ vessel: place }: StartVessel): boolean =>
      (vessel === undefined || place === vessel) && (quantity !== 'settled' || floors.has(place));
    const places = starts.filter(mine).length;
    return starts.map((each) =>
      mine(each) ? changed(each, quantity as StartQuantity, value, places) : each,
    );
  }, scenario.start);
  return { ...scenario, start };
}
