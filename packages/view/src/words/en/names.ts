/** A table of names: what stands in no table is told by its own name. */
type Names = Readonly<Record<string, string>>;

/** Quantities where the whole name would be long, in a sentence. */
const quantities: Names = {
  tan: 'TAN',
  'un-ionised-ammonia': 'free ammonia',
  'nitrite-felt': 'nitrite not held off by chloride',
};

/** Names of the library, of events and of balances that are told otherwise than by their own hyphenated words. */
const terms: Names = {};

/** Names of the library and of what is followed, in words. */
export const names = {
  quantities,
  terms,
  /** A name that stands in no table: its hyphens are blanks. */
  other: (name: string): string => name.replaceAll('-', ' ').replace('un ionised', 'un-ionised'),
  /** What an action or rule did, as the run wrote it. */
  eventText: (text: string): string => text,
  topUpWith: (water: string): string => `top-up with ${water}`,
  keptIn: (store: string): string => `kept in ${store}`,
  drawnFrom: (store: string): string => `drawn from ${store}`,
};
