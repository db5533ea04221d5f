/** What a cell says of a quantity, in the unit of its column or in one of its own. */
export interface CellValue {
  readonly low: number;
  readonly high: number;
  /** Decimals of a plain number; undefined for a range. */
  readonly decimals?: number;
  /** Unit written in the cell; '' where none. */
  readonly unit: string;
  /** What is worth telling about how it was written. */
  readonly odd?: string;
}

/** Why a cell cannot be read. */
export interface CellFault {
  readonly problem: string;
}

const figure = String.raw`[+-]?(?:\d+(?:[.,]\d*)?|[.,]\d+)(?:[eE][+-]?\d+)?`;
const forms = {
  plain: new RegExp(String.raw`^(~|ca\.?|about|approx\.?)?\s*(${figure})\s*(\+)?\s*([^\d\s.,].*)?$`, 'i'),
  bound: new RegExp(
    String.raw`^(<=?|≤|>=?|≥|less than|under|below|more than|over|above)\s*(${figure})\s*(.*)$`,
    'i',
  ),
  range: new RegExp(String.raw`^(${figure})\s*(?:-|–|—|to|\.\.)\s*(${figure})\s*([^\d\s.,].*)?$`, 'i'),
};
const nothing = /^(?:-+|–|—|n\/?a|n\.a\.|none|null|nan|not (?:tested|measured|taken)|no test|\?+|x)$/i;
const faint = /^(?:trace|traces|tr\.?|faint|barely(?: any)?)$/i;
const zero = /^(?:nil|zero|n\.?d\.?|not detected|undetectable|nothing)$/i;

/** What a spreadsheet writes where it found no value. */
const sheetError =
  /^#(?:N\/A|NULL!|DIV\/0!|VALUE!|REF!|NAME\?|NUM!|SPILL!|CALC!|FIELD!|GETTING_DATA|[A-Z\d/]+[!?])$/i;

/** Whether a cell writes a number with a comma in it. */
export const hasComma = (text: string): boolean => /\d,\d/.test(text);

/**
 * A figure with a decimal point or comma; a comma before three figures may also part thousands, and so may a point where
 * other numbers of the log have a comma.
 */
function numberOf(text: string, commas: boolean): { value: number; odd?: string } | CellFault {
  if (commas && /^[+-]?[1-9]\d{0,2}\.\d{3}$/.test(text))
    return { problem: `may be ${text} or ${text.replace('.', '')}: other numbers have a comma` };
  if (/^[+-]?[1-9]\d{0,2},\d{3}$/.test(text)) {
    return {
      problem: `may be ${text.replace(',', '.')} or ${text.replace(',', '')}`,
    };
  }
  const value = Number(text.replace(',', '.'));
  return text.includes(',') ? { value, odd: 'decimal comma' } : { value };
}

/** Most figures that a person writes: a spreadsheet that worked a number out keeps 17, the last of them noise. */
const mostFigures = 12;

/** Places behind the point to which a number is written: 3 of 2.5e-2, 1 of 0.30000000000000004. */
function decimalsOf(digits: string, value: number): number {
  const clean =
    digits.replace(/\D/g, '').length > mostFigures ? String(Number(value.toPrecision(mostFigures))) : digits;
  const [, behind = '', power = '0'] = /^[^.,e]*(?:[.,](\d*))?(?:e([+-]?\d+))?$/i.exec(clean) ?? [];
  return Math.max(0, behind.length - Number(power));
}

const monthWord =
  /^(\d{1,2})[-/ ]?(jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec)[a-z]*$|^(jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec)[a-z]*[-/ ]?(\d{1,2})$/i;
const monthsShort = ['jan', 'feb', 'mar', 'apr', 'may', 'jun', 'jul', 'aug', 'sep', 'oct', 'nov', 'dec'];

/**
 * What a spreadsheet has made a date of: `1-2` becomes 2 January or 1 February, the one as the other the range 1 to 2.
 * undefined of a cell that is no date.
 */
function dateRange(text: string): CellValue | undefined {
  const iso = /^\d{4}-(\d{2})-(\d{2})(?:T00:00.*)?$/.exec(text);
  // In figures, day and month either way round.
  const figures = /^(\d{1,2})([/.-])(\d{1,2})\2(?:\d{4}|\d{2})$/.exec(text);
  const words = monthWord.exec(text);
  const pair =
    iso !== null
      ? [Number(iso[1]), Number(iso[2])]
      : figures !== null
        ? [Number(figures[1]), Number(figures[3])]
        : words !== null
          ? [
              Number(words[1] ?? words[4]),
              monthsShort.indexOf((words[2] ?? words[3] ?? '').toLowerCase()) + 1,
            ]
          : undefined;
  if (pair === undefined || Math.min(...pair) > 12 || Math.max(...pair) > 31) return undefined;
  const [low, high] = [Math.min(...pair), Math.max(...pair)];
  const odd = `a date, which spreadsheets make of ${low}-${high}`;
  return { low, high, unit: '', odd, ...(low === high ? { decimals: 0 } : {}) };
}

/** Fractions that a keyboard has, with what each is. */
const fractions: Readonly<Record<string, number>> = {
  '½': 0.5,
  '¼': 0.25,
  '¾': 0.75,
  '⅓': 1 / 3,
  '⅔': 2 / 3,
};

/** A cell whose fractions (`½`, `1½`, `1 1/2`) stand as decimals; `1/2` alone may be a date, and stays. */
const withoutFractions = (text: string): string =>
  text
    .replace(/(\d+)?\s?([½¼¾⅓⅔])/g, (_, whole: string | undefined, part: string) =>
      String(Number((Number(whole ?? 0) + fractions[part]).toPrecision(4))),
    )
    .replace(/(^|[^\d./-])(\d+) (\d)\/(\d{1,2})(?![\d/])/g, (all, head: string, whole, part, of) =>
      Number(of) > Number(part)
        ? `${head}${Number((Number(whole) + Number(part) / Number(of)).toPrecision(4))}`
        : all,
    );

/** Whether a cell says that there is no reading. */
export function saysNothing(text: string): boolean {
  return text === '' || nothing.test(text);
}

/**
 * Reads a cell of a hand-kept log: `0.25`, `0,25`, `~0.5`, `78 F`, `<0.25`, `0-0.25`, `>160`, `trace`, `nil`.
 * A bound leaves the other side open; `trace` lies between nothing and `least`, the smallest that the kit shows.
 * @param least undefined where the kit's smallest step is not known: then `trace` cannot be read
 * @param commas whether other numbers of the log have a comma: then `1.000` may be a thousand
 */
export function readCell(written: string, least: number | undefined, commas = false): CellValue | CellFault {
  const text = withoutFractions(written);
  if (sheetError.test(text)) return { problem: 'an error of the spreadsheet' };
  if (text.startsWith('=')) return { problem: 'a formula whose value the file does not hold' };
  if (faint.test(text)) {
    return least === undefined
      ? { problem: 'a trace of unknown size: the map gives no steps and no resolution' }
      : { low: 0, high: least, unit: '', odd: 'a trace' };
  }
  if (zero.test(text)) {
    return { low: 0, high: 0, decimals: 0, unit: '', odd: 'nothing found' };
  }
  const bound = forms.bound.exec(text);
  if (bound !== null) {
    const [, sign = '', digits = '', unit = ''] = bound;
    const number = numberOf(digits, commas);
    if ('problem' in number) return number;
    const below = /^(?:<|≤|less|under|below)/i.test(sign);
    return {
      low: below ? -Infinity : number.value,
      high: below ? number.value : Infinity,
      unit: unit.trim(),
      odd: below ? 'less than the kit shows' : 'more than the kit shows',
    };
  }
  const dated = dateRange(text);
  if (dated !== undefined) return dated;
  const twice = /^([+-]?\d+)\.\.(\d+)$/.exec(text);
  if (twice !== null && Number(twice[1]) > Number(twice[2])) {
    const meant = `${twice[1]}.${twice[2]}`;
    return {
      low: Number(meant),
      high: Number(meant),
      decimals: twice[2].length,
      unit: '',
      odd: 'two points for one',
    };
  }
  const range = forms.range.exec(text);
  if (range !== null) {
    const [, first = '', second = '', unit = ''] = range;
    const [low, high] = [numberOf(first, commas), numberOf(second, commas)];
    if ('problem' in low) return low;
    if ('problem' in high) return high;
    if (low.value > high.value) return { problem: 'a range that runs backwards' };
    const odd =
      twice === null ? 'a range' : `a range, or ${twice[1]}.${twice[2]} with two points, which lies in it`;
    return { low: low.value, high: high.value, unit: unit.trim(), odd };
  }
  const plain = forms.plain.exec(text);
  if (plain === null) return { problem: 'not a number' };
  const [, about, digits = '', plus, unit = ''] = plain;
  const number = numberOf(digits, commas);
  if ('problem' in number) return number;
  if (!Number.isFinite(number.value)) return { problem: 'not a finite number' };
  if (plus !== undefined) {
    return { low: number.value, high: Infinity, unit: unit.trim(), odd: 'more than the kit shows' };
  }
  const decimals = decimalsOf(digits, number.value);
  const odd = about === undefined ? number.odd : 'an estimate';
  return {
    low: number.value,
    high: number.value,
    decimals,
    unit: unit.trim(),
    ...(odd === undefined ? {} : { odd }),
  };
}
