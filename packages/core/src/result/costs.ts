import { sum } from '../base/sum.js';
import type { Run } from '../run/run.js';
import { harvestOf } from './harvest.js';
import { productsGiven } from './base-plan.js';

/** One row of an account: what it is of, and the `amount` that it cost (`spent`) or fetched (`earned`) over the run. */
export interface CostRow {
  readonly name: string;
  readonly kind: 'spent' | 'earned';
  readonly amount: number;
}

/** What a run cost (`spent`) and what it fetched (`earned`) in all, by the prices of its scenario. */
export interface Costs {
  /** Word of the currency; empty where none was written. */
  readonly currency: string;
  readonly rows: readonly CostRow[];
  readonly spent: number;
  readonly earned: number;
}

/** m3 of water that is paid for: through the float valve but for rain, and by water changes and carting. */
function waterBought({ model, samples, postings }: Run): number {
  const [first, last] = [samples[0], samples[samples.length - 1]];
  const sources = model.scenario.topUp?.sources ?? [];
  const byValve = model.streams.map(({ kind, index }, i) =>
    kind === 'top-up' && sources[index].kind === 'mains' ? last.carried[i] - first.carried[i] : 0,
  );
  const poured = postings
    .slice(first.posted, last.posted)
    .filter(({ account, component }) => account === 'source water' && component === 'water')
    .map(({ amount }) => amount);
  return sum(byValve) + sum(poured);
}

/**
 * What a run cost and fetched; undefined where its scenario has no prices. Stock and building are not in it, nor what
 * has no price. Crops count as harvested, fish as taken out alive.
 */
export function costsOf(run: Run): Costs | undefined {
  const { prices } = run.model.scenario;
  if (prices === undefined) return undefined;
  const { samples } = run;
  const days = samples[samples.length - 1].time - samples[0].time;
  const harvest = harvestOf(run);
  const { feed, water, electricity, power = 0, products, crops, fish } = prices;
  const given = productsGiven(run);
  const row = (kind: CostRow['kind'], name: string, amount: number): CostRow => ({ name, kind, amount });
  const kilograms = (masses: readonly number[]): number => sum(masses) / 1000;
  const rows: CostRow[] = [
    ...(feed === undefined ? [] : [row('spent', 'feed', (feed * harvest.feed) / 1000)]),
    ...(water === undefined ? [] : [row('spent', 'water', water * waterBought(run))]),
    ...(electricity === undefined
      ? []
      : [row('spent', 'electricity', (electricity * power * days * 24) / 1000)]),
    ...products.map(({ name, price }) => {
      const masses = given.filter(({ product }) => product === name).map(({ mass }) => mass);
      return row('spent', name, price * kilograms(masses));
    }),
    ...crops.map(({ name, price, per }) => {
      const those = harvest.crops.filter(({ crop }) => crop === name);
      const amount =
        per === 'plant'
          ? sum(those.map(({ plants = 0 }) => plants))
          : kilograms(those.map(({ fresh = 0 }) => fresh));
      return row('earned', name, price * amount);
    }),
    ...(fish === undefined
      ? []
      : [
          row(
            'earned',
            'fish',
            fish.price *
              (fish.per === 'fish'
                ? sum(harvest.fish.map(({ number }) => number))
                : kilograms(harvest.fish.map(({ mass }) => mass))),
          ),
        ]),
  ];
  const total = (kind: CostRow['kind']): number =>
    sum(rows.filter((each) => each.kind === kind).map(({ amount }) => amount));
  return { currency: prices.currency, rows, spent: total('spent'), earned: total('earned') };
}
