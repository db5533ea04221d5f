import {
  contentHash,
  type Outline,
  type Sampling,
  type SpreadsState,
  type AccumulatorState,
} from '@leat/core';
import { gunzipSync, gzipSync } from 'node:zlib';
import { type Asked, askedDifferences } from './checkpoint.js';
import { FileError, readBytes, reasonOf } from './read.js';
import { digest } from './digest.js';
import type { Output } from './outputs.js';

/**
 * An ensemble, whole or in part: what it is about and what was accumulated so far.
 *
 * Not a `Checkpoint`, which keeps the output of each job and so grows with their number: of a member nothing is kept but
 * what it adds to the counts of a few arrays of fixed size, so that a thousand members of a year take a few megabytes,
 * and the arrays of two shards can be added up. They are packed, since as JSON they would be ten times as large.
 */
export interface EnsemblePart {
  readonly outline: Outline;
  /** Names of the series that say most. */
  readonly keys: readonly string[];
  readonly sampling: Sampling;
  readonly accumulated: AccumulatorState;
}

/** What must be the same for two parts to be of one ensemble, 64 hexadecimal digits. */
export function ensembleId({ outline, sampling }: Pick<EnsemblePart, 'outline' | 'sampling'>): string {
  const texts = [outline.measures, outline.conditions].map((asked) => asked.map(({ text }) => text));
  return contentHash({ system: outline.hash, sampling, texts });
}

/** What differs between two ensembles, in words for a person; empty where nothing does. */
export function differencesOf(one: EnsemblePart, other: EnsemblePart): readonly string[] {
  const asked = ({ outline, sampling }: EnsemblePart): Asked => ({
    system: `${outline.title} ${outline.hash.slice(0, 8)}`,
    '--members': String(sampling.members),
    '--seed': String(sampling.seed),
    '--sampling': sampling.method,
    '--correlate': JSON.stringify(sampling.correlations ?? []),
    '--of': outline.measures.map(({ text }) => text).join('; '),
    '--keep': outline.conditions.map(({ text }) => text).join('; '),
  });
  return askedDifferences(asked(one), asked(other));
}

/** Changes with the form of the file. */
const schema = 3;
const label = 'leat ensemble';
const opening = `{"label":"${label}"`;

/** Largest file, and most bytes of all arrays unpacked: more than any ensemble that a machine can make needs. */
export const mostBytes = 256 * 2 ** 20;
const mostUnpacked = 512 * 2 ** 20;

type Numbers = Float64Array | Int16Array | Uint8Array | Uint16Array | Uint32Array;

const forms = {
  f64: Float64Array,
  i16: Int16Array,
  u8: Uint8Array,
  u16: Uint16Array,
  u32: Uint32Array,
} as const;
type Form = keyof typeof forms;

/** How one array stands in the file: what it holds, how many, and the bytes it takes packed. */
interface Packed {
  readonly form: Form;
  readonly length: number;
  readonly bytes: number;
}

/** The first line of the file: everything but the arrays, which follow it packed, in order. */
interface Head extends Omit<EnsemblePart, 'accumulated'> {
  readonly label: string;
  readonly schema: number;
  readonly id: string;
  /** Under the key that the file has had from the first. */
  readonly tally: Pick<AccumulatorState, 'members' | 'failed' | 'unanswered'>;
  readonly kinds: readonly [SpreadsState['kind'], SpreadsState['kind']];
  readonly counts: readonly [series: number, limits: number, answers: number, holds: number];
  readonly packed: readonly Packed[];
}

function formOf(array: Numbers): Form {
  const found = (Object.keys(forms) as Form[]).find((form) => array instanceof forms[form]);
  if (found === undefined) throw new Error('an array of no known form');
  return found;
}

const arraysOf = ({
  series,
  limits,
  judged,
  passed,
  done,
  answers,
  holds,
}: AccumulatorState): readonly Numbers[] => [
  ...series.arrays,
  ...limits.arrays,
  ...answers,
  ...holds,
  judged,
  passed,
  done,
];

/** The bytes of an ensemble: the same for the same members in whatever order they came. */
function packed(part: EnsemblePart): Buffer {
  const { accumulated } = part;
  const arrays = arraysOf(accumulated);
  const bodies = arrays.map((array) =>
    gzipSync(Buffer.from(array.buffer, array.byteOffset, array.byteLength), { level: 1 }),
  );
  const head: Head = {
    label,
    schema,
    id: ensembleId(part),
    outline: part.outline,
    keys: part.keys,
    sampling: part.sampling,
    tally: { members: accumulated.members, failed: accumulated.failed, unanswered: accumulated.unanswered },
    kinds: [accumulated.series.kind, accumulated.limits.kind],
    counts: [
      accumulated.series.arrays.length,
      accumulated.limits.arrays.length,
      accumulated.answers.length,
      accumulated.holds.length,
    ],
    packed: arrays.map((array, i) => ({
      form: formOf(array),
      length: array.length,
      bytes: bodies[i].length,
    })),
  };
  const hash = digest(JSON.stringify(head), ...bodies);
  return Buffer.concat([Buffer.from(`${JSON.stringify({ ...head, hash })}\n`), ...bodies]);
}

/** Writes an ensemble, whole or in part, whole or not at all. Throws FileError. */
export function writePart(to: Output, part: EnsemblePart): void {
  to.write(packed(part));
}

/** Whether bytes are those of a file of `leat ensemble --out`, whatever its form. */
export function isPart(bytes: Buffer): boolean {
  return bytes.subarray(0, opening.length).toString('latin1') === opening;
}

function headOf(line: string, path: string): Head {
  let head: unknown;
  try {
    head = JSON.parse(line);
  } catch {
    head = undefined;
  }
  if (typeof head !== 'object' || head === null || !('label' in head) || head.label !== label)
    throw new FileError(`${path}: not a file of leat ensemble --out`);
  const written = 'schema' in head ? head.schema : undefined;
  if (written !== schema)
    throw new FileError(
      `${path}: version ${String(written)} of a file of leat ensemble --out; this leat reads version ${schema}: run it again with this leat`,
    );
  return head as Head;
}

function unpacked(bytes: Buffer, { form, length }: Packed): Numbers {
  const plain = gunzipSync(bytes, { maxOutputLength: Math.max(1, length * forms[form].BYTES_PER_ELEMENT) });
  const whole = plain.buffer.slice(plain.byteOffset, plain.byteOffset + plain.byteLength);
  const array = new forms[form](whole);
  if (array.length !== length) throw new RangeError(`${array.length} numbers where ${length} were written`);
  return array;
}

/** Whether a file is as it was written: the hash in its head is of all the rest. */
function isWhole(head: Head, bodies: Buffer): boolean {
  const { hash, ...rest } = head as Head & { readonly hash?: unknown };
  return hash === digest(JSON.stringify(rest), bodies);
}

function partOf(bytes: Buffer, path: string): EnsemblePart {
  const end = bytes.indexOf('\n');
  const head = headOf(bytes.toString('utf8', 0, Math.max(0, end)), path);
  if (!isWhole(head, bytes.subarray(end + 1)))
    throw new FileError(
      `${path}: damaged, cut short or changed after it was written: its hash is of something else`,
    );
  let at = end + 1;
  const size = head.packed.reduce((sum, { form, length }) => sum + length * forms[form].BYTES_PER_ELEMENT, 0);
  if (!(size <= mostUnpacked)) throw new RangeError(`more than ${mostUnpacked / 2 ** 20} MB of numbers`);
  const arrays = head.packed.map((each) => unpacked(bytes.subarray(at, (at += each.bytes)), each));
  const take = <F extends Form>(form: F, count: number): InstanceType<(typeof forms)[F]>[] =>
    arrays.splice(0, count).map((array) => {
      if (!(array instanceof forms[form])) throw new FileError(`${path}: damaged: ${form} expected`);
      return array as InstanceType<(typeof forms)[F]>;
    });
  const [series, limits, answers, holds] = head.counts;
  const [seriesKind, limitsKind] = head.kinds;
  const spreads = (count: number): SpreadsState['arrays'] =>
    arrays.splice(0, count).filter((array) => !(array instanceof Uint8Array));
  const accumulated: AccumulatorState = {
    ...head.tally,
    series: { kind: seriesKind, arrays: spreads(series) },
    limits: { kind: limitsKind, arrays: spreads(limits) },
    answers: take('f64', answers),
    holds: take('u8', holds),
    judged: take('u32', 1)[0],
    passed: take('u32', 1)[0],
    done: take('u8', 1)[0],
  };
  const part = { outline: head.outline, keys: head.keys, sampling: head.sampling, accumulated };
  if (ensembleId(part) !== head.id) throw new FileError(`${path}: damaged: its head does not match its name`);
  return part;
}

/** Reads what `writePart` wrote. Throws FileError for a file that is none, is cut short or is of another form. */
export function readPart(path: string): EnsemblePart {
  let bytes: Buffer;
  try {
    bytes = readBytes(path, mostBytes);
  } catch (error) {
    throw new FileError(`${path}: cannot be read: ${reasonOf(error)}`);
  }
  try {
    return partOf(bytes, path);
  } catch (error) {
    if (error instanceof FileError) throw error;
    throw new FileError(`${path}: damaged or cut short: ${reasonOf(error)}`);
  }
}
