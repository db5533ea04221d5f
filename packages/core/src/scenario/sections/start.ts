// Reads numbers as: start in a file
import * as z from 'zod';
import { formProblem } from '../../base/form-problem.js';
import { formatQuantity, parseQuantity } from '../../base/units.js';
import { complain, kindComplaint } from '../file/complaint.js';
import { loadText, resolvePath } from '../file/include-tree.js';
import type { Named } from '../file/report.js';
import type { ScenarioReader } from './scenario-reader.js';
import { nodeAt, originAt, type Path } from '../file/tree.js';
import { number, quantity, type Reads, section, share, word } from '../file/values.js';
import type { SavedState, SourceWater, StartVessel, TopUp, Vessel } from '../scenario.js';
import { pressureShare } from '../../weather/penman-monteith.js';
import { valueOn } from '../value-on.js';
import type { RunFrame } from './run.js';
import { completeQuality, type Quality, type QualityGiven, startWaterSchema } from './waters.js';

/** Biofilm at the start: grown in, new, a share of grown in, or each group as a share of the room. */
type BiofilmGiven =
  | { readonly kind: 'uncycled' }
  | { readonly kind: 'cycled'; readonly share: number }
  | { readonly kind: 'shares'; readonly aob: number; readonly nob: number };

const expected = 'cycled, uncycled, a share of cycled such as "40 %", or a map of aob and nob';

const biofilmText = `biofilm: ${expected}; range: shares from 0 to 1`;

const biofilmSchema: Reads<BiofilmGiven> = z
  .union(
    [
      z.string(),
      z.number(),
      section(
        {
          aob: share('ammonia oxidisers as a share of the room'),
          nob: share('nitrite oxidisers as a share of the room'),
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
      if (written.aob + written.nob > 1) return refuse('the shares of the room pass 1');
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

const grownText = 'pH of the water that the film has grown in; range: 3 to 11';

/** What one vessel holds at the start, where it differs. */
export const startVesselSchema = section(
  {
    biofilm: biofilmSchema.meta({ description: `${biofilmText}; default: that of the system` }).optional(),
    'grown-at': number(`${grownText}; default: that of the system`, 3, 11)
      .meta({ examples: [7.5] })
      .optional(),
    water: startWaterSchema
      .meta({ description: 'its own water, laid over that of the system; default: that of the system' })
      .optional(),
    settled: quantity('mass', 'settled solids, dry; default: none').optional(),
    volume: quantity(
      'volume',
      'water in the reservoir; range: 0 to what it holds, other vessels are full; default: the level of the ' +
        'float, else full',
    ).optional(),
  },
  'state of one vessel at the start',
);

/** The section `start` without its vessels. */
export const startSchema = section(
  {
    biofilm: biofilmSchema,
    'grown-at': number(`${grownText}; default: that of its water at the start`, 3, 11)
      .meta({ examples: [7.5] })
      .optional(),
    water: startWaterSchema,
    saved: word('a state saved by a run, to go on from: it wins over what stands here; default: none')
      .meta({ examples: ['end.json'] })
      .optional(),
    vessels: z.unknown().optional(),
  },
  'state at the start',
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

const amount = z.number();

/** A state saved by a run, version 1. Keys beyond these are ignored. */
const savedSchema = z.object({
  volumes: z.record(z.string(), amount.positive()),
  rainTank: amount.nonnegative(),
  ages: z.record(z.string(), amount.nonnegative()),
  states: z.array(z.object({ component: z.string(), place: z.string(), amount })),
});

const path: Path = ['start', 'saved'];

/**
 * Reads the state that `start: { saved: FILE }` goes on from. Its places must be vessels, cohorts or
 * batches of plantings of this system; places that it does not hold start as the file says.
 */
export function readSaved(
  reader: ScenarioReader,
  file: string | undefined,
  places: readonly string[],
): SavedState | undefined {
  if (file === undefined) return undefined;
  const { file: from } = originAt(reader.tree, path);
  const answer = loadText(reader.load, resolvePath(from, file), from);
  if ('problem' in answer) {
    reader.fault(path, answer.problem);
    return undefined;
  }
  let document: unknown;
  try {
    document = JSON.parse(answer.text);
  } catch {
    reader.fault(path, 'not JSON', { expected: 'a state saved with `leat run --save`' });
    return undefined;
  }
  const form = formProblem(document, 'leat-state', 1);
  if (form !== undefined) {
    const { problem, expected } = form;
    reader.fault(path, `${file}: ${problem}`, {
      expected: `${expected}: a state saved with \`leat run --save\``,
    });
    return undefined;
  }
  const reading = savedSchema.safeParse(document);
  if (!reading.success) {
    const [issue] = reading.error.issues;
    const where = issue.path.length === 0 ? 'the document' : issue.path.join('.');
    reader.fault(path, `not a saved state of version 1: ${where} does not fit`, {
      expected: 'a state saved with `leat run --save`',
    });
    return undefined;
  }
  const { volumes, rainTank, ages, states } = reading.data;
  const named = new Set([...Object.keys(volumes), ...states.map((state) => state.place)]);
  for (const name of named) reader.known(name, places, path, 'place');
  return { volumes, rainTank, ages, states };
}

type StartWaterGiven = QualityGiven & { readonly solids?: number | undefined };
type VesselGiven = ReturnType<typeof startVesselSchema.parse>;

/** What the readers of other sections have found. */
export interface StartContext {
  readonly frame: RunFrame;
  readonly vessels: Named<Vessel>;
  readonly waters: Named<SourceWater>;
  readonly topUp: TopUp | undefined;
}

function readBiofilm(reader: ScenarioReader, given: BiofilmGiven): { aob: number; nob: number } {
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

/** Biofilm of a vessel, and what it has grown in: a fresh one has grown in no water. */
function readFilm(
  reader: ScenarioReader,
  common: z.output<typeof startSchema>,
  given: VesselGiven | undefined,
  vessel: string,
): Pick<StartVessel, 'aob' | 'nob' | 'grownAt'> {
  const film = given?.biofilm ?? common.biofilm;
  const own = given?.['grown-at'];
  const grownAt = own ?? common['grown-at'];
  const shares = readBiofilm(reader, film);
  if (film.kind === 'uncycled') {
    if (own !== undefined) fresh(reader, ['start', 'vessels', vessel, 'grown-at']);
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
  const limit = formatQuantity(vessel.volume, 'volume');
  if (!isReservoir && written !== vessel.volume) {
    reader.fault(path, 'only the reservoir may start below its full volume', { expected: limit });
  } else if (written > vessel.volume)
    reader.fault(path, 'more than the vessel holds', { expected: `at most ${limit}` });
  return written;
}

/** The file named in `start: { saved: ... }`. Faults of the section are reported by `readStart`. */
export function savedFile(reader: ScenarioReader): string | undefined {
  const node = nodeAt(reader.tree, ['start', 'saved']);
  return node?.kind === 'scalar' && typeof node.value === 'string' ? node.value : undefined;
}

/** Reads the section `start` and gives the state of every vessel. */
export function readStart(reader: ScenarioReader, context: StartContext): StartVessel[] {
  const { frame, vessels, waters } = context;
  const common = reader.parse(startSchema, ['start']);
  const own = readOwn(reader, context);
  if (common === undefined) return [];
  const pressure = pressureShare(reader.parameters, frame.altitude);
  if (common.biofilm.kind === 'uncycled' && common['grown-at'] !== undefined)
    fresh(reader, ['start', 'grown-at']);
  const qualities = new Map<string, Quality | undefined>();
  const quality = (path: Path, given: StartWaterGiven, temperature: number): Quality | undefined => {
    const key = JSON.stringify([path, temperature]);
    if (!qualities.has(key))
      qualities.set(key, completeQuality(reader, path, given, { temperature, pressure }, waters));
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
    const film = readFilm(reader, common, given, name);
    const { tan, nitrite, nitrate, alkalinity, carbon, oxygen, chloride } = found;
    const solids = water.solids ?? 0;
    const start = { tan, nitrite, nitrate, solids, alkalinity, carbon, oxygen, chloride };
    return [{ vessel: name, water: start, volume, ...film, settled: given?.settled ?? 0 }];
  });
}
