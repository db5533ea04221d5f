import { InputError } from '../../base/faults.js';
import type { Plain } from '../../scenario/file/tree.js';
import { isBox, type PlainFile, valueAt, withValue } from '../advice/file-edit.js';

/**
 * The file with a cap on every water of its float valve but rain, written such as `160 L/d`. Whether it is a cap the
 * reader of the file says. Throws InputError where nothing can be capped.
 */
export function withRation(file: PlainFile, cap: string): PlainFile {
  const from = valueAt(file, ['top-up', 'from']);
  if (!Array.isArray(from))
    throw new InputError([
      {
        file: '--ration',
        got: JSON.stringify(cap),
        problem: 'no top-up in this file',
        expected: 'a section `top-up`',
      },
    ]);
  const capped = (from as readonly Plain[]).map((source): Plain => {
    if (source === 'rain-tank') return source;
    return isBox(source) ? { ...source, cap } : { water: source, cap };
  });
  return withValue(file, ['top-up', 'from'], capped);
}
