import type { LogColumns } from './blank-log.js';
import type { SystemNames } from './small-system.js';

/** The same shape with any words in it: what an edition in another language must have. */
export type Same<T> = T extends string ? string : { readonly [K in keyof T]: Same<T[K]> };

/** What every lesson is given beside its own words: names for its system files, and the columns of its log. */
export interface Shared {
  readonly names: SystemNames;
  readonly logColumns: LogColumns;
}

/** The words of one lesson in any language, from those of the English edition. */
export type Words<T> = Same<T> & Shared;

/** A series as the lessons name it, such as `tan@tank`, by the name that its vessel has in this edition. */
export function placed({ names }: Shared): (series: string) => string {
  const known: Readonly<Record<string, string>> = { ...names };
  return (series) => series.replace(/@(\w+)$/, (_, place: string) => `@${known[place] ?? place}`);
}
