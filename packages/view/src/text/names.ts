import { type Display, plainDisplay } from '../display/display.js';

/** A name of the library in plain words. */
export function plain(name: string, display: Display = plainDisplay): string {
  const { terms, other } = display.words.names;
  return terms[name] ?? other(name);
}

/** A quantity in words, such as `free ammonia`. */
export function quantityPhrase(quantity: string, display: Display = plainDisplay): string {
  return display.words.names.quantities[quantity] ?? plain(quantity, display);
}

/** Where something is: a name of the file as it is, `system` in words. */
export const placeText = (place: string, { words }: Display = plainDisplay): string =>
  place === 'system' ? (words.names.terms['system'] ?? place) : place;

/** Quantities of a group of fish or a planting, which are not in a place but of it. */
const ofGroups = /^(fish-|crop-|feed$)/;

/** A series in words, such as `TAN in tank-1` or `fish mass of growers`. */
export function seriesPhrase(series: string, display: Display = plainDisplay): string {
  const [quantity, place] = [quantityOf(series), placeOf(series)];
  const { inPlace, ofGroup, wholeSystem } = display.words.text;
  const what = quantityPhrase(quantity, display);
  if (place === 'system') return inPlace(what, wholeSystem);
  return ofGroups.test(quantity) ? ofGroup(what, place) : inPlace(what, place);
}

const kept = 'kept in ';
const drawn = 'drawn from ';

/** Where something came from or went to, as balances name it (`kept in biofilm`, `harvested crop`), in words. */
export function fatePhrase(name: string, display: Display = plainDisplay): string {
  const { keptIn, drawnFrom } = display.words.names;
  if (name.startsWith(kept)) return keptIn(plain(name.slice(kept.length), display));
  return name.startsWith(drawn)
    ? drawnFrom(plain(name.slice(drawn.length), display))
    : flowPhrase(name, display);
}

/** The same beside a ribbon or an area, short: `in biofilm`, `out of water`. */
export function placedPhrase(name: string, display: Display = plainDisplay): string {
  const { pictures } = display.words;
  if (name.startsWith(kept)) return pictures.keptIn(plain(name.slice(kept.length), display));
  return name.startsWith(drawn)
    ? pictures.drawnFrom(plain(name.slice(drawn.length), display))
    : flowPhrase(name, display);
}

const withWater = 'top-up with ';

/** A way of water in words, such as `top-up with well`. */
export function flowPhrase(name: string, display: Display): string {
  if (!name.startsWith(withWater)) return display.words.names.terms[name] ?? name;
  return display.words.names.topUpWith(plainName(name.slice(withWater.length), display));
}

/** A name that may be the user's own: as it stands where no table has it. */
const plainName = (name: string, display: Display): string => display.words.names.terms[name] ?? name;

/** The place of a series: what stands after `@`. */
export function placeOf(series: string): string {
  return series.slice(series.indexOf('@') + 1);
}

/** The quantity of a series: what stands before `@`. */
export function quantityOf(series: string): string {
  return series.slice(0, series.indexOf('@'));
}

/** Text no longer than `most` letters, an ellipsis in place of the rest. */
export function short(text: string, most: number): string {
  const letters = Array.from(text);
  return letters.length <= most ? text : `${letters.slice(0, most - 1).join('')}…`;
}

/** A list in a sentence: `a, b and c`. */
export function listed(items: readonly string[], display: Display = plainDisplay): string {
  return display.list(items);
}

/** The first of several names, cut to `most` letters, and how many others there are: `tank-1 +2`. */
export function andMore(names: readonly string[], most = Infinity): string {
  const others = new Set(names).size - 1;
  return `${short(names[0], most)}${others > 0 ? ` +${others}` : ''}`;
}
