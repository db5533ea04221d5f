import { type EndNames, partsOf, valueRange, type ValueRange } from '../analysis/design/value-range.js';
import { InputError } from '../base/faults.js';
import { valuesLike } from '../scenario/file/paths-like.js';
import type { ExtendedScenario } from '../model/open-model.js';
import { openTexts, type ReferencedFiles } from './texts.js';

/** A value with its unit as it is written in a file. */
const written = ({ unit }: { readonly unit: string }, value: number): string =>
  unit === '' ? String(value) : `${value} ${unit}`;

/** Reads each text, and throws the faults of all of them at once. */
export function readAll<T>(texts: readonly string[], read: (text: string) => T): readonly T[] {
  const faults: InputError['faults'][number][] = [];
  const found = texts.flatMap((text) => {
    try {
      return [read(text)];
    } catch (error) {
      if (!(error instanceof InputError)) throw error;
      faults.push(...error.faults);
      return [];
    }
  });
  if (faults.length > 0) throw new InputError(faults);
  return found;
}

/** One quantity of a scenario file that is varied. Plain data. */
export interface Varied extends ValueRange {
  readonly path: string;
  /** Whether the file takes only whole numbers there. */
  readonly whole: boolean;
  /** Where several values are varied by one factor: each as it stands in the file. The range is then one of factors. */
  readonly each?: readonly {
    readonly path: string;
    /** As it stands in the file, in `unit`. */
    readonly value: number;
    readonly unit: string;
  }[];
}

/** A value of one quantity that is varied. */
export interface VariedValue {
  readonly varied: Pick<Varied, 'path' | 'unit' | 'each'>;
  /** In the unit of what is varied; a factor where several are. */
  readonly value: number;
}

/**
 * A value times a factor; a bare whole number (of fish, of batches) stays whole.
 * @param quantity a `value` in its unit
 * @param factor times what the file says
 */
export function timesFactor(
  quantity: { readonly value: number; readonly unit: string },
  factor: number,
): number {
  const { value, unit } = quantity;
  const product = value * factor;
  return unit === '' && Number.isInteger(value) ? Math.round(product) : Number(product.toPrecision(12));
}

/** The scenario with values at their paths. Throws InputError where it takes no such value. */
export function openAt(texts: ReferencedFiles, values: readonly VariedValue[]): ExtendedScenario {
  const { options } = texts;
  const set = values.flatMap(({ varied, value }) =>
    varied.each === undefined
      ? [`${varied.path}=${written(varied, value)}`]
      : varied.each.map((each) => `${each.path}=${written(each, timesFactor(each, value))}`),
  );
  return openTexts({ ...texts, options: { ...options, set: [...options.set, ...set] } });
}

/** Opens the file with one value, faults of that value under the name of the option that gave it. */
function tryAt(texts: ReferencedFiles, value: VariedValue, name: string): void {
  try {
    openAt(texts, [value]);
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    throw new InputError(
      error.faults.map((fault) => (fault.file === '--set' ? { ...fault, file: name } : fault)),
    );
  }
}

const wantsWhole = (error: unknown): boolean =>
  error instanceof InputError &&
  error.faults.some(({ expected }) => expected?.startsWith('a whole number') === true);

/** Whether a file takes a whole number at a path and no other. */
function takesWhole(texts: ReferencedFiles, range: ValueRange, path: string, names: EndNames): boolean {
  if (range.unit !== '' || !Number.isInteger(range.from) || !Number.isInteger(range.to)) return false;
  try {
    tryAt(texts, { varied: { path, unit: '' }, value: range.from + 0.5 }, names.from);
    return false;
  } catch (error) {
    if (wantsWhole(error)) return true;
    throw error;
  }
}

/**
 * Reads what is varied and between which ends, and tries the file at both. Throws InputError where the file has
 * no such path, or takes no such value there.
 */
export function openVaried(
  texts: ReferencedFiles,
  { path, from, to }: { readonly path: string; readonly from: string; readonly to: string },
  names: EndNames,
): Varied {
  const range = valueRange(from, to, names);
  if (!('unit' in range)) throw new InputError(range);
  const varied = { path, unit: range.unit };
  tryAt(texts, { varied, value: range.from }, names.from);
  tryAt(texts, { varied, value: range.to }, names.to);
  return { ...range, path, whole: takesWhole(texts, range, path, names) };
}

/** Values of the file at some paths, `*` for any step, that one factor is to vary; all faults at once. */
function eachAt(texts: ReferencedFiles, patterns: readonly string[]): NonNullable<Varied['each']> {
  const { written } = openTexts(texts).reading.resolved;
  return readAll(patterns, (pattern) => {
    const found = valuesLike(written, pattern).map(({ path, value }) => {
      const parts = partsOf(String(value), path);
      return 'value' in parts ? { path, ...parts } : { ...parts, file: '--vary', key: path };
    });
    const faults = found.filter((each) => 'problem' in each);
    if (faults.length > 0) throw new InputError(faults);
    if (found.length === 0)
      throw new InputError([
        {
          file: '--vary',
          got: pattern,
          problem: 'nothing is written there',
          expected: 'a path of the file; * stands for any one step, as in fish.*.ration',
        },
      ]);
    return found.filter((each) => 'value' in each);
  }).flat();
}

/**
 * Reads what is varied where it may be several values by one factor: one path without `*` as `openVaried` does; else
 * the ends are factors on what the file says.
 */
export function openFactor(
  texts: ReferencedFiles,
  { paths, from, to }: { readonly paths: readonly string[]; readonly from: string; readonly to: string },
  names: EndNames,
): Varied {
  if (paths.length === 1 && !paths[0].includes('*'))
    return openVaried(texts, { path: paths[0], from, to }, names);
  const each = eachAt(texts, paths);
  const range = valueRange(from, to, names);
  if (!('unit' in range)) throw new InputError(range);
  if (range.unit !== '')
    throw new InputError([
      {
        file: names.from,
        got: JSON.stringify(from),
        problem: 'a unit, where several values are varied by one factor',
        expected: 'bare factors on what the file says, such as 0.5 and 2',
      },
    ]);
  const varied = { path: paths.join(', '), unit: '', each };
  tryAt(texts, { varied, value: range.from }, names.from);
  tryAt(texts, { varied, value: range.to }, names.to);
  return { ...range, ...varied, whole: false };
}
