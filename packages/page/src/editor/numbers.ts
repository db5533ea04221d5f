import { isPair, isScalar, parseDocument, visit } from 'yaml';

/** A number of a text, where it stands. */
export interface TextNumber {
  readonly path: string;
  /** The file that it stands in, where that is one which the system includes. */
  readonly file?: string;
  readonly value: number;
  /** As it is written behind the number; empty where there is none. */
  readonly unit: string;
  /** Place of the digits in the text. */
  readonly from: number;
  readonly to: number;
}

const written = /^(["']?)(-?(?:\d+\.?\d*|\.\d+)(?:[eE][-+]?\d+)?)(?:\s*([^\d\s"'].*?))?\1$/;

/** Every number that stands as a value in a text of YAML, with its unit; none in a text that cannot be read. */
export function numbersIn(text: string): readonly TextNumber[] {
  const document = parseDocument(text);
  if (document.errors.length > 0) return [];
  const found: TextNumber[] = [];
  visit(document, {
    Scalar(key, node, above) {
      if (key === 'key' || node.range === undefined || node.range === null) return;
      const [start, end] = node.range;
      const match = written.exec(text.slice(start, end));
      if (match === null) return;
      const [, quote, digits, unit = ''] = match;
      const steps = above.flatMap((each, i) => {
        if (isPair(each)) return isScalar(each.key) ? [String(each.key.value)] : [];
        const next = above[i + 1] ?? node;
        return 'items' in each && !isPair(next) ? [String(each.items.indexOf(next as never))] : [];
      });
      const at = start + quote.length;
      found.push({ path: steps.join('.'), value: Number(digits), unit, from: at, to: at + digits.length });
    },
  });
  return found;
}

/** The ends of a slider about a number: from nothing to twice, or the other way round below nothing. */
export function sliderRange({ value }: TextNumber): {
  readonly min: number;
  readonly max: number;
  readonly step: number;
} {
  const size = value === 0 ? 1 : Math.abs(value);
  const decade = 10 ** Math.floor(Math.log10(size));
  const whole = Number.isInteger(value) && size >= 20;
  return {
    ...(value < 0 ? { min: 2 * value, max: 0 } : { min: 0, max: 2 * size }),
    step: whole ? Math.max(1, decade / 20) : decade / 50,
  };
}

/** The text with another number in place of one. */
export const withNumber = (text: string, { from, to }: TextNumber, value: number): string =>
  `${text.slice(0, from)}${String(Number(value.toPrecision(6)))}${text.slice(to)}`;
