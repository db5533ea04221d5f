// Reads numbers as: start in a file
import { fedFilms, type CycledFilm } from './fed-films.js';
import { fedHeterotrophs } from './fed-heterotrophs.js';
import * as z from 'zod';
import { formatQuantity, parseQuantity } from '../../base/units.js';
import { complain, kindComplaint } from '../file/complaint.js';
import { type Named, present } from '../file/report.js';
import { compact } from '../file/reader.js';
import type { ScenarioReader } from './scenario-reader.js';
import type { Path } from '../file/tree.js';
import { bounded, number, type Reads, section, word } from '../file/values.js';
import { checkStartVolume, roomProblem } from '../checks/levels.js';
import { grownRange, savedRanges, startRanges } from '../checks/ranges.js';
import type { SavedState } from '../saved-state.js';
import type { Cohort, Flow, Planting, Pump, SourceWater, StartVessel, TopUp, Vessel } from '../scenario.js';
import { componentOf } from '../supplies.js';
import { pressureShare } from '../../weather/penman-monteith.js';
import { valueOn } from '../value-on.js';
import type { RunFrame } from './run.js';
import { readSaved } from './saved.js';
import { completeQuality, type Quality, type QualityGiven, startWaterSchema } from './waters.js';

/** Biofilm at the start: grown in, new, a share of grown in, or each group as a share of the room. */
type BiofilmGiven =
  | { readonly kind: 'uncycled' }
  | { readonly kind: 'cycled'; readonly share: number }
  | { readonly kind: 'shares'; readonly aob: number; readonly nob: number };

const expected = 'cycled, uncycled, a share of cycled such as "40 %", or a map of aob and nob';

const biofilmText = `biofilm: ${expected}; range: shares from 0 to 1`;
/** Where what the system starts with comes from if it is not written. */
const fromSaved = 'default: that of the saved state, needed where there is none';

const biofilmSchema: Reads<BiofilmGiven> = z
  .union(
    [
      z.string(),
      z.number(),
      section(
        {
          aob: bounded(startRanges.aob, 'ammonia oxidisers as a share of the room'),
          nob: bounded(startRanges.nob, 'nitrite oxidisers as a share of the room'),
        },
        'each group as a share of the room on the surface',
      ),
    ],
    { error: ({ input }) => kindComplaint(input, expected) },
  )
  .meta({ description: biofilmText, examples: ['cycled', 'uncycled', '40 %'] })
  .transform((written, context): BiofilmGiven => {
    const refuse = (problem: string): never => {
      context.addIssue({ code: 'custom', message: complain({ problem, expected }) });
      return z.NEVER;
    };
    if (typeof written === 'object') {
      const passed = roomProblem(written);
      if (passed !== undefined) return refuse(passed);
      return { kind: 'shares', ...written };
    }
    if (written === 'uncycled') return { kind: 'uncycled' };
    if (written === 'cycled') return { kind: 'cycled', share: 1 };
    const answer = typeof written === 'number' ? { value: written } : parseQuantity(written, 'share');
    if (!('value' in answer))
      return refuse(/^[a-z]/i.test(String(written)) ? 'unknown word' : answer.problem);
    if (answer.value < 0 || answer.value > 1) return refuse('out of range');
    return { kind: 'cycled', share: answer.value };
  });

const grownText = 'pH of the water that the film has grown in';

/** What one vessel holds at the start, where it differs. */
export const startVesselSchema = section(
  {
    biofilm: biofilmSchema.meta({ description: `${biofilmText}; default: that of the system` }).optional(),
    'grown-at': bounded(grownRange, `${grownText}; default: that of the system`)
      .meta({ examples: [7.5] })
      .optional(),
    water: startWaterSchema
      .meta({ description: 'its own water, laid over that of the system; default: that of the system' })
      .optional(),
    settled: bounded(startRanges.settled, 'all settled solids, dry; default: none').optional(),
    volume: bounded(
      startRanges.volume,
      'water in the reservoir; range: 0 to what it holds, other vessels are full; default: the level of the ' +
        'float, else full',
    ).optional(),
  },
  'state of one vessel at the start',
);

const saved = word(
  'a state saved by a run, to go on from on the day it was saved: it wins over what stands here, which then may be ' +
    'left out; default: none',
).meta({ examples: ['end.json'] });
const day = bounded(
  savedRanges.day,
  'the day that a run with a saved state begins on, where that is another: 0 begins anew with what stood there; ' +
    'default: the time at which it was saved',
).meta({ examples: [0] });
const grownAt = bounded(grownRange, `${grownText}; default: that of its water at the start`).meta({
  examples: [7.5],
});
const common = {
  'grown-at': grownAt.optional(),
  saved: saved.optional(),
  day: day.optional(),
  vessels: z.unknown().optional(),
};
const words = 'state at the start';

/** The section `start` without its vessels. */
const startSchema = section({ biofilm: biofilmSchema, water: startWaterSchema, ...common }, words);

/** The section `start` of a run that may go on from a saved state. */
export const goingOnSchema = section(
  {
    biofilm: biofilmSchema.meta({ description: `${biofilmText}; ${fromSaved}` }).optional(),
    water: startWaterSchema.meta({ description: `water at the start; ${fromSaved}` }).optional(),
    ...common,
  },
  words,
);

const parameterRange = section(
  {
    value: number('the number', -1e12, 1e12),
    low: number('lowest; default: the value, which is then not drawn', -1e12, 1e12).optional(),
    high: number('highest; default: the value, which is then not drawn', -1e12, 1e12).optional(),
  },
  'a number of the tables given anew with its range',
);

/** One entry of `parameters`: a number, in the unit of its table, with or without a range. */
export const parameterSchema = z.union(
  [number('a number in the unit of its table', -1e12, 1e12), parameterRange],
  {
    error: ({ input }) =>
      kindComplaint(input, 'a number in the unit of its table, or a map of value, low, high'),
  },
);

type StartWaterGiven = QualityGiven & { readonly solids?: number | undefined };
type VesselGiven = ReturnType<typeof startVesselSchema.parse>;

/** What the readers of other sections have found. */
export interface StartContext {
  readonly frame: RunFrame;
  readonly vessels: Named<Vessel>;
  readonly waters: Named<SourceWater>;
  readonly topUp: TopUp | undefined;
  readonly cohorts: Named<Cohort>;
  readonly plantings: Named<Planting>;
  readonly flows: readonly Flow[];
  readonly pumps: Named<Pump>;
}

/** How a run begins. */
export interface Start {
  readonly start: readonly StartVessel[];
  readonly saved?: SavedState;
}

function readBiofilm(reader: ScenarioReader, given: BiofilmGiven): { aob: number; nob: number } {
  const { parameters } = reader;
  if (given.kind === 'shares') return { aob: given.aob, nob: given.nob };
  if (given.kind === 'uncycled') {
    return { aob: parameters.value('biofilm.seed-aob'), nob: parameters.value('biofilm.seed-nob') };
  }
  return {
    aob: given.share * parameters.value('biofilm.cycled-aob'),
    nob: given.share * parameters.value('biofilm.cycled-nob'),
  };
}

/** Solids that stand at the start, parted as those of faeces: what breaks down, and what hardly does. */
function parted({ parameters }: ScenarioReader, solids: number): readonly [number, number] {
  const refractory = parameters.value('solids.refractory-share') * solids;
  return [solids - refractory, refractory];
}

/** Biofilm of a vessel, and what it has grown in: a fresh one has grown in no water. */
function readFilm(
  reader: ScenarioReader,
  film: BiofilmGiven,
  grown: { readonly common: number | undefined; readonly own: number | undefined },
  vessel: string,
): Pick<StartVessel, 'aob' | 'nob' | 'grownAt'> {
  const grownAt = grown.own ?? grown.common;
  const shares = readBiofilm(reader, film);
  if (film.kind === 'uncycled') {
    if (grown.own !== undefined) fresh(reader, ['start', 'vessels', vessel, 'grown-at']);
    return { ...shares, grownAt: 'fresh' };
  }
  return grownAt === undefined ? shares : { ...shares, grownAt };
}

function fresh(reader: ScenarioReader, path: Path): void {
  reader.fault(path, 'an uncycled film has grown in no water', {
    expected: '`biofilm: cycled`, or no `grown-at`',
  });
}

/** A vessel's own water laid over that of the system: what it names wins, `like` replaces all of it. */
function layOver(common: StartWaterGiven | undefined, own: StartWaterGiven | undefined): StartWaterGiven {
  if (own === undefined) return common ?? {};
  if (own.like !== undefined || common === undefined) return own;
  const written = Object.entries(own).filter(([, value]) => value !== undefined);
  return { ...common, ...(Object.fromEntries(written) as StartWaterGiven) };
}

function readOwn(reader: ScenarioReader, context: StartContext): Map<string, VesselGiven | undefined> {
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
  reader: ScenarioReader,
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
  checkStartVolume(reader, path, written, vessel, isReservoir);
  return written;
}

/** Whether the section says that the run goes on from a saved state. */
function goesOn(reader: ScenarioReader): boolean {
  return reader.has(['start', 'saved']);
}

/** What a saved state holds in its vessels, as if it had been written in the file, by vessel. */
function savedStarts(
  reader: ScenarioReader,
  vessels: Named<Vessel>,
  saved: SavedState | undefined,
): ReadonlyMap<string, StartVessel> {
  const starts = new Map<string, StartVessel>();
  if (saved === undefined) return starts;
  const amounts = new Map(
    saved.states.map(({ component, place, amount }) => [`${component}@${place}`, amount]),
  );
  const capacity = reader.parameters.value('biofilm.capacity');
  for (const [vessel, volume] of Object.entries(saved.volumes)) {
    const amount = (component: string): number => amounts.get(`${component}@${vessel}`) ?? 0;
    const room = (vessels.get(vessel)?.surface ?? 0) * capacity;
    const share = (component: string): number => (room > 0 ? amount(component) / room : 0);
    const of = (quantity: keyof StartVessel['water']): number => amount(componentOf(quantity)) / volume;
    starts.set(vessel, {
      vessel,
      water: {
        ...{ ammonia: of('ammonia'), nitrite: of('nitrite'), nitrate: of('nitrate'), solids: of('solids') },
        ...{ alkalinity: of('alkalinity'), carbon: of('carbon') },
        ...{ oxygen: of('oxygen'), chloride: of('chloride'), calcium: of('calcium') },
        ...{ refractory: of('refractory'), dissolved: of('dissolved') },
        ...{ 'organic-nitrogen': of('organic-nitrogen') },
      },
      volume,
      ...{ aob: share('aob'), nob: share('nob'), settled: amount('settled') },
      settledRefractory: amount('settled-refractory'),
    });
  }
  return starts;
}

/** Heterotrophs over the cycled films, g COD per m2, by vessel: of a film cycled to a share, that share. */
function grownOver(
  { parameters }: ScenarioReader,
  { frame, vessels, flows, pumps }: StartContext,
  cycled: readonly CycledFilm[],
  cohorts: readonly Cohort[],
): ReadonlyMap<string, number> {
  const films = new Map(cycled.map((film) => [film.start.vessel, film]));
  const there = present(vessels).map(({ name, volume, temperature }) => ({
    ...{ name, volume, temperature: valueOn(temperature, frame.startDate, 0) },
    film: films.get(name)?.surface ?? 0,
  }));
  const grown = fedHeterotrophs(parameters, { vessels: there, flows, pumps: present(pumps), cohorts });
  return new Map(cycled.map(({ start: { vessel }, share }) => [vessel, share * (grown.get(vessel) ?? 0)]));
}

/** Reads the section `start` and gives the state of every vessel. */
export function readStart(reader: ScenarioReader, context: StartContext): Start {
  const { frame, vessels, waters } = context;
  const common = reader.parse(goesOn(reader) ? goingOnSchema : startSchema, ['start']);
  const own = readOwn(reader, context);
  if (common === undefined) return { start: [] };
  if (common.day !== undefined && common.saved === undefined)
    reader.fault(['start', 'day'], 'is of a saved state only', { expected: 'saved: FILE beside it' });
  const saved = common.saved === undefined ? undefined : readSaved(reader, common.saved, common.day, context);
  const fromState = savedStarts(reader, vessels, saved);
  const pressure = pressureShare(reader.parameters, frame.altitude);
  if (common.biofilm?.kind === 'uncycled' && common['grown-at'] !== undefined)
    fresh(reader, ['start', 'grown-at']);
  const cycled: CycledFilm[] = [];
  const qualities = new Map<string, Quality | undefined>();
  const quality = (path: Path, given: StartWaterGiven, temperature: number): Quality | undefined => {
    const key = JSON.stringify([path, temperature]);
    if (!qualities.has(key))
      qualities.set(key, completeQuality(reader, path, given, { temperature, pressure }, waters));
    return qualities.get(key);
  };
  const startOf = ([name, vessel]: readonly [string, Vessel | undefined]): StartVessel[] => {
    const given = own.get(name);
    if (vessel === undefined || (own.has(name) && given === undefined)) return [];
    const kept = fromState.get(name);
    if (kept !== undefined) return [kept];
    const biofilm = given?.biofilm ?? common.biofilm;
    if (
      common.saved !== undefined &&
      (biofilm === undefined || (common.water ?? given?.water) === undefined)
    ) {
      if (saved === undefined) return [];
      const missing = biofilm === undefined ? 'biofilm' : 'water';
      reader.fault(['start', missing], 'missing', {
        expected: `what ${name} starts with, which the saved state does not hold`,
      });
      return [];
    }
    const path = given?.water === undefined ? ['start', 'water'] : ['start', 'vessels', name, 'water'];
    const water = layOver(common.water, given?.water);
    const found = quality(path, water, valueOn(vessel.temperature, frame.startDate, 0));
    const volume = readVolume(reader, vessel, given, context);
    if (found === undefined || biofilm === undefined) return [];
    const film = readFilm(reader, biofilm, { common: common['grown-at'], own: given?.['grown-at'] }, name);
    const { ammonia, nitrite, nitrate, alkalinity, carbon, oxygen, chloride, calcium } = found;
    const [solids, refractory] = parted(reader, water.solids ?? 0);
    const [settled, settledRefractory] = parted(reader, given?.settled ?? 0);
    const nitrogen = { ammonia, nitrite, nitrate };
    const start = { refractory, ...nitrogen, solids, alkalinity, carbon, oxygen, chloride, calcium };
    const stands = { vessel: name, water: start, volume, ...film, settled, settledRefractory };
    if (biofilm.kind === 'cycled') {
      const temperature = valueOn(vessel.temperature, frame.startDate, 0);
      cycled.push({ start: stands, surface: vessel.surface, temperature, share: biofilm.share });
    }
    return [stands];
  };
  const stands = [...vessels].flatMap(startOf);
  const cohorts = present(context.cohorts);
  const fed = fedFilms(reader.parameters, cycled, cohorts);
  // A file with faults is refused: what feeds films may be what is not known in it.
  const sound = cycled.length > 0 && reader.faults.length === 0;
  const grown = sound ? grownOver(reader, context, cycled, cohorts) : new Map<string, number>();
  const start = stands.map((each) => ({
    ...each,
    ...fed.get(each.vessel),
    ...compact({ heterotrophs: grown.get(each.vessel) }),
  }));
  return { start, ...(saved && { saved }) };
}
