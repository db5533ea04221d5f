// Reads numbers as: actions
import { waterState } from '../model/layout.js';
import type { Model } from '../model/model.js';
import type { Deed } from '../scenario/scenario.js';
import type { CropClock, CropStand } from './crop-clock.js';
import type { Hydraulics } from './hydraulics.js';
import type { Keeper } from './settings.js';
import type { Ledger } from './ledger.js';

/** Everything an action may change. */
export interface Bench {
  readonly model: Model;
  readonly y: Float64Array;
  readonly ledger: Ledger;
  readonly keeper: Keeper;
  readonly crops: CropClock;
  readonly hydraulics: Hydraulics;
  /** What a seedling stand of a batch holds. */
  seedling(batch: number): CropStand;
}

/**
 * Order of kinds at one instant: what leaves, then water and cleaning, then what comes, then settings.
 * Within a kind: the order of the file.
 */
export const deedOrder: readonly Deed['kind'][] = [
  'lose-fish',
  'harvest-fish',
  'grade',
  'harvest-crop',
  'leave-empty',
  'drain-solids',
  'clean',
  'medicate',
  'change-water',
  'cart-water',
  'dose',
  'stock',
  'plant',
  'source-water',
  'top-up',
  'feed',
  'aeration',
  'pump',
];

const cohortOf = (bench: Bench, name: string): number =>
  bench.model.scenario.cohorts.findIndex((cohort) => cohort.name === name);
const cellOf = (bench: Bench, name: string): number => bench.model.layout.cells.indexOf(name);
const batchesOf = (bench: Bench, name: string): readonly number[] =>
  bench.model.layout.batches.flatMap((batch, index) =>
    bench.model.scenario.plantings[batch.planting].name === name ? [index] : [],
  );
const litres = (volume: number): string => `${Number((volume * 1000).toPrecision(4))} L`;
/** A mass in words, four digits. */
export const grams = (value: number): string => `${Number(value.toPrecision(4))} g`;

/** Share of a cohort meant by a share or a number of fish, never more than all. */
function shareOf(bench: Bench, cohort: number, share: number, number: number | undefined): number {
  const there = bench.y[bench.model.layout.fish[cohort].number];
  if (number === undefined || there === 0) return share;
  return Math.min(1, number / there);
}

function takeFish(
  bench: Bench,
  account: 'harvested fish' | 'dead fish',
  name: string,
  share: number,
): string {
  const { mass, number } = bench.model.layout.fish[cohortOf(bench, name)];
  const text = `${(share * bench.y[number]).toFixed(1)} fish, ${grams(share * bench.y[mass])}`;
  bench.ledger.post(account, mass, -share * bench.y[mass]);
  bench.ledger.post(account, number, -share * bench.y[number]);
  return text;
}

/** Takes a batch off its bed. Returns what it weighed, or undefined when it was bare. */
export function clearBatch(bench: Bench, batch: number): CropStand | undefined {
  const { mass, nitrogen } = bench.model.layout.batches[batch];
  if (Number.isNaN(bench.crops.planted[batch])) return undefined;
  const stand = { mass: bench.y[mass], nitrogen: bench.y[nitrogen] };
  bench.ledger.post('harvested crop', mass, -bench.y[mass]);
  bench.ledger.post('harvested crop', nitrogen, -bench.y[nitrogen]);
  bench.crops.planted[batch] = Number.NaN;
  return stand;
}

/** Plants a bare batch with seedlings. */
export function plantBatch(bench: Bench, batch: number, time: number): void {
  const { mass, nitrogen } = bench.model.layout.batches[batch];
  const stand = bench.seedling(batch);
  bench.ledger.post('seedlings', mass, stand.mass);
  bench.ledger.post('seedlings', nitrogen, stand.nitrogen);
  bench.crops.planted[batch] = time;
}

function clearPlanting(bench: Bench, name: string): string {
  const stands = batchesOf(bench, name).map((batch) => clearBatch(bench, batch));
  return `${grams(stands.reduce((sum, stand) => sum + (stand?.mass ?? 0), 0))} dry`;
}

function dose(bench: Bench, vessel: string, product: string, mass: number): string {
  const cell = cellOf(bench, vessel);
  const { parameters } = bench.model;
  for (const component of ['tan', 'alkalinity', 'carbon', 'chloride'] as const) {
    const amount = mass * parameters.value(`dose.${product}.${component}`);
    bench.ledger.post('dosing', waterState(cell, component), amount);
  }
  return `${grams(mass)} ${product}`;
}

function changeWater(bench: Bench, deed: Extract<Deed, { kind: 'change-water' }>): string {
  const cell = cellOf(bench, deed.vessel);
  const there = bench.hydraulics.volume[cell];
  const volume = Math.min(there, deed.volume ?? (deed.share ?? 0) * there);
  const water = bench.keeper.waters.get(deed.water);
  if (water === undefined) throw new RangeError(`no water named ${deed.water}`);
  bench.ledger.remove('discharge', cell, volume / there);
  bench.ledger.postWater('discharge', cell, -volume);
  bench.ledger.bring(water, cell, volume);
  bench.ledger.postWater('source water', cell, volume);
  return `${litres(volume)} for ${deed.water}`;
}

/** What does not fit runs over and is lost. */
function cartWater(bench: Bench, deed: Extract<Deed, { kind: 'cart-water' }>): string {
  const { hydraulics, ledger, keeper, model } = bench;
  let kept: number;
  if (deed.into === 'rain-tank') kept = hydraulics.fillRainTank(deed.volume);
  else {
    const cell = cellOf(bench, model.scenario.reservoir);
    const water = keeper.waters.get(deed.water);
    if (water === undefined) throw new RangeError(`no water named ${deed.water}`);
    kept = Math.min(deed.volume, Math.max(0, model.scenario.vessels[cell].volume - hydraulics.volume[cell]));
    ledger.bring(water, cell, kept);
    ledger.postWater('source water', cell, kept);
    hydraulics.volume[cell] += kept;
  }
  const lost = deed.volume - kept;
  return `${litres(deed.volume)} of ${deed.water}${lost > 0 ? `, ${litres(lost)} ran over` : ''}`;
}

function drainSolids(bench: Bench, deed: Extract<Deed, { kind: 'drain-solids' }>): string {
  const cell = cellOf(bench, deed.vessel);
  const state = bench.model.layout.settled[cell];
  const taken = state < 0 ? 0 : deed.share * bench.y[state];
  if (state >= 0) bench.ledger.post('sludge', state, -taken);
  const there = bench.hydraulics.volume[cell];
  const water = Math.min(deed.water, there / 2);
  if (water > 0) {
    bench.ledger.remove('sludge', cell, water / there);
    bench.ledger.postWater('sludge', cell, -water);
    bench.hydraulics.volume[cell] -= water;
  }
  return `${grams(taken)} dry`;
}

function loseBiofilm(bench: Bench, vessel: string, account: 'sludge' | 'treatment', share: number): void {
  const cell = cellOf(bench, vessel);
  for (const state of [bench.model.layout.aob[cell], bench.model.layout.nob[cell]]) {
    if (state >= 0) bench.ledger.post(account, state, -share * bench.y[state]);
  }
}

/** Does one deed at an instant, books it and logs it. */
export function perform(bench: Bench, deed: Deed, time: number): void {
  const { ledger, keeper, model, y } = bench;
  const say = (place: string, text: string): void => {
    ledger.say(time, deed.kind, place, text);
  };
  switch (deed.kind) {
    case 'stock': {
      const { mass, number } = model.layout.fish[cohortOf(bench, deed.cohort)];
      ledger.post('stocked fish', number, deed.number);
      ledger.post('stocked fish', mass, deed.number * deed.mass);
      say(deed.cohort, `${deed.number} fish of ${grams(deed.mass)}`);
      return;
    }
    case 'harvest-fish':
    case 'lose-fish': {
      const account = deed.kind === 'lose-fish' ? 'dead fish' : 'harvested fish';
      const share = shareOf(bench, cohortOf(bench, deed.cohort), deed.share, deed.number);
      say(deed.cohort, takeFish(bench, account, deed.cohort, share));
      return;
    }
    case 'grade': {
      const from = model.layout.fish[cohortOf(bench, deed.cohort)];
      const to = model.layout.fish[cohortOf(bench, deed.to)];
      const number = deed.share * y[from.number];
      const mass = Math.min(y[from.mass], deed.share * deed.relativeMass * y[from.mass]);
      for (const [account, group, sign] of [
        ['harvested fish', from, -1],
        ['stocked fish', to, 1],
      ] as const) {
        ledger.post(account, group.mass, sign * mass);
        ledger.post(account, group.number, sign * number);
      }
      say(deed.cohort, `${number.toFixed(1)} fish, ${grams(mass)}, to ${deed.to}`);
      return;
    }
    case 'plant':
      for (const batch of batchesOf(bench, deed.planting)) {
        if (Number.isNaN(bench.crops.planted[batch])) plantBatch(bench, batch, time);
      }
      say(deed.planting, 'planted');
      return;
    case 'harvest-crop': {
      const text = clearPlanting(bench, deed.planting);
      if (deed.replant) for (const batch of batchesOf(bench, deed.planting)) plantBatch(bench, batch, time);
      say(deed.planting, deed.replant ? `${text}, replanted` : text);
      return;
    }
    case 'leave-empty':
      say(deed.planting, `cleared (${clearPlanting(bench, deed.planting)}), left empty`);
      return;
    case 'feed': {
      const cohort = cohortOf(bench, deed.cohort);
      if (deed.ration !== undefined) keeper.ration[cohort] = deed.ration;
      if (deed.factor !== undefined) keeper.factor[cohort] = deed.factor;
      if (deed.feed !== undefined) keeper.feed[cohort] = deed.feed;
      say(deed.cohort, deed.factor === undefined ? 'new ration' : `ration x ${deed.factor}`);
      return;
    }
    case 'top-up': {
      if (deed.stopped !== undefined) keeper.topUpStopped = deed.stopped;
      const { dailyCap, weeklyCap } = deed;
      const capped = dailyCap !== undefined || weeklyCap !== undefined;
      if (capped) {
        (model.scenario.topUp?.sources ?? []).forEach((source, index) => {
          if (source.kind !== 'mains') return;
          keeper.caps[index] = dailyCap ?? Infinity;
          keeper.weeklyCaps[index] = weeklyCap ?? Infinity;
        });
      }
      const cap =
        weeklyCap === undefined ? `${(dailyCap ?? Infinity) * 1000} L/d` : `${weeklyCap * 1000} L/week`;
      say(model.scenario.reservoir, deed.stopped === true ? 'stopped' : capped ? `cap ${cap}` : 'open');
      return;
    }
    case 'source-water':
      keeper.waters.set(deed.water, deed.to);
      say(deed.water, 'changed');
      return;
    case 'change-water':
      say(deed.vessel, changeWater(bench, deed));
      return;
    case 'cart-water':
      say(deed.into === 'rain-tank' ? 'rain-tank' : model.scenario.reservoir, cartWater(bench, deed));
      return;
    case 'dose':
      say(deed.vessel, dose(bench, deed.vessel, deed.product, deed.mass));
      return;
    case 'pump':
      keeper.pumpOn[model.scenario.pumps.findIndex((pump) => pump.name === deed.pump)] = deed.running;
      say(deed.pump, deed.running ? 'on' : 'off');
      return;
    case 'aeration':
      keeper.aerating[cellOf(bench, deed.vessel)] = deed.running;
      say(deed.vessel, deed.running ? 'on' : 'off');
      return;
    case 'clean': {
      loseBiofilm(bench, deed.vessel, 'sludge', deed.biofilm);
      const settled = model.layout.settled[cellOf(bench, deed.vessel)];
      if (settled >= 0) ledger.post('sludge', settled, -deed.solids * y[settled]);
      say(deed.vessel, `${deed.biofilm * 100} % of the biofilm, ${deed.solids * 100} % of the solids`);
      return;
    }
    case 'medicate':
      loseBiofilm(bench, deed.vessel, 'treatment', deed.kills);
      say(deed.vessel, `${deed.kills * 100} % of the biofilm killed`);
      return;
    case 'drain-solids':
      say(deed.vessel, drainSolids(bench, deed));
  }
}
