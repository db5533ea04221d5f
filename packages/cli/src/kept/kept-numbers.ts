/** A number that JSON has no word for. */
interface Odd {
  readonly odd: string;
}

const isOdd = (value: unknown): value is Odd =>
  typeof value === 'object' && value !== null && 'odd' in value && typeof value.odd === 'string';

/** Plain data as JSON, every number to the bit: what JSON has no word for (NaN, infinities, -0) is written out. */
export function numbersToText(data: unknown): string {
  return JSON.stringify(data, (_, value: unknown) => {
    if (typeof value !== 'number') return value;
    if (Object.is(value, -0)) return { odd: '-0' } satisfies Odd;
    return Number.isFinite(value) ? value : ({ odd: String(value) } satisfies Odd);
  });
}

/** What `numbersToText` wrote. Throws SyntaxError where the text is none. */
export function textToNumbers(text: string): unknown {
  return JSON.parse(text, (_, value: unknown) => (isOdd(value) ? Number(value.odd) : value)) as unknown;
}
