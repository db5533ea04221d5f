// Reads numbers as: actions
import { waterState } from '../model/layout.js';
import type { Model } from '../model/model.js';
import type { Action } from '../scenario/scenario.js';
import type { CropClock, CropStand } from './crop-clock.js';
import type { Hydraulics } from './hydraulics.js';
import type { Operation } from './operation.js';
import type { Ledger } from './ledger.js';

/** Everything an action may change. */
export interface RunState {
  readonly model: Model;
  readonly y: Float64Array;
  readonly ledger: Ledger;
  readonly operation: Operation;
  readonly crops: CropClock;
  readonly hydraulics: Hydraulics;
  /** What a seedling stand of a batch holds. */
  seedling(batch: number): CropStand;
}

const cohortOf = (bench: RunState, name: string): number =>
  bench.model.scenario.cohorts.findIndex((cohort) => cohort.name === name);
const vesselOf = (bench: RunState, name: string): number => bench.model.layout.vessels.indexOf(name);
const batchesOf = (bench: RunState, name: string): readonly number[] =>
  bench.model.layout.batches.flatMap((batch, index) =>
    bench.model.scenario.plantings[batch.planting].name === name ? [index] : [],
  );
const litres = (volume: number): string => `${Number((volume * 1000).toPrecision(4))} L`;
/** A mass in words, four digits. */
export const grams = (value: number): string => `${Number(value.toPrecision(4))} g`;

/** Share of a cohort meant by a share or a number of fish, never more than all. */
function shareOf(bench: RunState, cohort: number, share: number, number: number | undefined): number {
  const there = bench.y[bench.model.layout.fish[cohort].number];
  if (number === undefined || there === 0) return share;
  return Math.min(1, number / there);
}

function takeFish(
  bench: RunState,
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
export function clearBatch(bench: RunState, batch: number): CropStand | undefined {
  const { mass, nitrogen } = bench.model.layout.batches[batch];
  if (Number.isNaN(bench.crops.planted[batch])) return undefined;
  const stand = { mass: bench.y[mass], nitrogen: bench.y[nitrogen] };
  bench.ledger.post('harvested crop', mass, -bench.y[mass]);
  bench.ledger.post('harvested crop', nitrogen, -bench.y[nitrogen]);
  bench.crops.planted[batch] = Number.NaN;
  return stand;
}

/** Plants a bare batch with seedlings. */
export function plantBatch(bench: RunState, batch: number, time: number): void {
  const { mass, nitrogen } = bench.model.layout.batches[batch];
  const stand = bench.seedling(batch);
  bench.ledger.post('seedlings', mass, stand.mass);
  bench.ledger.post('seedlings', nitrogen, stand.nitrogen);
  bench.crops.planted[batch] = time;
}

function clearPlanting(bench: RunState, name: string): string {
  const stands = batchesOf(bench, name).map((batch) => clearBatch(bench, batch));
  return `${grams(stands.reduce((sum, stand) => sum + (stand?.mass ?? 0), 0))} dry`;
}

function dose(bench: RunState, vessel: string, product: string, mass: number): string {
  const index = vesselOf(bench, vessel);
  const { parameters } = bench.model;
  for (const component of ['tan', 'alkalinity', 'carbon', 'chloride'] as const) {
    const amount = mass * parameters.value(`dose.${product}.${component}`);
    bench.ledger.post('dosing', waterState(index, component), amount);
  }
  return `${grams(mass)} ${product}`;
}

function changeWater(bench: RunState, action: Extract<Action, { kind: 'change-water' }>): string {
  const vessel = vesselOf(bench, action.vessel);
  const there = bench.hydraulics.volume[vessel];
  const volume = Math.min(there, action.volume ?? (action.share ?? 0) * there);
  const water = bench.operation.waters.get(action.water);
  if (water === undefined) throw new RangeError(`no water named ${action.water}`);
  bench.ledger.remove('discharge', vessel, volume / there);
  bench.ledger.postWater('discharge', vessel, -volume);
  bench.ledger.bring(water, vessel, volume);
  bench.ledger.postWater('source water', vessel, volume);
  return `${litres(volume)} for ${action.water}`;
}

/** What does not fit runs over and is lost. */
function cartWater(bench: RunState, action: Extract<Action, { kind: 'cart-water' }>): string {
  const { hydraulics, ledger, operation, model } = bench;
  let kept: number;
  if (action.into === 'rain-tank') kept = hydraulics.fillRainTank(action.volume);
  else {
    const vessel = vesselOf(bench, model.scenario.reservoir);
    const water = operation.waters.get(action.water);
    if (water === undefined) throw new RangeError(`no water named ${action.water}`);
    kept = Math.min(
      action.volume,
      Math.max(0, model.scenario.vessels[vessel].volume - hydraulics.volume[vessel]),
    );
    ledger.bring(water, vessel, kept);
    ledger.postWater('source water', vessel, kept);
    hydraulics.volume[vessel] += kept;
  }
  const lost = action.volume - kept;
  return `${litres(action.volume)} of ${action.water}${lost > 0 ? `, ${litres(lost)} ran over` : ''}`;
}

function drainSolids(bench: RunState, action: Extract<Action, { kind: 'drain-solids' }>): string {
  const vessel = vesselOf(bench, action.vessel);
  const state = bench.model.layout.settled[vessel];
  const taken = state < 0 ? 0 : action.share * bench.y[state];
  if (state >= 0) bench.ledger.post('sludge', state, -taken);
  const there = bench.hydraulics.volume[vessel];
  const water = Math.min(action.water, there / 2);
  if (water > 0) {
    bench.ledger.remove('sludge', vessel, water / there);
    bench.ledger.postWater('sludge', vessel, -water);
    bench.hydraulics.volume[vessel] -= water;
  }
  return `${grams(taken)} dry`;
}

function loseBiofilm(bench: RunState, vessel: string, account: 'sludge' | 'treatment', share: number): void {
  const index = vesselOf(bench, vessel);
  for (const state of [bench.model.layout.aob[index], bench.model.layout.nob[index]]) {
    if (state >= 0) bench.ledger.post(account, state, -share * bench.y[state]);
  }
}

/** Does one action at an instant, books it and logs it. */
export function perform(bench: RunState, action: Action, time: number): void {
  const { ledger, operation, model, y } = bench;
  const say = (place: string, text: string): void => {
    ledger.say(time, action.kind, place, text);
  };
  switch (action.kind) {
    case 'stock': {
      const { mass, number } = model.layout.fish[cohortOf(bench, action.cohort)];
      ledger.post('stocked fish', number, action.number);
      ledger.post('stocked fish', mass, action.number * action.mass);
      say(action.cohort, `${action.number} fish of ${grams(action.mass)}`);
      return;
    }
    case 'harvest-fish':
    case 'lose-fish': {
      const account = action.kind === 'lose-fish' ? 'dead fish' : 'harvested fish';
      const share = shareOf(bench, cohortOf(bench, action.cohort), action.share, action.number);
      say(action.cohort, takeFish(bench, account, action.cohort, share));
      return;
    }
    case 'grade': {
      const from = model.layout.fish[cohortOf(bench, action.cohort)];
      const to = model.layout.fish[cohortOf(bench, action.to)];
      const number = action.share * y[from.number];
      const mass = Math.min(y[from.mass], action.share * action.relativeMass * y[from.mass]);
      for (const [account, group, sign] of [
        ['harvested fish', from, -1],
        ['stocked fish', to, 1],
      ] as const) {
        ledger.post(account, group.mass, sign * mass);
        ledger.post(account, group.number, sign * number);
      }
      say(action.cohort, `${number.toFixed(1)} fish, ${grams(mass)}, to ${action.to}`);
      return;
    }
    case 'plant':
      for (const batch of batchesOf(bench, action.planting)) {
        if (Number.isNaN(bench.crops.planted[batch])) plantBatch(bench, batch, time);
      }
      say(action.planting, 'planted');
      return;
    case 'harvest-crop': {
      const text = clearPlanting(bench, action.planting);
      if (action.replant)
        for (const batch of batchesOf(bench, action.planting)) plantBatch(bench, batch, time);
      say(action.planting, action.replant ? `${text}, replanted` : text);
      return;
    }
    case 'leave-empty':
      say(action.planting, `cleared (${clearPlanting(bench, action.planting)}), left empty`);
      return;
    case 'feed': {
      const cohort = cohortOf(bench, action.cohort);
      if (action.ration !== undefined) operation.ration[cohort] = action.ration;
      if (action.factor !== undefined) operation.factor[cohort] = action.factor;
      if (action.feed !== undefined) operation.feed[cohort] = action.feed;
      say(action.cohort, action.factor === undefined ? 'new ration' : `ration x ${action.factor}`);
      return;
    }
    case 'top-up': {
      if (action.stopped !== undefined) operation.topUpStopped = action.stopped;
      const { dailyCap, weeklyCap } = action;
      const capped = dailyCap !== undefined || weeklyCap !== undefined;
      if (capped) {
        (model.scenario.topUp?.sources ?? []).forEach((source, index) => {
          if (source.kind !== 'mains') return;
          operation.caps[index] = dailyCap ?? Infinity;
          operation.weeklyCaps[index] = weeklyCap ?? Infinity;
        });
      }
      const cap =
        weeklyCap === undefined ? `${(dailyCap ?? Infinity) * 1000} L/d` : `${weeklyCap * 1000} L/week`;
      say(model.scenario.reservoir, action.stopped === true ? 'stopped' : capped ? `cap ${cap}` : 'open');
      return;
    }
    case 'source-water':
      operation.waters.set(action.water, action.to);
      say(action.water, 'changed');
      return;
    case 'change-water':
      say(action.vessel, changeWater(bench, action));
      return;
    case 'cart-water':
      say(action.into === 'rain-tank' ? 'rain-tank' : model.scenario.reservoir, cartWater(bench, action));
      return;
    case 'dose':
      say(action.vessel, dose(bench, action.vessel, action.product, action.mass));
      return;
    case 'pump':
      operation.pumpOn[model.scenario.pumps.findIndex((pump) => pump.name === action.pump)] = action.running;
      say(action.pump, action.running ? 'on' : 'off');
      return;
    case 'aeration':
      operation.aerating[vesselOf(bench, action.vessel)] = action.running;
      say(action.vessel, action.running ? 'on' : 'off');
      return;
    case 'clean': {
      loseBiofilm(bench, action.vessel, 'sludge', action.biofilm);
      const settled = model.layout.settled[vesselOf(bench, action.vessel)];
      if (settled >= 0) ledger.post('sludge', settled, -action.solids * y[settled]);
      say(action.vessel, `${action.biofilm * 100} % of the biofilm, ${action.solids * 100} % of the solids`);
      return;
    }
    case 'medicate':
      loseBiofilm(bench, action.vessel, 'treatment', action.kills);
      say(action.vessel, `${action.kills * 100} % of the biofilm killed`);
      return;
    case 'drain-solids':
      say(action.vessel, drainSolids(bench, action));
  }
}
