// Reads numbers as: fish and plantings in a file
import * as z from 'zod';
import { formatQuantity, parseQuantity } from '../../base/units.js';
import { complain, kindComplaint } from '../file/complaint.js';
import { compact } from '../file/reader.js';
import type { Named } from '../file/report.js';
import { ownLight, readOwnLight } from './light.js';
import type { RunFrame } from './run.js';
import { seasonTimes } from './seasons.js';
import type { ScenarioReader } from './scenario-reader.js';
import type { Path } from '../file/tree.js';
import { bounded, choice, quantityComplaint, type Reads, section, word } from '../file/values.js';
import { checkAge, checkBeds, checkPlanted, checkTrays, fallingRow, isWithinDay } from '../checks/stock.js';
import {
  actionRanges,
  cohortRanges,
  cutRanges,
  feedRanges,
  most,
  plantingRanges,
  plantsRange,
  rationRanges,
  words,
} from '../checks/ranges.js';
import type { Cohort, Feed, Planting, Ration, Vessel } from '../scenario.js';

const rationText = 'a ration such as "80 g/d" or "1.5 %/d", or a table of mass and ration';

const tableRow = section(
  {
    mass: bounded(rationRanges.mass, 'mean mass of a fish'),
    ration: bounded(rationRanges.perDay, 'share of body mass a day'),
  },
  'a row of a ration table',
);

/** Feed given per day: a mass, a share of body mass, or a table of shares by mean mass. */
export const rationSchema: Reads<Ration> = z
  .union([z.string().meta({ examples: ['80 g/d', '1.5 %/d'] }), z.array(tableRow)], {
    error: ({ input }) => quantityComplaint(input, rationText),
  })
  .transform((written, context): Ration => {
    const refuse = (problem: string, path: (string | number)[] = []): never => {
      context.addIssue({ code: 'custom', path, message: complain({ problem, expected: rationText }) });
      return z.NEVER;
    };
    if (typeof written === 'string') {
      const mass = parseQuantity(written, 'mass-flow');
      if ('value' in mass) return { kind: 'mass', gramsPerDay: mass.value };
      const part = parseQuantity(written, 'share-rate');
      if ('value' in part) return { kind: 'share', perDay: part.value };
      return refuse(mass.problem.startsWith('wrong dimension') ? part.problem : mass.problem);
    }
    if (written.length === 0) return refuse('an empty table');
    const falling = fallingRow(written);
    if (falling > 0) return refuse('masses of a table must rise', [falling, 'mass']);
    return { kind: 'table', rows: written.map(({ mass, ration }) => ({ mass, perDay: ration })) };
  });

const clock = /^(\d{1,2}):(\d{2})\s*-\s*(\d{1,2}):(\d{2})$/;

/** Hours of the day such as `"08:00-18:00"`, as shares of a day. */
const hoursSchema = z
  .string({ error: ({ input }) => kindComplaint(input, 'hours such as "08:00-18:00"') })
  .meta({
    description: 'hours in which feed is given; range: within one day, the second later; default: all day',
    examples: ['08:00-18:00'],
  })
  .transform((text, context): { from: number; to: number } => {
    const parts = clock.exec(text)?.slice(1).map(Number);
    const [fromHour = 25, fromMinute = 0, toHour = 25, toMinute = 0] = parts ?? [];
    const from = (fromHour + fromMinute / 60) / 24;
    const to = (toHour + toMinute / 60) / 24;
    if (fromMinute < 60 && toMinute < 60 && isWithinDay({ from, to })) return { from, to };
    const expected = 'hours such as "08:00-18:00", the second later';
    context.addIssue({ code: 'custom', message: complain({ problem: 'not hours of one day', expected }) });
    return z.NEVER;
  });

/** Number of fish where some are meant. */
export const fishCount = bounded(actionRanges.stock.number, 'number of fish');

/** One cohort of `fish`. */
export const cohortSchema = section(
  {
    in: word('the vessel they live in'),
    species: word('a species of the library'),
    number: bounded(cohortRanges.number, 'number of fish at the start; 0 where they come later'),
    mass: bounded(cohortRanges.mass, 'mean mass of a fish at the start'),
    ration: rationSchema.meta({ description: `feed given a day: ${rationText}; range: 0 or more` }),
    feed: word('a feed of the library; default: none, it must be named').optional(),
    protein: bounded(
      feedRanges.protein,
      'protein in the feed as fed, in place of that of the feed; default: that of the feed',
    ).optional(),
    'feed-conversion': bounded(
      cohortRanges.feedConversion,
      'measured feed conversion, g of feed given per g gained: energy is used so that it comes out for those of the start at ' +
        'their ration in sound water; default: what the species makes of this feed and ration',
    ).optional(),
    dead: choice(
      'what becomes of fish that die: left in the water, where they rot; default: they are taken out',
      words.deadFish,
    ).optional(),
    hours: hoursSchema.optional(),
  },
  'a group of like fish in one vessel',
);

/** One planting of `plantings`. */
export const plantingSchema = section(
  {
    in: word('the vessel it grows in'),
    crop: word('a crop of the library'),
    area: bounded(
      plantingRanges.area,
      'whole area of the crop; range: more than 0, at most that of the vessel unless it is a channel',
    ),
    cover: bounded(
      plantingRanges.cover,
      'share of the area that the crop shades at full growth; default: 1',
    ).optional(),
    batches: bounded(plantingRanges.batches, 'batches of staggered age; default: 1').optional(),
    harvest: bounded(
      plantingRanges.harvest,
      'age at harvest since planting; default: that of the crop',
    ).optional(),
    ...seasonTimes,
    picks: bounded(
      plantingRanges.picks,
      'time from one pick of ripe fruit to the next; default: that of the crop, none where it bears no fruit',
    ).optional(),
    cut: section(
      {
        every: bounded(cutRanges.every, 'time from one cut to the next, the first so long after planting'),
        leave: bounded(
          cutRanges.leave,
          'share of the plants left standing; default: that of the tables',
        ).optional(),
      },
      'cutting of leaves that grow again, until the age at harvest; default: none',
    ).optional(),
    seedling: bounded(
      plantingRanges.seedling,
      'fresh mass of a plant when it is planted; default: that of the crop, by its rows density and dry-matter',
    ).optional(),
    plants: bounded(
      plantsRange,
      'plants set out in the whole area: with few the crop takes longer to close; default: the density of the crop times the area',
    ).optional(),
    tray: word(
      'planting whose plants are set out here when the bed is planted, once they are of its age at harvest; until then they wait; default: none, seedlings come from elsewhere',
    ).optional(),
    light: ownLight
      .meta({
        description:
          'light on this crop: in place of that of the climate, or what stands over it besides; default: that of the climate',
      })
      .optional(),
    after: choice('what follows the harvest; default: replant', words.afterHarvest).optional(),
    start: choice(
      'at the start; default: empty with `from`, staggered for more than one batch, else new',
      words.plantingStart,
    ).optional(),
    age: bounded(
      plantingRanges.age,
      'age of the oldest batch at the start; range: 0 to the age at harvest; default: 0, of staggered batches one ' +
        'interval short of harvest',
    ).optional(),
  },
  'an area of one crop in one vessel',
);

/** A feed by its name in the library, by its protein, or both (the protein then replaces the library's). */
export function readFeed(
  reader: ScenarioReader,
  path: Path,
  given: { readonly feed?: string | undefined; readonly protein?: number | undefined },
): Feed | undefined {
  const { feed, protein } = given;
  if (feed !== undefined && !reader.known(feed, reader.names('feed'), [...path, 'feed'], 'feed'))
    return undefined;
  if (protein !== undefined) return { name: feed ?? 'feed', protein };
  if (feed !== undefined) {
    const usual = reader.parameters.value(`feed.${feed}.protein`);
    return { name: feed, protein: reader.fallback([...path, 'protein'], usual, usual) };
  }
  reader.fault([...path, 'feed'], 'missing', {
    expected: `one of ${reader.names('feed').join(', ')}`,
  });
  return undefined;
}

/** Reads the section `fish`. */
export function readCohorts(reader: ScenarioReader, vessels: Named<Vessel>): Named<Cohort> {
  return reader.named('fish', most.groups, (path, name) => {
    const given = reader.parse(cohortSchema, path);
    if (given === undefined) return undefined;
    reader.known(given.in, vessels, [...path, 'in'], 'vessel');
    reader.known(given.species, reader.names('fish'), [...path, 'species'], 'species');
    // Protein alone tells no oxygen demand.
    const feed = readFeed(reader, path, given.feed === undefined ? {} : given);
    const { species, number, mass, ration, dead, hours } = given;
    if (feed === undefined) return undefined;
    return compact({
      ...{ name, vessel: given.in, species, number, mass, ration, feed, dead, hours },
      feedConversion: given['feed-conversion'],
    });
  });
}

type Given = ReturnType<typeof plantingSchema.parse>;

/** Age of the oldest batch: of staggered batches the one harvested next, one interval short of harvest. */
function readAge(
  reader: ScenarioReader,
  path: Path,
  given: Given,
  harvest: number,
  start: Planting['start'],
): number {
  const batches = given.batches ?? 1;
  const usual = start === 'staggered' ? (harvest * (batches - 1)) / batches : 0;
  const age = given.age ?? reader.fallback([...path, 'age'], usual, formatQuantity(usual, 'time'));
  if (given.age !== undefined && start !== 'staggered' && age > 0 && start === 'empty') {
    reader.fault([...path, 'age'], 'an age of a bed that starts empty');
  }
  checkAge(reader, path, age, harvest);
  return age;
}

/**
 * Dry mass at planting, g m-2, of plants of a fresh mass (g, else the seedlings of the table), so many in all (else as dense
 * as in the table); undefined where neither is written.
 */
function readSeedling({ parameters }: ScenarioReader, given: Given): number | undefined {
  const { crop, area, seedling, plants } = given;
  if (seedling === undefined && plants === undefined) return undefined;
  const number = (name: string): number => parameters.value(`crop.${crop}.${name}`);
  const dense = number('density');
  const plant = seedling === undefined ? number('seedling-mass') / dense : seedling * number('dry-matter');
  return plant * (plants === undefined ? dense : plants / area);
}

/** Days between picks: as written, or those of a crop that bears fruit; undefined where it bears none. */
function readPicks(
  reader: ScenarioReader,
  path: Path,
  crop: string,
  given: number | undefined,
): number | undefined {
  const id = `crop.${crop}.pick-every`;
  const bears = reader.parameters.has(id);
  if (given !== undefined && !bears)
    reader.fault([...path, 'picks'], `${crop} bears no fruit that is picked`, {
      expected: 'a crop with fruit, or none of this key',
    });
  if (!bears || given !== undefined) return given;
  const usual = reader.parameters.value(id);
  return reader.fallback([...path, 'picks'], usual, formatQuantity(usual, 'time'));
}

/** How leaves are cut to grow again. */
function readCut(reader: ScenarioReader, path: Path, cut: Given['cut']): Planting['cut'] {
  if (cut === undefined) return undefined;
  const usual = reader.parameters.value('crop.cut-leave');
  return { every: cut.every, leave: cut.leave ?? reader.fallback([...path, 'cut', 'leave'], usual, usual) };
}

function readPlanting(
  reader: ScenarioReader,
  frame: RunFrame,
  path: Path,
  name: string,
  vessels: Named<Vessel>,
): Planting | undefined {
  const given = reader.parse(plantingSchema, path);
  if (given === undefined) return undefined;
  const { crop, area } = given;
  const bed = reader.lookup(vessels, given.in, [...path, 'in'], 'vessel');
  if (!reader.known(crop, reader.names('crop'), [...path, 'crop'], 'crop')) return undefined;
  checkPlanted(reader, path, area, bed);
  const days = (): number => {
    const usual = reader.parameters.value(`crop.${crop}.days`);
    return reader.fallback([...path, 'harvest'], usual, formatQuantity(usual, 'time'));
  };
  const harvest = given.harvest ?? days();
  const batches = given.batches ?? reader.fallback([...path, 'batches'], 1, 1);
  const usualStart = given.from !== undefined ? 'empty' : batches > 1 ? 'staggered' : 'new';
  if (given.from !== undefined && given.start !== undefined && given.start !== 'empty')
    reader.fault([...path, 'start'], 'a bed that is planted later starts empty', {
      expected: 'empty, or no start',
    });
  const start = given.start ?? reader.fallback([...path, 'start'], usualStart, usualStart);
  const after = given.after ?? reader.fallback([...path, 'after'], 'replant', 'replant');
  return {
    name,
    vessel: given.in,
    crop,
    area,
    cover: given.cover ?? reader.fallback([...path, 'cover'], 1, 1),
    batches,
    harvest,
    after,
    start,
    age: readAge(reader, path, given, harvest, start),
    ...compact({
      seedling: readSeedling(reader, given),
      picks: readPicks(reader, path, crop, given.picks),
      cut: readCut(reader, path, given.cut),
      tray: given.tray,
    }),
    ...readOwnLight(reader, [...path, 'light'], given.light, frame.light, frame),
  };
}

/** Reads the section `plantings`. */
export function readPlantings(
  reader: ScenarioReader,
  frame: RunFrame,
  vessels: Named<Vessel>,
): Named<Planting> {
  const plantings = reader.named('plantings', most.groups, (path, name) =>
    readPlanting(reader, frame, path, name, vessels),
  );
  checkBeds(reader, plantings, vessels);
  checkTrays(reader, plantings);
  return plantings;
}
