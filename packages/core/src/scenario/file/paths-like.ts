import type { Plain } from './tree.js';

/** A single value of a file at its path, as `--set` takes it. */
export interface ValueAtPath {
  readonly path: string;
  /** As it is written: a quantity with its unit is a text, a number stands in the unit of its key. */
  readonly value: string | number | boolean;
}

/** Every single value of a file whose path is like a pattern, in the order of the file; `*` stands for any one step. */
export function valuesLike(plain: Plain, pattern: string): readonly ValueAtPath[] {
  const steps = pattern.replace(/\[(\d+|\*)\]/g, '.$1').split('.');
  const walk = (at: Plain | undefined, done: number, path: string): readonly ValueAtPath[] => {
    if (at === undefined || at === null) return [];
    if (done === steps.length) return typeof at === 'object' ? [] : [{ path, value: at }];
    if (typeof at !== 'object') return [];
    const isList = Array.isArray(at);
    return Object.entries(at as Readonly<Record<string, Plain>>)
      .filter(([key]) => steps[done] === '*' || steps[done] === key)
      .flatMap(([key, below]) =>
        walk(below, done + 1, isList ? `${path}[${key}]` : path === '' ? key : `${path}.${key}`),
      );
  };
  return walk(plain, 0, '');
}
