import { type EndNames, InputError, type OpenScenario, valueRange, type ValueRange } from '@leat/core';
import { valueText } from '@leat/view/text';
import { openTexts, type ReferencedFiles } from './referenced-files.js';

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
}

/** A value of one quantity that is varied. */
export interface VariedValue {
  readonly varied: Pick<Varied, 'path' | 'unit'>;
  readonly value: number;
}

/** The scenario with values at their paths. Throws InputError where it takes no such value. */
export function openAt(texts: ReferencedFiles, values: readonly VariedValue[]): OpenScenario {
  const { options } = texts;
  const set = values.map(({ varied, value }) => `${varied.path}=${valueText(varied, value)}`);
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
