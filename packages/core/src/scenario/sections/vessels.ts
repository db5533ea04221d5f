// Reads numbers as: vessels in a file
import { type Dimension, formatQuantity } from '../../base/units.js';
import type { Named } from '../file/report.js';
import type { ScenarioReader } from './scenario-reader.js';
import type { Path } from '../file/tree.js';
import { bounded, choice, positive, section, word } from '../file/values.js';
import { checkDrain } from '../checks/levels.js';
import { drainRanges, most, vesselRanges, words } from '../checks/ranges.js';
import type { DailyValue, Vessel, VesselKind } from '../scenario.js';
import type { RunFrame } from './run.js';
import { readWaterTemperature, waterTemperature } from './water-temperature.js';

const drain = section(
  {
    rate: bounded(drainRanges.rate, 'what the lower outlet passes'),
    to: bounded(
      drainRanges.to,
      'volume it drains down to; range: more than 0, less than the volume of the vessel',
    ),
  },
  'a second, lower outlet of a bed that floods and drains; default: none',
);

const media = section(
  {
    type: word('a medium of the library'),
    volume: positive('volume', 'bulk volume of the medium'),
  },
  'filling that carries biofilm; default: none',
);

/** One vessel of `vessels`. */
export const vesselSchema = section(
  {
    kind: choice('what it is', words.vesselKind),
    volume: bounded(
      vesselRanges.volume,
      'water it holds at its standpipe; for the reservoir, at its overflow',
    ),
    area: positive(
      'area',
      'area of the water or bed seen from above; default: none, where open, covered and floor are given',
    ).optional(),
    media: media.optional(),
    surface: bounded(
      vesselRanges.surface,
      'wetted surface for biofilm; default: walls and media, and the underside of rafts, as reckoned',
    ).optional(),
    floor: bounded(
      vesselRanges.floor,
      'floor on which solids settle; default: area, none where water keeps them moving',
    ).optional(),
    open: bounded(
      vesselRanges.open,
      'open water; default: area, none under rafts, media and lids',
    ).optional(),
    covered: bounded(
      vesselRanges.covered,
      'covered water or wet media; default: area of a raft bed, media bed or channel',
    ).optional(),
    aeration: bounded(
      vesselRanges.aeration,
      'oxygen transfer coefficient (kLa) of the aeration at 20 degC; default: 0',
    ).optional(),
    capture: bounded(vesselRanges.capture, 'share of the incoming solids caught; default: 0').optional(),
    temperature: waterTemperature(
      'water temperature; range: 0 to 45 degC; default: that of the climate',
    ).optional(),
    leak: bounded(vesselRanges.leak, 'steady loss of water; default: 0').optional(),
    exchange: bounded(vesselRanges.exchange, 'steady discharge for water exchange; default: 0').optional(),
    drain: drain.optional(),
  },
  'a well-mixed vessel',
);

/** Their water lies under rafts, media or a lid, so the area is covered rather than open. */
const coveredKinds: ReadonlySet<VesselKind> = new Set(['raft-bed', 'media-bed', 'channel']);

/** Moving carriers or a screen keep solids off the floor. */
const noFloorKinds: ReadonlySet<VesselKind> = new Set(['biofilter', 'screen']);

interface Areas {
  readonly open: number;
  readonly covered: number;
  readonly floor: number;
}

type Given = NonNullable<ReturnType<typeof parseVessel>>;

function parseVessel(reader: ScenarioReader, path: Path): ReturnType<typeof vesselSchema.parse> | undefined {
  return reader.parse(vesselSchema, path);
}

function quantityDefault(reader: ScenarioReader, path: Path, value: number, dimension: Dimension): number {
  return reader.fallback(path, value, formatQuantity(value, dimension));
}

/** Open, covered and floor areas: as written, or from `area` by the kind of vessel. */
function readAreas(reader: ScenarioReader, path: Path, given: Given): Areas | undefined {
  const { area, open, covered, floor } = given;
  const under = coveredKinds.has(given.kind);
  const bare = noFloorKinds.has(given.kind);
  const needsArea = (under ? covered : open) === undefined || (floor === undefined && !bare);
  if (area === undefined && needsArea) {
    reader.fault([...path, 'area'], 'missing', {
      expected: 'the area seen from above, or open, covered and floor',
    });
    return undefined;
  }
  const whole = area ?? 0;
  const usual = (key: keyof Areas, value: number): number =>
    given[key] ?? quantityDefault(reader, [...path, key], value, 'area');
  return {
    open: usual('open', under ? 0 : whole),
    covered: usual('covered', under ? whole : 0),
    floor: usual('floor', bare ? 0 : whole),
  };
}

/**
 * Wetted surface where it is not written: walls by the usual wall of a vessel (`vessel.wall`), media by
 * their volume and specific surface, and the underside of rafts.
 */
function readSurface(reader: ScenarioReader, path: Path, given: Given, areas: Areas): number | undefined {
  const { media, surface } = given;
  const { parameters } = reader;
  const known =
    media === undefined ||
    reader.known(media.type, reader.names('media'), [...path, 'media', 'type'], 'medium');
  if (!known) return undefined;
  if (surface !== undefined) return surface;
  const walls = parameters.value('vessel.wall') * given.volume;
  const filling = media === undefined ? 0 : media.volume * parameters.value(`media.${media.type}.surface`);
  const rafts = given.kind === 'raft-bed' ? areas.covered : 0;
  return quantityDefault(reader, [...path, 'surface'], walls + filling + rafts, 'area');
}

function readTemperature(
  reader: ScenarioReader,
  path: Path,
  given: Given,
  frame: RunFrame,
): DailyValue | undefined {
  if (given.temperature !== undefined) {
    return readWaterTemperature(reader, [...path, 'temperature'], given.temperature, frame);
  }
  if (frame.waterTemperature === undefined && !reader.has(['climate', 'water-temperature'])) {
    reader.fault([...path, 'temperature'], 'missing', {
      expected: 'a temperature here or climate.water-temperature',
    });
  }
  return frame.waterTemperature;
}

function readVessel(reader: ScenarioReader, path: Path, name: string, frame: RunFrame): Vessel | undefined {
  const given = parseVessel(reader, path);
  if (given === undefined) return undefined;
  const areas = readAreas(reader, path, given);
  const surface = readSurface(reader, path, given, areas ?? { open: 0, covered: 0, floor: 0 });
  const temperature = readTemperature(reader, path, given, frame);
  const { kind, volume, drain } = given;
  const drains = drain === undefined || checkDrain(reader, path, drain.to, volume);
  if (areas === undefined || surface === undefined || temperature === undefined || !drains) return undefined;
  const usual = (key: 'leak' | 'exchange' | 'aeration', dimension: Dimension): number =>
    given[key] ?? quantityDefault(reader, [...path, key], 0, dimension);
  return {
    name,
    kind,
    volume,
    surface,
    ...areas,
    aeration: usual('aeration', 'rate'),
    capture: given.capture ?? reader.fallback([...path, 'capture'], 0, 0),
    temperature,
    leak: usual('leak', 'volume-flow'),
    exchange: usual('exchange', 'volume-flow'),
    ...(drain === undefined ? {} : { drain }),
  };
}

/** Reads the section `vessels`. */
export function readVessels(reader: ScenarioReader, frame: RunFrame): Named<Vessel> {
  const vessels = reader.named('vessels', most.vessels, (path, name) =>
    readVessel(reader, path, name, frame),
  );
  if (vessels.size === 0 && !reader.faults.some(({ key }) => key === 'vessels')) {
    reader.fault(['vessels'], 'missing', { expected: 'at least one vessel' });
  }
  return vessels;
}
