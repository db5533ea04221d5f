import { sum } from '../base/sum.js';
import { conditionsAt } from './forcing.js';
import type { RunParts } from './run-state.js';
import { grams } from './stock.js';

/** What stands of a batch but its fruit. */
const standing = ['mass', 'nitrogen'] as const;

const batchesOf = ({ model }: RunParts, name: string | undefined): readonly number[] =>
  model.layout.batches.flatMap((batch, index) =>
    model.scenario.plantings[batch.planting].name === name ? [index] : [],
  );

/** Takes a batch off its bed with its fruit. Returns its dry mass, g, or undefined when it was bare. */
function clearBatch(parts: RunParts, batch: number): number | undefined {
  const { planted } = parts.state;
  if (Number.isNaN(planted[batch])) return undefined;
  const taken = takeCrop(parts, batch, 1) + takeFruit(parts, batch, 1);
  planted[batch] = Number.NaN;
  return taken;
}

/** Takes a share of the plants of a batch with their nitrogen, without fruit. Returns their dry mass, g. */
function takeCrop({ model, state, ledger }: RunParts, batch: number, share: number): number {
  const own = model.layout.batches[batch];
  const taken = share * state.y[own.mass];
  for (const part of standing) ledger.post('harvested crop', own[part], -share * state.y[own[part]]);
  return taken;
}

/** Takes a share of the fruit of a batch. Returns its dry mass, g. */
function takeFruit({ model, state, ledger }: RunParts, batch: number, share: number): number {
  const { fruit } = model.layout.batches[batch];
  if (fruit < 0) return 0;
  const taken = share * state.y[fruit];
  ledger.post('harvested crop', fruit, -taken);
  return taken;
}

/**
 * Plants a bare batch: with what stands in the oldest batch of its tray that is of age, which is sown again where that is said;
 * else with seedlings. Tells where plants came from, where the batch has a tray.
 */
function plantBatch(parts: RunParts, batch: number, time: number): string {
  const { model, state, ledger, crops } = parts;
  const { batches } = model.layout;
  const young = batches[batch];
  const { tray } = model.scenario.plantings[young.planting];
  const [ready] = batchesOf(parts, tray)
    .filter((each) => crops.ripe(each, time))
    .sort((a, b) => state.planted[a] - state.planted[b]);
  state.planted[batch] = time;
  if (ready === undefined) {
    const stand = crops.stand(batch, 0, conditionsAt(model, young.vessel, state.day, 0, 0, batch));
    for (const part of standing) ledger.post('seedlings', young[part], stand[part]);
    return tray === undefined ? '' : ` with seedlings from elsewhere: none in ${tray} are of age`;
  }
  const old = batches[ready];
  takeFruit(parts, ready, 1);
  for (const part of standing) {
    const amount = state.y[old[part]];
    ledger.post('transplants', old[part], -amount);
    ledger.post('transplants', young[part], amount);
  }
  state.planted[ready] = Number.NaN;
  if (model.scenario.plantings[old.planting].after === 'replant') plantBatch(parts, ready, time);
  return ` out of ${old.name}`;
}

/** Takes all batches of a planting off their bed. Returns what that was, in words. */
export function clearPlanting(parts: RunParts, name: string): string {
  const taken = batchesOf(parts, name).map((batch) => clearBatch(parts, batch) ?? 0);
  return `${grams(sum(taken))} dry`;
}

/** Plants every bare batch of a planting: how many batches it has, how many were bare, and where plants came from, in words. */
export function plantAll(
  parts: RunParts,
  planting: string,
  time: number,
): { readonly batches: number; readonly bare: number; readonly from: string } {
  const batches = batchesOf(parts, planting);
  const bare = batches.filter((batch) => Number.isNaN(parts.state.planted[batch]));
  const from = new Set(bare.map((batch) => plantBatch(parts, batch, time)));
  return { batches: batches.length, bare: bare.length, from: [...from].join(', and') };
}

/** Picks ripe fruit and cuts what grows again. Returns whether there was any. */
function pickAndCut(parts: RunParts, time: number): boolean {
  const { model, crops, ledger } = parts;
  let any = false;
  model.layout.batches.forEach(({ name }, index) => {
    const picked = crops.picked(index, time);
    const cut = crops.cut(index, time);
    if (picked > 0) ledger.say(time, 'pick', name, `${grams(takeFruit(parts, index, picked))} dry`);
    if (cut > 0) ledger.say(time, 'cut', name, `${grams(takeCrop(parts, index, cut))} dry`);
    any ||= picked > 0 || cut > 0;
  });
  return any;
}

/**
 * Harvests the batches that are ripe, but for trays, whose plants wait to be set out, and plants again where that is said; picks
 * and cuts the others. Returns whether there was anything.
 */
export function harvestRipe(parts: RunParts, time: number): boolean {
  const { model, crops, ledger } = parts;
  const trays = new Set(model.scenario.plantings.map(({ tray }) => tray));
  let any = false;
  model.layout.batches.forEach((batch, index) => {
    if (trays.has(model.scenario.plantings[batch.planting].name) || !crops.ripe(index, time)) return;
    any = true;
    const replants = model.scenario.plantings[batch.planting].after === 'replant';
    const taken = clearBatch(parts, index) ?? 0;
    const follows = replants ? `replanted${plantBatch(parts, index, time)}` : 'left empty';
    const text = `${grams(taken)} dry, ${follows}`;
    ledger.say(time, 'harvest', batch.name, text);
  });
  return pickAndCut(parts, time) || any;
}
