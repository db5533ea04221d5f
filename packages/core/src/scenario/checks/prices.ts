import { numberFrom } from '../../base/bounds.js';
import type { Report } from '../file/report.js';
import type { Path } from '../file/tree.js';
import type { Prices } from '../prices.js';
import type { Scenario } from '../scenario.js';
import type { ScenarioReport } from './scenario-report.js';

/** A price, and power in W: any number from 0. */
const priceRange = numberFrom(0, 1e9);

/** Whether a product or a crop with a price is known; a crop must be planted. A fault where it is not. */
export function checkPriced(
  report: Report,
  what: 'product' | 'crop',
  name: string,
  names: readonly string[],
  path: Path,
): boolean {
  return report.known(name, names, path, what);
}

/** Whether electricity has both its price and how much of it there is; a fault where one is missing. */
export function checkPower(
  report: Report,
  { electricity, power }: Pick<Prices, 'electricity' | 'power'>,
  path: Path,
): void {
  if (electricity !== undefined && power === undefined)
    report.fault([...path, 'power'], 'missing', {
      expected: 'what pumps, air and heat draw in the mean, such as "150 W"',
    });
  if (electricity === undefined && power !== undefined)
    report.fault([...path, 'electricity'], 'missing', { expected: 'a price such as "0.3 per kWh"' });
}

/** Checks the prices of a scenario built in code. */
export function checkPrices(
  report: ScenarioReport,
  { prices, plantings }: Pick<Scenario, 'prices' | 'plantings'>,
  products: readonly string[],
): void {
  if (prices === undefined || !report.holds(prices, ['prices'])) return;
  const path = ['prices'];
  if (typeof prices.currency !== 'string')
    report.fault([...path, 'currency'], 'wrong kind of value', { expected: 'a word, or nothing: ""' });
  const single = { feed: priceRange, water: priceRange, electricity: priceRange, power: priceRange };
  report.numbers(prices, single, path, { optional: Object.keys(single) });
  checkPower(report, prices, path);
  const planted = [...new Set(plantings.map(({ crop }) => crop))];
  const lists = [
    { key: 'products', what: 'product', list: prices.products, names: products, per: ['kg'] },
    { key: 'crops', what: 'crop', list: prices.crops, names: planted, per: ['kg', 'plant'] },
  ] as const;
  for (const { key, what, list, names, per } of lists) {
    if (!report.isList(list, [...path, key])) continue;
    for (const { name, ...price } of list) {
      const at = [...path, key, name];
      checkPriced(report, what, name, names, at);
      report.within(price.price, priceRange, [...at, 'price']);
      report.oneOf(price.per, per, [...at, 'per']);
    }
  }
  if (prices.fish === undefined) return;
  report.within(prices.fish.price, priceRange, [...path, 'fish', 'price']);
  report.oneOf(prices.fish.per, ['kg', 'fish'], [...path, 'fish', 'per']);
}
