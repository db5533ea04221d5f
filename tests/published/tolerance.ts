import type { PublishedCheck } from './published-check.js';

type Held = Pick<PublishedCheck, 'published' | 'tolerance'>;

/** One unit of the last place of a number as it is printed. */
function lastPlace(text: string): number {
  const [, decimals = ''] = text.split('.');
  return 10 ** -decimals.length;
}

/** A printed number that the model must round to. */
export function printed(text: string): Held {
  return { published: Number(text), tolerance: { words: 'as printed', amount: lastPlace(text) / 2 } };
}

/** A printed number, within one unit of its last place. */
export function nearPrinted(text: string): Held {
  return {
    published: Number(text),
    tolerance: { words: 'one unit of the last place', amount: lastPlace(text) },
  };
}

/** A number within a share of itself, said in percent. */
export function within(percent: number, published: number): Held {
  return {
    published,
    tolerance: { words: `${percent} %`, amount: (percent / 100) * Math.abs(published) },
  };
}

/** A number within an amount in its own unit. */
export function about(published: number, amount: number, unit: string): Held {
  return { published, tolerance: { words: `${amount} ${unit}`, amount } };
}

/** A published range, to be inside of. */
export function between(low: number, high: number): Held {
  return { published: { low, high }, tolerance: { words: 'inside', amount: 0 } };
}
