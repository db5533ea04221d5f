// Reads numbers as: vessels in a file
import { expm1 } from '../../base/elementary.js';
import * as z from 'zod';
import type { Parameters } from '../../library/parameters.js';
import { type Dimension, formatQuantity } from '../../base/units.js';
import { complain } from '../file/complaint.js';
import { compact } from '../file/reader.js';
import type { Named } from '../file/report.js';
import type { ScenarioReader } from './scenario-reader.js';
import type { Path } from '../file/tree.js';
import { bounded, choice, positive, type Reads, section, word } from '../file/values.js';
import { checkDrain, checkFlood } from '../checks/levels.js';
import { drainRanges, floodRanges, limeRanges, most, vesselRanges, words } from '../checks/ranges.js';
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
    by: choice(
      'an outlet is always open; a siphon starts by itself when the bed is full, and stops when it has drained; default: outlet',
      words.drainedBy,
    ).optional(),
  },
  'a second, lower outlet of a bed that floods and drains; default: none',
);

const flood = section(
  {
    drained: bounded(
      floodRanges.drained,
      'water that leaves it each time; range: more than 0, at most the volume of the vessel',
    ),
    cycles: bounded(floodRanges.cycles, 'how often it drains'),
  },
  'a bed that floods and drains, averaged on purpose: its water stays level, air is drawn in all day; default: none',
);

const kla = (description: string): Reads<number> => bounded(vesselRanges.aeration, description);

const aeration = section(
  {
    rate: kla('oxygen transfer coefficient (kLa) at 20 degC'),
    device: word(
      'what brings the air, of the library: how much of the oxygen it gives up says how much carbon dioxide it carries away; default: cascade in a media bed or channel, else stone',
    ).optional(),
  },
  'aeration by a device',
);

/** A rate alone, or a map; faults of a map are those of its keys. */
const aerationSchema = z.union(
  [
    kla('oxygen transfer coefficient (kLa) of the aeration at 20 degC, by the usual device; default: 0'),
    aeration,
  ],
  {
    error: ({ input }) =>
      complain({ problem: 'of neither form', form: typeof input === 'object' && input !== null ? 1 : 0 }),
  },
);

const media = section(
  {
    type: word('a medium of the library'),
    volume: positive('volume', 'bulk volume of the medium'),
  },
  'filling that carries biofilm; default: none',
);

const lime = section(
  {
    kind: word('what it is, of the library: how much of it the water reaches').meta({ examples: ['shell'] }),
    mass: bounded(limeRanges.mass, 'calcium carbonate in it at the start'),
  },
  'shell, limestone or lime that lies in the water and dissolves; default: none',
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
      'wetted surface for biofilm; default: walls and media, the underside of rafts, and roots in the water of rafts and channels ' +
        'that are planted at the start, as reckoned',
    ).optional(),
    walls: bounded(
      vesselRanges.surface,
      'wetted walls without the bottom, part of the surface; default: those of a vessel about as long as wide',
    ).optional(),
    floor: bounded(
      vesselRanges.floor,
      'what solids settle on; default: area, in a media bed also a share of the medium, none where water keeps them moving',
    ).optional(),
    open: bounded(
      vesselRanges.open,
      'open water; default: area, none under rafts, media and lids',
    ).optional(),
    covered: bounded(
      vesselRanges.covered,
      'covered water or wet media; default: area of a raft bed, media bed or channel',
    ).optional(),
    aeration: aerationSchema.optional(),
    capture: bounded(vesselRanges.capture, 'share of the incoming solids caught; default: 0').optional(),
    temperature: waterTemperature(
      'water temperature; range: 0 to 45 degC; default: that of the climate',
    ).optional(),
    leak: bounded(vesselRanges.leak, 'steady loss of water; default: 0').optional(),
    exchange: bounded(vesselRanges.exchange, 'steady discharge for water exchange; default: 0').optional(),
    drain: drain.optional(),
    flood: flood.optional(),
    lime: lime.optional(),
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

/** Surface that the medium of a vessel offers to films, m2; none without one, or of an unknown kind, which is told. */
function readFilling(reader: ScenarioReader, path: Path, { media }: Given): number | undefined {
  if (media === undefined) return 0;
  if (!reader.known(media.type, reader.names('media'), [...path, 'media', 'type'], 'medium'))
    return undefined;
  return media.volume * reachedSurface(reader.parameters, media.type);
}

/**
 * Open, covered and floor areas: as written, or from `area` by the kind of vessel. In a media bed solids lie on its floor
 * and on the grains of its medium, as in a roughing filter: on `media.upward-share` of their surface.
 */
function readAreas(reader: ScenarioReader, path: Path, given: Given, filling: number): Areas | undefined {
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
  const upward = reader.parameters.value('media.upward-share');
  const grains = given.kind === 'media-bed' && floor === undefined ? upward * filling : 0;
  const usual = (key: keyof Areas, value: number): number =>
    given[key] ?? quantityDefault(reader, [...path, key], value, 'area');
  return {
    open: usual('open', under ? 0 : whole),
    covered: usual('covered', under ? whole : 0),
    floor: usual('floor', bare ? 0 : whole + grains),
  };
}

/**
 * Surface that a m3 of a medium offers to films, m2: of its specific surface a what is left where films and the still water
 * over them stand in pores as wide as those of the medium, a / (1 + a d / 2 e) with their depth d and the porosity e (a
 * round pore of radius 2 e / a has (1 - d/r) of its surface there). Coarse media lose little, sand more than half. A
 * medium of one's own without a porosity keeps all of it.
 */
function reachedSurface(parameters: Parameters, type: string): number {
  const all = parameters.value(`media.${type}.surface`);
  if (!parameters.has(`media.${type}.porosity`)) return all;
  const porosity = parameters.value(`media.${type}.porosity`);
  return all / (1 + (all * parameters.value('biofilm.depth')) / (2 * porosity));
}

/**
 * Wetted surface where it is not written: bottom and walls (as written, or of a vessel of the usual outline), media by
 * their volume and the surface that they offer, and the underside of rafts. Roots come on top (roots.ts).
 */
function readSurface(reader: ScenarioReader, given: Given, areas: Areas, filling: number): number {
  if (given.surface !== undefined) return given.surface;
  const depth = depthOf(given, areas);
  const bottom = given.volume / depth;
  const around = reader.parameters.value('vessel.outline') * Math.sqrt(bottom);
  const walls = bottom + (given.walls ?? around * depth);
  const rafts = given.kind === 'raft-bed' ? areas.covered : 0;
  return walls + filling + rafts;
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

/** Vessels whose air is drawn in by draining or falling water. */
const drawingKinds: ReadonlySet<VesselKind> = new Set(['media-bed', 'channel']);

/**
 * How deep the water of a vessel is, m: its volume over its area seen from above. Where none is written (open, covered and
 * floor stand for it, and may be 0) it is that of the devices in the tables, 1 m.
 */
function depthOf({ volume, area }: Given, { open, covered }: Areas): number {
  const above = area ?? open + covered;
  return above > 0 ? volume / above : 1;
}

/** Transfer of the aeration, d-1, and the share of its oxygen that the air gives up on its way through the water. */
function readAeration(
  reader: ScenarioReader,
  path: Path,
  { kind, aeration: given }: Given,
  depth: number,
): Pick<Vessel, 'aeration' | 'airShare'> {
  const rate = typeof given === 'number' ? given : given?.rate;
  if (rate === undefined || rate === 0) return { aeration: quantityDefault(reader, path, 0, 'rate') };
  const usual = drawingKinds.has(kind) ? 'cascade' : 'stone';
  const device = typeof given === 'number' ? undefined : given?.device;
  if (device === undefined)
    reader.fallback(path, usual, { rate: formatQuantity(rate, 'rate'), device: usual });
  const known =
    device === undefined || reader.known(device, reader.names('aerator'), [...path, 'device'], 'device');
  if (!known) return { aeration: rate };
  const perMetre = reader.parameters.value(`aerator.${device ?? usual}.oxygen-share`);
  return { aeration: rate, airShare: -expm1(-perMetre * depth) };
}

function readVessel(reader: ScenarioReader, path: Path, name: string, frame: RunFrame): Vessel | undefined {
  const given = parseVessel(reader, path);
  if (given === undefined) return undefined;
  const filling = readFilling(reader, path, given);
  const areas = readAreas(reader, path, given, filling ?? 0);
  const temperature = readTemperature(reader, path, given, frame);
  const { kind, volume, drain, flood: flooding, lime } = given;
  const drains = drain === undefined || checkDrain(reader, path, drain.to, volume);
  const floods = flooding === undefined || checkFlood(reader, path, flooding.drained, given);
  const limed =
    lime === undefined || reader.known(lime.kind, reader.names('lime'), [...path, 'lime', 'kind'], 'lime');
  if (
    areas === undefined ||
    filling === undefined ||
    temperature === undefined ||
    !drains ||
    !floods ||
    !limed
  )
    return undefined;
  const usual = (key: 'leak' | 'exchange', dimension: Dimension): number =>
    given[key] ?? quantityDefault(reader, [...path, key], 0, dimension);
  return {
    name,
    kind,
    volume,
    surface: readSurface(reader, given, areas, filling),
    ...areas,
    ...readAeration(reader, [...path, 'aeration'], given, depthOf(given, areas)),
    capture: given.capture ?? reader.fallback([...path, 'capture'], 0, 0),
    temperature,
    leak: usual('leak', 'volume-flow'),
    exchange: usual('exchange', 'volume-flow'),
    ...(drain === undefined ? {} : { drain: compact(drain) }),
    ...(flooding === undefined ? {} : { flooded: flooding.drained * flooding.cycles }),
    ...(lime === undefined ? {} : { lime }),
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
