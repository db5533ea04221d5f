import * as z from 'zod';
import { calendarDays, dateAfter } from '../../base/calendar.js';
import { type Bound, boundProblem } from '../../base/bounds.js';
import { formProblem } from '../../base/form-problem.js';
import { sealProblem } from '../../base/seal.js';
import { loadText, resolvePath } from '../file/include-tree.js';
import { originAt, type Path } from '../file/tree.js';
import type { SavedState } from '../saved-state.js';
import { savedRanges } from '../checks/ranges.js';
import { checkGoesOn, checkSavedContent, type SavedPlaces } from '../checks/saved.js';
import type { RunFrame } from './run.js';
import type { ScenarioReader } from './scenario-reader.js';

const name = z.string();
const names = z.array(name);
const amount = z.number();
const positive = amount.nonnegative();
const within = (bound: Bound): z.ZodNumber =>
  amount.refine((value) => boundProblem(bound, value) === undefined);
const count = z.int().nonnegative();
const perhaps = z.array(amount.nullable());

const dissolved = {
  ...{ ammonia: amount, nitrite: amount, nitrate: amount },
  ...{ alkalinity: amount, carbon: amount, oxygen: amount, chloride: amount },
  // States saved before calcium was followed have none.
  calcium: amount.default(0),
};

const ration = z.discriminatedUnion('kind', [
  z.object({ kind: z.literal('mass'), gramsPerDay: positive }),
  z.object({ kind: z.literal('share'), perDay: positive }),
  z.object({
    kind: z.literal('table'),
    rows: z.array(z.object({ mass: positive, perDay: positive })).min(1),
  }),
]);

const operation = z.object({
  rations: z.record(name, ration),
  factors: z.record(name, positive),
  feeds: z.record(name, z.object({ name, protein: positive })),
  pumpsOff: names,
  airOff: names,
  dosersOff: names,
  waters: z.record(name, z.object({ name, ...dissolved })),
  topUpStopped: z.boolean(),
});

const source = z.object({
  name,
  today: positive,
  thisWeek: positive,
  dailyCap: positive.nullable().exactOptional(),
  weeklyCap: positive.nullable().exactOptional(),
});

const rule = z.object({
  rule: name,
  active: z.boolean(),
  last: amount.nullable(),
  times: count,
  turns: count,
  chatters: z.boolean(),
  random: z.object({ a: z.int(), b: z.int(), c: z.int(), counter: z.int() }),
});

/** A state saved by a run, version 2. Keys beyond these are ignored. */
const savedSchema = z.object({
  time: within(savedRanges.time),
  date: name.refine((date) => calendarDays(date) !== undefined),
  volumes: z.record(name, within(savedRanges.volume)),
  rainTank: within(savedRanges.rainTank),
  ages: z.record(name, within(savedRanges.age)),
  species: z.record(name, name),
  crops: z.record(name, name),
  states: z.array(z.object({ component: name, place: name, amount })),
  operation,
  tripped: names,
  parched: names,
  siphoning: names.exactOptional(),
  spent: names,
  sources: z.array(source),
  rules: z.array(rule),
  morning: z.object({
    offered: z.record(name, z.object({ fed: positive, share: positive })),
    evaporation: z.record(name, positive),
    ionic: z.record(name, positive),
    transpiration: z.record(name, positive),
  }),
  memory: z.object({
    natural: amount.exactOptional(),
    opening: amount.nullable(),
    refusedBefore: z.boolean(),
    hydrogen: perhaps,
    origin: perhaps,
    slope: perhaps,
  }),
});

type Kept = z.infer<typeof savedSchema>;

/** The run and the places of a system, as the readers of other sections have found them. */
export interface Places extends SavedPlaces {
  readonly frame: RunFrame;
}

const path: Path = ['start', 'saved'];
const made = 'a state saved with `leat run --save`';

/** The document in a file; undefined, with its fault told, where it is no saved state. */
function openSaved(reader: ScenarioReader, file: string): Kept | undefined {
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
    reader.fault(path, 'not JSON', { expected: made });
    return undefined;
  }
  const form = formProblem(document, 'leat-state', 3) ?? sealProblem(document);
  if (form !== undefined) {
    reader.fault(path, `${file}: ${form.problem}`, { expected: `${form.expected}: ${made}` });
    return undefined;
  }
  const reading = savedSchema.safeParse(document);
  if (reading.success) return reading.data;
  const [issue] = reading.error.issues;
  const where = issue.path.length === 0 ? 'the document' : issue.path.join('.');
  reader.fault(path, `not a saved state of version 3: ${where} does not fit`, { expected: made });
  return undefined;
}

/** The saved state on the day that the run begins on: clocks, rations and mornings of another day do not hold on it. */
function onDay(kept: Kept, day: number | undefined): SavedState {
  const { morning, memory, ...rest } = kept;
  if (day === undefined || day === kept.time) return { ...rest, morning, memory };
  const shift = day - kept.time;
  return {
    ...rest,
    time: day,
    sources: rest.sources.map((each) => ({ ...each, today: 0, thisWeek: 0 })),
    rules: rest.rules.map((each) => ({ ...each, last: each.last === null ? null : each.last + shift })),
  };
}

/**
 * Reads the state that `start: { saved: FILE }` goes on from, whole: its form, each state once, species and crops as they
 * were, water within its vessels. Its places must be those of this system; places that it does not hold start as the file
 * says.
 * @param day the day that the run begins on, d; absent: the time at which the state was saved
 */
export function readSaved(
  reader: ScenarioReader,
  file: string,
  day: number | undefined,
  places: Places,
): SavedState | undefined {
  const kept = openSaved(reader, file);
  if (kept === undefined) return undefined;
  checkSavedContent(reader, path, kept, places);
  const saved = onDay(kept, day);
  const { frame } = places;
  const today = dateAfter(frame.startDate, Math.floor(saved.time));
  if (saved.time === kept.time && kept.date !== today)
    reader.notes.push(`start.saved: was saved on ${kept.date}; day ${saved.time} of this run is ${today}`);
  const way = ', or start: { saved: ..., day: 0 } to begin anew with what stood there';
  checkGoesOn(reader, path, saved.time, frame.days, way);
  return saved;
}
