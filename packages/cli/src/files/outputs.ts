import { closeSync, fstatSync, openSync, readSync } from 'node:fs';
import { isOurs, openingBytes, type OutputKind } from './kinds.js';
import { FileError, filesRead, reasonOf, streamFiles } from './read.js';
import { placeOf, type Place, writeAtomic } from './write.js';

/** A file that a command was asked to write. */
export interface Wanted {
  /** The option that named it, such as `--csv`. */
  readonly option: string;
  readonly path: string;
  readonly kind: OutputKind;
  /** The file that earlier work is gone on from: that one may be written anew. */
  readonly resumes?: string | undefined;
}

/** How outputs are decided upon. */
export interface OutputOptions {
  /** Whether files that Leat did not make may be written over. */
  readonly force?: boolean | undefined;
  /** Files that will be read later. */
  readonly inputs?: readonly string[];
}

/** A file that may be written: nothing that is read, and nothing that a person made, is lost by it. */
export interface Output {
  /** Its path as it was named. */
  readonly path: string;
  /** Writes it whole or not at all. Throws FileError. */
  write(data: string | Uint8Array): void;
}

/** The first bytes of a file. */
function openingOf(path: string): Buffer {
  const file = openSync(path, 'r');
  try {
    const bytes = Buffer.alloc(Math.min(openingBytes, fstatSync(file).size));
    return bytes.subarray(0, readSync(file, bytes, 0, bytes.length, 0));
  } finally {
    closeSync(file);
  }
}

/** The file at a path; undefined where there is none, or nothing that can be lost. */
function identityAt(path: string | undefined): string | undefined {
  if (path === undefined) return undefined;
  try {
    return placeOf(path).identity;
  } catch {
    return undefined;
  }
}

/** What speaks against writing one output, by what is on the disk now. */
function problemOf(
  { path, kind, resumes }: Wanted,
  { identity, there, target }: Place,
  { force = false, inputs = [] }: OutputOptions,
): string | undefined {
  if (identity === undefined || identity === identityAt(resumes)) return undefined;
  const read = filesRead().get(identity) ?? inputs.find((input) => identityAt(input) === identity);
  if (read !== undefined) {
    const as = read === path ? '' : ` as ${read}`;
    return `is read${as} and would be replaced; expected another name`;
  }
  const stream = streamFiles().get(identity);
  if (stream !== undefined) return `is where ${stream} goes already; expected another name`;
  if (!there || force || isOurs(kind, openingOf(target))) return undefined;
  return 'is there already and is not overwritten; expected another name, or --force';
}

/** Every fault of what is wanted, by what is on the disk now. */
function faultsOf(all: readonly Wanted[], options: OutputOptions): readonly (string | undefined)[] {
  const taken = new Map<string, string>();
  return all.map((wanted) => {
    const { option, path } = wanted;
    try {
      const place = placeOf(path);
      const key = place.identity ?? (place.stream === undefined ? undefined : `stream ${place.stream}`);
      const other = key === undefined ? undefined : taken.get(key);
      if (key !== undefined) taken.set(key, other ?? option);
      if (other !== undefined) return `${path}: is what ${other} writes; expected another name for ${option}`;
      const problem = problemOf(wanted, place, options);
      return problem === undefined ? undefined : `${path}: ${option}: ${problem}`;
    } catch (error) {
      return `${path}: cannot be written: ${reasonOf(error)}`;
    }
  });
}

/**
 * Decides, before anything runs and after everything is read, whether a command may write what it was asked to write. An
 * output is no input, by whatever name or link, no other output, and no file that Leat did not make, unless `--force`
 * says so. Each is looked at again when it is first written. Throws FileError with every fault.
 */
export function openOutputList(all: readonly Wanted[], options: OutputOptions): readonly Output[] {
  const faults = faultsOf(all, options).filter((fault) => fault !== undefined);
  if (faults.length > 0) throw new FileError(faults);
  return all.map(({ path }, i) => {
    let begun = false;
    return {
      path,
      write(data) {
        const fault = begun ? undefined : faultsOf(all, options)[i];
        if (fault !== undefined) throw new FileError(fault);
        writeAtomic(path, data);
        begun = true;
      },
    };
  });
}

const optionOf = (key: string): string =>
  `--${key.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`)}`;

/** As `openOutputList`, for the options that name outputs: an output under the key of each that is given. */
export function openOutputs<Key extends string>(
  named: Readonly<Partial<Record<Key, string>>>,
  kinds: Readonly<Record<Key, OutputKind>>,
  options: OutputOptions,
): Readonly<Partial<Record<Key, Output>>> {
  const keys = (Object.keys(kinds) as Key[]).filter((key) => named[key] !== undefined);
  const wanted = keys.map((key) => ({ option: optionOf(key), path: named[key] ?? '', kind: kinds[key] }));
  const outputs = openOutputList(wanted, options);
  return Object.fromEntries(keys.map((key, i) => [key, outputs[i]])) as Partial<Record<Key, Output>>;
}

/** Where work is kept, and what it goes on from. */
export interface KeptOptions {
  readonly out?: string;
  readonly resume?: string;
  readonly csv?: string;
  readonly force?: boolean;
}

/** The files of work that can be gone on with. */
export interface KeptOutputs {
  /** That of `--out`, or else the one that it goes on from. */
  readonly kept?: Output;
  readonly csv?: Output;
}

/** As `openOutputs`, for work that can be gone on with: the file that it goes on from may be written anew by it. */
export function openKept({ out, resume, csv, force }: KeptOptions, kind: OutputKind): KeptOutputs {
  const path = out ?? resume;
  const option = out === undefined ? '--resume' : '--out';
  const wanted: Wanted[] = [];
  if (path !== undefined) wanted.push({ option, path, kind, resumes: resume });
  if (csv !== undefined) wanted.push({ option: '--csv', path: csv, kind: 'course' });
  const outputs = openOutputList(wanted, { force, inputs: resume === undefined ? [] : [resume] });
  const [first, last] = [outputs[0], outputs[outputs.length - 1]];
  return { ...(path !== undefined && { kept: first }), ...(csv !== undefined && { csv: last }) };
}

/** A file of this name, or of one like it where that is taken: for what nobody named. */
export function unusedOutput(name: string): Output {
  const dot = name.lastIndexOf('.');
  for (let i = 1; ; i++) {
    const path = i === 1 ? name : `${name.slice(0, dot)}-${i}${name.slice(dot)}`;
    if (placeOf(path).there) continue;
    const [output] = openOutputList([{ option: 'what is kept', path, kind: 'own' }], {});
    return output;
  }
}
