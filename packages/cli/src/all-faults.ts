import { InputError } from '@leat/core';

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
