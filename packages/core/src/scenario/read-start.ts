import { formatQuantity } from '../units.js';
import type { Named, Reader } from './reader.js';
import type { RunFrame } from './read-run.js';
import { completeQuality, type Quality, type QualityGiven } from './read-waters.js';
import type { SourceWater, StartVessel, TopUp, Vessel } from './scenario.js';
import { startSchema, startVesselSchema, type BiofilmGiven } from './schema/start-schema.js';
import { nodeAt, type Path } from './tree.js';
import { valueOn } from './value-on.js';

type StartWaterGiven = QualityGiven & { readonly solids?: number | undefined };
type VesselGiven = ReturnType<typeof startVesselSchema.parse>;

/** What the readers of other sections have found. */
export interface StartContext {
  readonly frame: RunFrame;
  readonly vessels: Named<Vessel>;
  readonly waters: Named<SourceWater>;
  readonly topUp: TopUp | undefined;
}

function readBiofilm(reader: Reader, given: BiofilmGiven): { aob: number; nob: number } {
  const { parameters } = reader;
  if (given.kind === 'shares') return { aob: given.aob, nob: given.nob };
  if (given.kind === 'uncycled') {
    const seed = parameters.value('biofilm.seed');
    return { aob: seed, nob: seed };
  }
  return {
    aob: given.share * parameters.value('biofilm.cycled-aob'),
    nob: given.share * parameters.value('biofilm.cycled-nob'),
  };
}

/** A vessel's own water laid over that of the system: what it names wins, `like` replaces all of it. */
function layOver(common: StartWaterGiven | undefined, own: StartWaterGiven | undefined): StartWaterGiven {
  if (own === undefined) return common ?? {};
  if (own.like !== undefined || common === undefined) return own;
  const written = Object.entries(own).filter(([, value]) => value !== undefined);
  return { ...common, ...(Object.fromEntries(written) as StartWaterGiven) };
}

function readOwn(reader: Reader, context: StartContext): Map<string, VesselGiven | undefined> {
  const own = new Map<string, VesselGiven | undefined>();
  const section: Path = ['start', 'vessels'];
  for (const name of reader.keys(section)) {
    const path = [...section, name];
    const known = reader.known(name, context.vessels, path, 'vessel');
    const given = reader.parse(startVesselSchema, path);
    if (known) own.set(name, given);
  }
  return own;
}

/** Water in a vessel at the start: the reservoir may be low, and begins at the float where there is one. */
function readVolume(
  reader: Reader,
  vessel: Vessel,
  given: VesselGiven | undefined,
  context: StartContext,
): number {
  const path = ['start', 'vessels', vessel.name, 'volume'];
  const isReservoir = vessel.name === context.frame.reservoir;
  const written = given?.volume;
  if (written === undefined) {
    if (!isReservoir || context.topUp === undefined) return vessel.volume;
    return reader.fallback(path, context.topUp.level, formatQuantity(context.topUp.level, 'volume'));
  }
  const limit = formatQuantity(vessel.volume, 'volume');
  if (!isReservoir && written !== vessel.volume) {
    reader.fault(path, 'only the reservoir may start below its full volume', { expected: limit });
  } else if (written > vessel.volume)
    reader.fault(path, 'more than the vessel holds', { expected: `at most ${limit}` });
  return written;
}

/** The file named in `start: { saved: ... }`. Faults of the section are reported by `readStart`. */
export function savedFile(reader: Reader): string | undefined {
  const node = nodeAt(reader.tree, ['start', 'saved']);
  return node?.kind === 'scalar' && typeof node.value === 'string' ? node.value : undefined;
}

/** Reads the section `start` and gives the state of every vessel. */
export function readStart(reader: Reader, context: StartContext): StartVessel[] {
  const { frame, vessels, waters } = context;
  const common = reader.parse(startSchema, ['start']);
  const own = readOwn(reader, context);
  if (common === undefined) return [];
  const qualities = new Map<string, Quality | undefined>();
  const quality = (path: Path, given: StartWaterGiven, temperature: number): Quality | undefined => {
    const key = JSON.stringify([path, temperature]);
    if (!qualities.has(key)) qualities.set(key, completeQuality(reader, path, given, temperature, waters));
    return qualities.get(key);
  };
  return [...vessels].flatMap(([name, vessel]): StartVessel[] => {
    const given = own.get(name);
    if (vessel === undefined || (own.has(name) && given === undefined)) return [];
    const path = given?.water === undefined ? ['start', 'water'] : ['start', 'vessels', name, 'water'];
    const water = layOver(common.water, given?.water);
    const found = quality(path, water, valueOn(vessel.temperature, frame.startDate, 0));
    const volume = readVolume(reader, vessel, given, context);
    if (found === undefined) return [];
    const film = readBiofilm(reader, given?.biofilm ?? common.biofilm);
    const { tan, nitrite, nitrate, alkalinity, carbon, oxygen, chloride } = found;
    const solids = water.solids ?? 0;
    const start = { tan, nitrite, nitrate, solids, alkalinity, carbon, oxygen, chloride };
    return [{ vessel: name, water: start, volume, ...film, settled: given?.settled ?? 0 }];
  });
}
