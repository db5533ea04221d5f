import { formatQuantity } from '../units.js';
import { compact } from './compact.js';
import type { Named, Reader } from './reader.js';
import type { Cohort, Feed, Planting, Vessel } from './scenario.js';
import { cohortSchema, plantingSchema } from './schema/stock-schema.js';
import type { Path } from './tree.js';

/** Most cohorts and most plantings of one file. */
const mostGroups = 5000;

/** Bed area may be taken up a little more than wholly: areas are measured with a tape. */
const tapeMargin = 1.02;

/** A feed by its name in the library, by its protein, or both (the protein then replaces the library's). */
export function readFeed(
  reader: Reader,
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
    expected: `one of ${reader.names('feed').join(', ')}, or protein`,
  });
  return undefined;
}

/** Reads the section `fish`. */
export function readCohorts(reader: Reader, vessels: Named<Vessel>): Named<Cohort> {
  return reader.named('fish', mostGroups, (path, name) => {
    const given = reader.parse(cohortSchema, path);
    if (given === undefined) return undefined;
    reader.known(given.in, vessels, [...path, 'in'], 'vessel');
    reader.known(given.species, reader.names('fish'), [...path, 'species'], 'species');
    const feed = readFeed(reader, path, given);
    const { species, number, mass, ration, hours } = given;
    if (feed === undefined) return undefined;
    return compact({ name, vessel: given.in, species, number, mass, ration, feed, hours });
  });
}

type Given = ReturnType<typeof plantingSchema.parse>;

/** Age of the oldest batch: of staggered batches the one harvested next, one interval short of harvest. */
function readAge(
  reader: Reader,
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
  if (age > harvest)
    reader.fault([...path, 'age'], 'older than at harvest', {
      expected: `at most ${formatQuantity(harvest, 'time')}`,
    });
  return age;
}

function readPlanting(
  reader: Reader,
  path: Path,
  name: string,
  vessels: Named<Vessel>,
): Planting | undefined {
  const given = reader.parse(plantingSchema, path);
  if (given === undefined) return undefined;
  const { crop, area } = given;
  const bed = reader.lookup(vessels, given.in, [...path, 'in'], 'vessel');
  if (!reader.known(crop, reader.names('crop'), [...path, 'crop'], 'crop')) return undefined;
  const wide = bed === undefined ? Infinity : (bed.open + bed.covered) * tapeMargin;
  if (area > wide && bed?.kind !== 'channel') {
    const expected = `at most ${formatQuantity(wide / tapeMargin, 'area')}`;
    reader.fault([...path, 'area'], `larger than ${given.in}`, { expected });
  }
  const days = (): number => {
    const usual = reader.parameters.value(`crop.${crop}.days`);
    return reader.fallback([...path, 'harvest'], usual, formatQuantity(usual, 'time'));
  };
  const harvest = given.harvest ?? days();
  const batches = given.batches ?? reader.fallback([...path, 'batches'], 1, 1);
  const usualStart = batches > 1 ? 'staggered' : 'new';
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
  };
}

/** What grows at the same time in a bed must fit on it. Beds that start empty are taken to follow others. */
function checkBeds(reader: Reader, plantings: Named<Planting>, vessels: Named<Vessel>): void {
  const taken = new Map<string, number>();
  for (const planting of plantings.values()) {
    if (planting === undefined || planting.start === 'empty') continue;
    const bed = vessels.get(planting.vessel);
    const wide = bed === undefined || bed.kind === 'channel' ? Infinity : bed.open + bed.covered;
    const before = taken.get(planting.vessel) ?? 0;
    const sum = before + planting.area;
    taken.set(planting.vessel, sum);
    if (before > 0 && sum > wide * tapeMargin && planting.area <= wide * tapeMargin) {
      const got = `${formatQuantity(Number(sum.toPrecision(6)), 'area')} in all`;
      const expected = `at most ${formatQuantity(wide, 'area')}`;
      reader.fault(['plantings', planting.name, 'area'], `plantings larger than ${planting.vessel}`, {
        got,
        expected,
      });
    }
  }
}

/** Reads the section `plantings`. */
export function readPlantings(reader: Reader, vessels: Named<Vessel>): Named<Planting> {
  const plantings = reader.named('plantings', mostGroups, (path, name) =>
    readPlanting(reader, path, name, vessels),
  );
  checkBeds(reader, plantings, vessels);
  return plantings;
}
