/** A name of the library in plain words. */
export function plain(name: string): string {
  return name.replaceAll('-', ' ').replace('un ionised', 'un-ionised');
}

const shortNames: Readonly<Record<string, string>> = {
  tan: 'TAN',
  'un-ionised-ammonia': 'free ammonia',
  'nitrite-felt': 'nitrite not held off by chloride',
};

/** A quantity in words, such as `free ammonia`. */
export function quantityPhrase(quantity: string): string {
  return shortNames[quantity] ?? plain(quantity);
}

/** A series in words, such as `TAN in tank-1`. */
export function seriesPhrase(series: string): string {
  const place = placeOf(series);
  return `${quantityPhrase(quantityOf(series))} in ${place === 'system' ? 'the whole system' : place}`;
}

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
export function listed(items: readonly string[]): string {
  if (items.length < 2) return items.join('');
  return `${items.slice(0, -1).join(', ')} and ${items[items.length - 1]}`;
}

/** The first of several names, cut to `most` letters, and how many others there are: `tank-1 +2`. */
export function andMore(names: readonly string[], most = Infinity): string {
  const others = new Set(names).size - 1;
  return `${short(names[0], most)}${others > 0 ? ` +${others}` : ''}`;
}
