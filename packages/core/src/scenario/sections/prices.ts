import * as z from 'zod';
import { nearest } from '../../base/nearest.js';
import { complain, kindComplaint } from '../file/complaint.js';
import { compact } from '../file/reader.js';
import type { Path } from '../file/tree.js';
import { type Reads, section } from '../file/values.js';
import { checkPower, checkPriced } from '../checks/prices.js';
import type { NamedPrice, Prices } from '../prices.js';
import type { Planting } from '../scenario.js';
import type { ScenarioReader } from './scenario-reader.js';

/** A price as it is written: `2 per kg`, or with a word for the currency, `2 EUR per kg`. */
export interface WrittenPrice<Per extends string> {
  readonly price: number;
  readonly per: Per;
  readonly currency: string;
}

const form = /^\s*(\d+\.?\d*|\.\d+)\s*([^\s\d]+)?\s+per\s+(\S+)\s*$/;

/** A price per one of a few units. */
function price<Per extends string>(
  description: string,
  units: readonly [Per, ...Per[]],
): Reads<WrittenPrice<Per>, string> {
  const forms = units.map((unit) => `"2 per ${unit}"`).join(' or ');
  const expected = `a price such as ${forms}; a word for the currency may stand behind the number`;
  return z
    .string({ error: ({ input }) => kindComplaint(input, expected) })
    .meta({ description, examples: [`2 per ${units[0]}`] })
    .transform((text, context) => {
      const match = form.exec(text);
      const per = units.find((unit) => unit === match?.[3]);
      if (match !== null && per !== undefined)
        return { price: Number(match[1]), per, currency: match[2] ?? '' };
      const near = match === null ? undefined : nearest(match[3], units);
      const problem = match === null ? 'not a price' : 'a price per another unit';
      context.addIssue({
        code: 'custom',
        message: complain({ problem, expected, ...(near !== undefined && { nearest: near }) }),
      });
      return z.NEVER;
    });
}

const watts = /^\s*(\d+\.?\d*|\.\d+)\s*(W|kW)\s*$/;

const power: Reads<number, string> = z
  .string({ error: ({ input }) => kindComplaint(input, 'a power such as "150 W"') })
  .meta({
    description:
      'what pumps, air and heat draw in the mean, needed beside electricity; range: 0 or more; default: none',
    examples: ['150 W'],
  })
  .transform((text, context) => {
    const match = watts.exec(text);
    if (match !== null) return Number(match[1]) * (match[2] === 'kW' ? 1000 : 1);
    context.addIssue({
      code: 'custom',
      message: complain({ problem: 'not a power', expected: 'a power such as "150 W" or "1.2 kW"' }),
    });
    return z.NEVER;
  });

const none = 'range: 0 or more; default: none, it is left out of the account';

/** The section `prices`. */
export const pricesSchema = section(
  {
    feed: price(`what feed costs; ${none}`, ['kg']).optional(),
    water: price(`what water from outside costs, rain nothing; ${none}`, ['m3']).optional(),
    electricity: price(`what electricity costs; ${none}`, ['kWh']).optional(),
    power: power.optional(),
    dosing: z
      .record(z.string(), price(`what a product that is dosed costs; ${none}`, ['kg']))
      .meta({ description: `what products that are dosed cost, by name; ${none}` })
      .optional(),
    harvest: z
      .record(z.string(), price(`what a crop fetches, fresh; ${none}`, ['kg', 'plant']))
      .meta({ description: `what crops fetch, by crop of the library, fresh; ${none}` })
      .optional(),
    fish: price(`what fish that are taken out alive fetch; ${none}`, ['kg', 'fish']).optional(),
  },
  'what things cost and fetch',
);

/** Its keys, whatever they hold: what each holds is read by itself, so that one fault hides no other. */
const keysSchema = section(
  Object.fromEntries(Object.keys(pricesSchema.shape).map((key) => [key, z.unknown().optional()])),
  'what things cost and fetch',
);

/** Reads the section `prices`; undefined where there is none. */
export function readPrices(
  reader: ScenarioReader,
  plantings: readonly (Planting | undefined)[],
): Prices | undefined {
  if (!reader.has(['prices'])) return undefined;
  if (reader.parse(keysSchema, ['prices']) === undefined) return undefined;
  const { shape: each } = pricesSchema;
  const given = {
    feed: reader.parse(each.feed, ['prices', 'feed']),
    water: reader.parse(each.water, ['prices', 'water']),
    electricity: reader.parse(each.electricity, ['prices', 'electricity']),
    power: reader.parse(each.power, ['prices', 'power']),
    dosing: reader.parse(each.dosing, ['prices', 'dosing']),
    harvest: reader.parse(each.harvest, ['prices', 'harvest']),
    fish: reader.parse(each.fish, ['prices', 'fish']),
  };
  let currency = '';
  const take = <Per extends string>(written: WrittenPrice<Per>, path: Path): WrittenPrice<Per> => {
    if (currency === '') ({ currency } = written);
    else if (written.currency !== '' && written.currency !== currency)
      reader.fault(path, 'another currency', { expected: `all prices in ${currency}` });
    return written;
  };
  const alone = (key: 'feed' | 'water' | 'electricity'): number | undefined => {
    const written = given[key] as WrittenPrice<string> | undefined;
    return written === undefined ? undefined : take(written, ['prices', key]).price;
  };
  const named = <Per extends string>(
    key: 'dosing' | 'harvest',
    what: 'product' | 'crop',
    list: Readonly<Record<string, WrittenPrice<Per>>>,
    names: readonly string[],
  ): readonly NamedPrice<Per>[] =>
    Object.entries(list).map(([name, written]) => {
      const path = ['prices', key, name];
      checkPriced(reader, what, name, names, path);
      const { price: value, per } = take(written, path);
      return { name, price: value, per };
    });
  const planted = plantings.flatMap((planting) => (planting === undefined ? [] : [planting.crop]));
  const [feed, water, electricity] = [alone('feed'), alone('water'), alone('electricity')];
  const fish = given.fish === undefined ? undefined : take(given.fish, ['prices', 'fish']);
  const products = named('dosing', 'product', given.dosing ?? {}, reader.names('dose'));
  const crops = named('harvest', 'crop', given.harvest ?? {}, [...new Set(planted)]);
  const all = compact({ feed, water, electricity, power: given.power });
  // What is there and faulty was told so.
  const there = (key: 'electricity' | 'power'): { [key: string]: number } =>
    reader.has(['prices', key]) ? { [key]: 0 } : {};
  checkPower(reader, { ...there('electricity'), ...there('power') }, ['prices']);
  return {
    ...{ currency, products, crops },
    ...all,
    ...(fish !== undefined && { fish: { price: fish.price, per: fish.per } }),
  };
}
