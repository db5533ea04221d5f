import { dosedTo } from '../model/dosed.js';
import type { ActionOf } from '../scenario/action-kinds.js';
import type { Action, SourceWater } from '../scenario/scenario.js';
import { clearPlanting, plantAll } from './plants.js';
import { fatOf, grams } from './stock.js';
import type { RunParts } from './run-state.js';

/**
 * What was done, for the log: where (vessel, cohort, planting, pump or water), what came of it, and, where that is less
 * than was asked for, what that was.
 */
type Done = readonly [place: string, text: string, short?: string | undefined];

/** Does an action of a kind to a run, and books what it moves. */
type Effect<One extends Action> = (parts: RunParts, action: One, time: number) => Done;

const cohortOf = ({ model }: RunParts, name: string): number =>
  model.scenario.fish.findIndex((cohort) => cohort.name === name);
const vesselOf = ({ model }: RunParts, name: string): number => model.layout.vessels.indexOf(name);
const litres = (volume: number): string => `${Number((volume * 1000).toPrecision(4))} L`;
function waterOf({ state }: RunParts, name: string): SourceWater {
  const water = state.operation.waters.get(name);
  if (water === undefined) throw new RangeError(`no water named ${name}`);
  return water;
}

/** Share of a cohort meant by a share or a number of fish, never more than all. */
function shareOf({ model, state }: RunParts, cohort: number, share: number, number?: number): number {
  const there = state.y[model.layout.fish[cohort].number];
  if (number === undefined || there === 0) return share;
  return Math.min(1, number / there);
}

/** A number of fish in words: whole fish, though a run counts the mean of many. */
const fishCount = (number: number): string => `${Math.round(number)} fish`;

/** Two numbers of fish that are the same number of whole fish: some died since the number was planned. */
const halfFish = 0.5;

/** A volume that was asked for, in words, where less was there by more than rounding. */
const litresAsked = (asked: number, done: number): string | undefined =>
  asked > done * (1 + 1e-9) ? `${litres(asked)} of water were asked for` : undefined;

function takeFish(
  parts: RunParts,
  account: 'harvested fish' | 'dead fish',
  action: ActionOf<'harvest-fish' | 'lose-fish'>,
): Done {
  const cohort = cohortOf(parts, action.cohort);
  const share = shareOf(parts, cohort, action.share, action.number);
  const { mass, number, fat } = parts.model.layout.fish[cohort];
  const { y } = parts.state;
  const text = `${fishCount(share * y[number])}, ${grams(share * y[mass])}`;
  const less = action.number !== undefined && action.number - y[number] >= halfFish;
  const short = less ? `${action.number} fish were asked for` : undefined;
  parts.ledger.post(account, mass, -share * y[mass]);
  parts.ledger.post(account, number, -share * y[number]);
  parts.ledger.post(account, fat, -share * y[fat]);
  return [action.cohort, text, short];
}

const dose: Effect<ActionOf<'dose'>> = (parts, { vessel, product, mass }, time) => {
  const { parameters, layout } = parts.model;
  for (const [state, amount] of dosedTo(layout, parameters, vessel, product, mass))
    parts.ledger.post('dosing', state, amount);
  parts.record.doses.push({ time, vessel, product, mass });
  return [vessel, `${grams(mass)} ${product}`];
};

const changeWater: Effect<ActionOf<'change-water'>> = (parts, action) => {
  const { state, ledger } = parts;
  const vessel = vesselOf(parts, action.vessel);
  const there = state.water.volume[vessel];
  const wanted = action.volume ?? (action.share ?? 0) * there;
  const volume = Math.min(there, wanted);
  const water = waterOf(parts, action.water);
  ledger.remove('discharge', vessel, volume / there);
  ledger.postWater('discharge', vessel, -volume);
  ledger.bring(water, vessel, volume);
  ledger.postWater('source water', vessel, volume);
  return [action.vessel, `${litres(volume)} for ${action.water}`, litresAsked(wanted, volume)];
};

/** What does not fit runs over and is lost. */
const cartWater: Effect<ActionOf<'cart-water'>> = (parts, action) => {
  const { hydraulics, ledger, model, state } = parts;
  const { reservoir, vessels } = model.scenario;
  let kept: number;
  if (action.into === 'rain-tank') kept = hydraulics.fillRainTank(action.volume);
  else {
    const vessel = vesselOf(parts, reservoir);
    const { volume } = state.water;
    kept = Math.min(action.volume, Math.max(0, vessels[vessel].volume - volume[vessel]));
    ledger.bring(waterOf(parts, action.water), vessel, kept);
    ledger.postWater('source water', vessel, kept);
    volume[vessel] += kept;
  }
  const lost = action.volume - kept;
  const over = lost > 0 ? `, ${litres(lost)} ran over` : '';
  return [
    action.into === 'rain-tank' ? 'rain-tank' : reservoir,
    `${litres(action.volume)} of ${action.water}${over}`,
  ];
};

/** Takes a share of all that has settled in a vessel out as sludge. Returns how much that was, g dry. */
function takeSettled({ model, state, ledger }: RunParts, vessel: number, share: number): number {
  const { settled, settledRefractory } = model.layout;
  let taken = 0;
  for (const index of [settled[vessel], settledRefractory[vessel]]) {
    if (index < 0) continue;
    const amount = share * state.y[index];
    ledger.post('sludge', index, -amount);
    taken += amount;
  }
  return taken;
}

const drainSolids: Effect<ActionOf<'drain-solids'>> = (parts, action) => {
  const { state, ledger } = parts;
  const vessel = vesselOf(parts, action.vessel);
  const taken = takeSettled(parts, vessel, action.share);
  const { volume } = state.water;
  const there = volume[vessel];
  const water = Math.min(action.water, there / 2);
  if (water > 0) {
    ledger.remove('sludge', vessel, water / there);
    ledger.postWater('sludge', vessel, -water);
    volume[vessel] -= water;
  }
  const short = litresAsked(action.water, water);
  const text = short === undefined ? '' : `, with ${litres(water)} of water`;
  return [action.vessel, `${grams(taken)} dry${text}`, short];
};

function loseBiofilm(parts: RunParts, name: string, account: 'sludge' | 'treatment', share: number): void {
  const { layout } = parts.model;
  const vessel = vesselOf(parts, name);
  for (const state of [layout.aob[vessel], layout.nob[vessel], layout.heterotrophs[vessel]]) {
    if (state >= 0) parts.ledger.post(account, state, -share * parts.state.y[state]);
  }
}

/** Stuns a share of the nitrifiers of a vessel that are awake; what happened in words, where any was asked for. */
function stunBiofilm(parts: RunParts, name: string, account: 'sludge' | 'treatment', share = 0): string {
  const state = parts.model.layout.awake[vesselOf(parts, name)];
  if (state >= 0) parts.ledger.post(account, state, -share * parts.state.y[state]);
  return share > 0 ? `, ${share * 100} % stunned` : '';
}

const clean: Effect<ActionOf<'clean'>> = (parts, { vessel, biofilm, solids, stuns }) => {
  loseBiofilm(parts, vessel, 'sludge', biofilm);
  const stunned = stunBiofilm(parts, vessel, 'sludge', stuns);
  takeSettled(parts, vesselOf(parts, vessel), solids);
  return [vessel, `${biofilm * 100} % of the biofilm, ${solids * 100} % of the solids${stunned}`];
};

const grade: Effect<ActionOf<'grade'>> = (parts, action) => {
  const { y } = parts.state;
  const { fish } = parts.model.layout;
  const from = fish[cohortOf(parts, action.cohort)];
  const to = fish[cohortOf(parts, action.to)];
  const number = action.share * y[from.number];
  const mass = Math.min(y[from.mass], action.share * action.relativeMass * y[from.mass]);
  const fat = y[from.mass] > 0 ? (y[from.fat] * mass) / y[from.mass] : 0;
  for (const [group, sign] of [
    [from, -1],
    [to, 1],
  ] as const) {
    parts.ledger.post('graded fish', group.mass, sign * mass);
    parts.ledger.post('graded fish', group.number, sign * number);
    parts.ledger.post('graded fish', group.fat, sign * fat);
  }
  return [action.cohort, `${fishCount(number)}, ${grams(mass)}, to ${action.to}`];
};

const topUp: Effect<ActionOf<'top-up'>> = ({ model, state }, { dailyCap, weeklyCap, stopped }) => {
  const { operation } = state;
  if (stopped !== undefined) operation.topUpStopped = stopped;
  const capped = dailyCap !== undefined || weeklyCap !== undefined;
  if (capped) {
    (model.scenario.topUp?.sources ?? []).forEach((source, index) => {
      if (source.kind !== 'mains') return;
      operation.caps[index] = dailyCap ?? Infinity;
      operation.weeklyCaps[index] = weeklyCap ?? Infinity;
    });
  }
  const cap = weeklyCap === undefined ? `${(dailyCap ?? Infinity) * 1000} L/d` : `${weeklyCap * 1000} L/week`;
  return [model.scenario.reservoir, stopped === true ? 'stopped' : capped ? `cap ${cap}` : 'open'];
};

/** What an action of each kind does. Order and other properties of the kinds: `scenario/action-kinds.ts`. */
const effects: { readonly [Kind in Action['kind']]: Effect<ActionOf<Kind>> } = {
  'lose-fish': (parts, action) => takeFish(parts, 'dead fish', action),
  'harvest-fish': (parts, action) => takeFish(parts, 'harvested fish', action),
  grade,
  'harvest-crop': (parts, { planting, replant }, time) => {
    const text = clearPlanting(parts, planting);
    return [planting, replant ? `${text}, replanted${plantAll(parts, planting, time).from}` : text];
  },
  'leave-empty': (parts, { planting }) => [
    planting,
    `cleared (${clearPlanting(parts, planting)}), left empty`,
  ],
  'drain-solids': drainSolids,
  clean,
  medicate: (parts, { vessel, kills, stuns }) => {
    loseBiofilm(parts, vessel, 'treatment', kills);
    const stunned = stunBiofilm(parts, vessel, 'treatment', stuns);
    return [vessel, `${kills * 100} % of the biofilm killed${stunned}`];
  },
  'change-water': changeWater,
  'cart-water': cartWater,
  dose,
  stock: (parts, action) => {
    const cohort = cohortOf(parts, action.cohort);
    const { mass, number, fat } = parts.model.layout.fish[cohort];
    parts.ledger.post('stocked fish', number, action.number);
    parts.ledger.post('stocked fish', mass, action.number * action.mass);
    parts.ledger.post('stocked fish', fat, fatOf(parts.model, cohort, action.number, action.mass));
    return [action.cohort, `${action.number} fish of ${grams(action.mass)}`];
  },
  plant: (parts, { planting }, time) => {
    const { batches, bare, from } = plantAll(parts, planting, time);
    if (bare === batches) return [planting, `planted${from}`];
    return [planting, `${bare} of ${batches} batches planted${from}`, 'the others stand already'];
  },
  'source-water': ({ state }, { water, to }) => {
    state.operation.waters.set(water, to);
    return [water, 'changed'];
  },
  'top-up': topUp,
  feed: (parts, { cohort: name, ration, factor, feed }) => {
    const { operation } = parts.state;
    const cohort = cohortOf(parts, name);
    if (ration !== undefined) operation.ration[cohort] = ration;
    if (factor !== undefined) operation.factor[cohort] = factor;
    if (feed !== undefined) operation.feed[cohort] = feed;
    return [name, factor === undefined ? 'new ration' : `ration x ${factor}`];
  },
  aeration: (parts, { vessel, running }) => {
    parts.state.operation.aerating[vesselOf(parts, vessel)] = running;
    return [vessel, running ? 'on' : 'off'];
  },
  control: ({ model, state }, { vessel, running }) => {
    (model.scenario.dosers ?? []).forEach((doser, index) => {
      if (doser.vessel === vessel) state.operation.dosing[index] = running;
    });
    return [vessel, running ? 'on' : 'off'];
  },
  pump: ({ model, state }, { pump, running }) => {
    state.operation.pumpOn[model.scenario.pumps.findIndex(({ name }) => name === pump)] = running;
    return [pump, running ? 'on' : 'off'];
  },
};

/** Does one action at an instant, books it and logs it, with what it is part of. */
export function perform(parts: RunParts, action: Action, time: number, cause?: string): void {
  const [place, done, short] = (effects[action.kind] as Effect<Action>)(parts, action, time);
  const text = cause === undefined ? done : `${done}, ${cause}`;
  if (short === undefined) parts.ledger.say(time, action.kind, place, text);
  else parts.ledger.say(time, action.kind, place, `${text}; ${short}`, true);
}
