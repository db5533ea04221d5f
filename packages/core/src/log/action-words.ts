import { names } from '../library/names.js';

/** Kinds of action that a log can tell of in words, as a system file names them. */
const toldActions = [
  'dose',
  'change-water',
  'lose-fish',
  'harvest-fish',
  'stock',
  'pump-off',
  'air-off',
  'power-cut',
  'drain-solids',
] as const;

type ToldAction = (typeof toldActions)[number];

/** Everyday names of what is dosed, by the product of the tables. */
const everyday: readonly { readonly pattern: RegExp; readonly product: string }[] = [
  {
    pattern: /baking soda|bicarb(?:onate)? of soda|sodium bicarb|\bnahco3\b/i,
    product: 'sodium-bicarbonate',
  },
  { pattern: /potassium bicarb|\bkhco3\b/i, product: 'potassium-bicarbonate' },
  { pattern: /potash lye|caustic potash|potassium hydroxide|\bkoh\b/i, product: 'potassium-hydroxide' },
  { pattern: /hydrated lime|slaked lime|calcium hydroxide|builder'?s lime/i, product: 'calcium-hydroxide' },
  { pattern: /calcium carbonate|\bcaco3\b|aragonite|crushed coral/i, product: 'calcium-carbonate' },
  { pattern: /soda ash|washing soda|sodium carbonate/i, product: 'sodium-carbonate' },
  { pattern: /potassium carbonate|\bk2co3\b/i, product: 'potassium-carbonate' },
  { pattern: /calcium chloride|\bcacl2\b/i, product: 'calcium-chloride' },
  { pattern: /ammonium chloride|sal ammoniac|\bnh4cl\b/i, product: 'ammonium-chloride' },
  { pattern: /ammonium sul(?:f|ph)ate/i, product: 'ammonium-sulfate' },
  { pattern: /phosphoric(?: acid)?|\bh3po4\b/i, product: 'phosphoric-acid' },
  { pattern: /muriatic|hydrochloric(?: acid)?|\bhcl\b/i, product: 'hydrochloric-acid' },
  { pattern: /sul(?:f|ph)uric(?: acid)?|battery acid|\bh2so4\b/i, product: 'sulphuric-acid' },
  { pattern: /nitric(?: acid)?|\bhno3\b/i, product: 'nitric-acid' },
  { pattern: /citric(?: acid)?|lemon (?:salt|juice)/i, product: 'citric-acid' },
  { pattern: /\bsalt\b|sodium chloride|\bnacl\b/i, product: 'sodium-chloride' },
];

const verbs: readonly { readonly pattern: RegExp; readonly verb: ToldAction }[] = [
  {
    pattern:
      /water\s*(?:change|exchange)|\bwc\b|(?:changed|exchanged|replaced|swapped)\b.*(?:%|\bl\b|lit(?:er|re)s?|gal|buckets?|water)|%\s*(?:change|exchange)/i,
    verb: 'change-water',
  },
  { pattern: /\b(?:dead|died|deaths?|mortalit|lost)/i, verb: 'lose-fish' },
  {
    pattern: /\b(?:harvested|caught|sold|ate|took out)\b.*\b(?:fish|tilapia|trout|carp|catfish|perch)/i,
    verb: 'harvest-fish',
  },
  {
    pattern:
      /\b(?:stocked|introduced)\b|\b(?:new|added)\s*\d+\s*(?:\w+\s+)?(?:fish|fingerlings|tilapia|trout|carp|catfish|perch|barramundi|cod)/i,
    verb: 'stock',
  },
  { pattern: /power\s*(?:cut|out|failure|off)|blackout|outage/i, verb: 'power-cut' },
  { pattern: /pump\s*(?:was\s*)?(?:off|stopped|failed|down)/i, verb: 'pump-off' },
  { pattern: /(?:air|aerator|aeration|blower)\s*(?:was\s*)?(?:off|stopped|failed|down)/i, verb: 'air-off' },
  { pattern: /drained (?:the )?(?:solids|sludge|settler)|purged/i, verb: 'drain-solids' },
];

/** Words of a user's own, in small letters, with the product or the kind of action that each stands for. */
export type OwnWords = ReadonlyMap<string, string>;

/** What a word of the user's may stand for. */
export const wordMeanings = (): readonly string[] => [...names('dose'), ...toldActions];

const figure = String.raw`(\d+(?:[.,]\d+)?|[½¼¾]|half an?|an?|one|two|three|four|five)`;
const spoken: Readonly<Record<string, number>> = {
  ...{ '½': 0.5, '¼': 0.25, '¾': 0.75, 'half a': 0.5, 'half an': 0.5, a: 1, an: 1 },
  ...{ one: 1, two: 2, three: 3, four: 4, five: 5 },
};
const numberOf = (text: string): number => spoken[text.toLowerCase()] ?? Number(text.replace(',', '.'));

/** Volumes of household measures, m3: common practice (a metric spoon, a cup of 240 mL, a bucket of 10 L) [P]. */
const household: Readonly<Record<string, { readonly volume: number; readonly words: string }>> = {
  bucket: { volume: 0.01, words: '10 L' },
  cup: { volume: 0.00024, words: '240 mL' },
  jug: { volume: 0.001, words: '1 L' },
};

/** An action that words tell of. */
export interface ToldLine {
  readonly verb: ToldAction;
  /** The line of a system file that says it, names in capitals where the words do not say. */
  readonly line: string;
  /** What the words leave open; empty where the line is whole. */
  readonly missing: readonly string[];
  /** What was assumed, one clause each. */
  readonly assumed: readonly string[];
}

/** What a log's column of words is about; undefined parts stand in capitals. */
export interface ActedOn {
  readonly vessel?: string;
  readonly water?: string;
  readonly fish?: string;
  readonly pump?: string;
}

/** Where words find their meaning. */
export interface WordContext {
  readonly own: OwnWords;
  /** Grams of one of each measure of the map. */
  readonly measures: ReadonlyMap<string, number>;
  /** m3 of one of each measure of water of the map. */
  readonly volumes: ReadonlyMap<string, number>;
}

const digits = (value: number): string => String(Number(value.toPrecision(6)));

/** Mass in words: in a unit of mass, or by a measure of the map. */
function massIn(
  text: string,
  product: string,
  { measures }: WordContext,
): { line?: string; assumed?: string; measure?: string } {
  const plain = new RegExp(String.raw`${figure}\s*(kg|mg|grams?|g|oz|lbs?|pounds?)\b`, 'i').exec(text);
  if (plain !== null) {
    const unit = plain[2]
      .toLowerCase()
      .replace(/^grams?$/, 'g')
      .replace(/^(?:lbs|pounds?)$/, 'lb');
    return { line: `${digits(numberOf(plain[1]))} ${unit}` };
  }
  // A cup of feed is no cup of a powder: a measure of what is dosed says what it is of.
  for (const [name, grams] of measures) {
    const [measure, thing] = name.split(/ of /i);
    if (thing === undefined || (!text.toLowerCase().includes(thing.toLowerCase()) && thing !== product))
      continue;
    const found = new RegExp(String.raw`${figure}\s*${measure.replace(/[^\w ]/g, '.')}s?\b`, 'i').exec(text);
    if (found !== null)
      return {
        line: `${digits(numberOf(found[1]) * grams)} g`,
        assumed: `one ${name} taken as ${digits(grams)} g, as the map says`,
      };
  }
  const measure = new RegExp(
    String.raw`${figure}\s*(tsp|tbsp|teaspoon|tablespoon|spoon|cup|scoop|handful|cap(?:ful)?|m[lL])(?:s|fuls?)?\b`,
    'i',
  ).exec(text)?.[2];
  return measure === undefined ? {} : { measure };
}

function volumeIn(text: string, { volumes }: WordContext): { line?: string; assumed?: string } {
  const plain = new RegExp(String.raw`${figure}\s*(l|lit(?:er|re)s?|gal(?:lons?)?|m3|m³)(?![\w/])`, 'i').exec(
    text,
  );
  if (plain !== null) {
    const unit = /^l/i.test(plain[2]) ? 'L' : /^gal/i.test(plain[2]) ? 'gal' : 'm3';
    return { line: `${digits(numberOf(plain[1]))} ${unit}` };
  }
  const all = new Map([
    ...Object.entries(household).map(([name, { volume }]) => [name, volume] as const),
    ...volumes,
  ]);
  for (const [name, volume] of all) {
    const found = new RegExp(String.raw`${figure}\s*${name}s?\b`, 'i').exec(text);
    if (found === null) continue;
    const words = volumes.has(name)
      ? 'as the map says'
      : 'common practice: measure yours and write it in the map';
    return {
      line: `${digits(numberOf(found[1]) * volume * 1000)} L`,
      assumed: `one ${name} taken as ${digits(volume * 1000)} L, ${words}`,
    };
  }
  return {};
}

const shareIn = (text: string): string | undefined => {
  const found = /(\d+(?:[.,]\d+)?)\s*%/.exec(text);
  if (found !== null) return `${digits(numberOf(found[1]))} %`;
  const [, part, of] = /(?:^|[^\d/])(\d)\/(\d{1,2})(?![\d/])/.exec(text) ?? [];
  if (part !== undefined && Number(part) < Number(of))
    return `${digits((100 * Number(part)) / Number(of))} %`;
  if (/\bhalf\b(?! an?\b)/i.test(text)) return '50 %';
  if (/\b(?:a |one )?third\b/i.test(text)) return '33 %';
  return /\b(?:a |one )?quarter\b/i.test(text) ? '25 %' : undefined;
};

const spanIn = (text: string): string | undefined => {
  const found = new RegExp(String.raw`${figure}\s*(min(?:utes?)?|h(?:ours?|rs?)?|d(?:ays?)?)\b`, 'i').exec(
    text,
  );
  if (found === null) return undefined;
  const unit = /^m/i.test(found[2]) ? 'min' : /^h/i.test(found[2]) ? 'h' : 'd';
  return `${digits(numberOf(found[1]))} ${unit}`;
};

const countIn = (text: string): string | undefined => {
  const found = new RegExp(String.raw`\b${figure}\b(?!\s*(?:%|g\b|kg|l\b))`, 'i').exec(text);
  return found === null ? undefined : digits(numberOf(found[1]));
};

interface Meaning {
  readonly verb: ToldAction;
  readonly product?: string;
}

/** What an item of words is about: the user's own words first, longest first. */
function meaningOf(text: string, own: OwnWords): Meaning | undefined {
  const small = text.toLowerCase();
  const doses = names('dose');
  for (const [word, stands] of [...own].sort(([a], [b]) => b.length - a.length)) {
    if (!small.includes(word)) continue;
    const verb = toldActions.find((each) => each === stands);
    if (verb !== undefined) return { verb };
    if (doses.includes(stands)) return { verb: 'dose', product: stands };
  }
  const product =
    everyday.find(({ pattern }) => pattern.test(text))?.product ?? doses.find((each) => small.includes(each));
  const verb = verbs.find(({ pattern }) => pattern.test(text))?.verb;
  if (product !== undefined && doses.includes(product)) return { verb: 'dose', product };
  return verb === undefined ? undefined : { verb };
}

/** The body of a line with what it lacks. */
interface Body {
  readonly body: string;
  readonly missing: readonly (string | undefined)[];
  readonly assumed?: readonly (string | undefined)[];
}

const open = (name: string, given: string | undefined): string | undefined =>
  given === undefined ? name : undefined;

function doseBody(text: string, product: string, { vessel }: ActedOn, context: WordContext): Body {
  const { line, assumed, measure } = massIn(text, product, context);
  const strength = product.endsWith('-acid')
    ? 'taken as the mass of pure acid: of a bottle write only the share that is acid (wear gloves and goggles; acid into water, never water into acid)'
    : undefined;
  const lacking =
    line !== undefined
      ? undefined
      : measure === undefined
        ? 'its mass'
        : `the mass of one ${measure} of it: weigh one and write it under measures, as "${measure} of ${product}": 14 g`;
  return {
    body: `dose: { into: ${vessel ?? 'VESSEL'}, product: ${product}, mass: ${line ?? 'MASS'} }`,
    missing: [open('the vessel', vessel), lacking],
    assumed: [assumed, strength],
  };
}

function changeBody(text: string, { vessel, water }: ActedOn, context: WordContext): Body {
  const share = shareIn(text);
  const { line, assumed } =
    share === undefined ? volumeIn(text, context) : { line: undefined, assumed: undefined };
  const much =
    share !== undefined ? `share: ${share}` : line !== undefined ? `volume: ${line}` : 'share: SHARE';
  return {
    body: `change-water: { vessel: ${vessel ?? 'VESSEL'}, ${much}, water: ${water ?? 'WATER'} }`,
    missing: [
      open('the vessel', vessel),
      open('the water that came in', water),
      much.endsWith('SHARE') ? 'how much' : undefined,
    ],
    assumed: [assumed],
  };
}

function fishBody(verb: ToldAction, text: string, { fish }: ActedOn): Body {
  const number = countIn(text);
  const cohort = fish ?? 'COHORT';
  if (verb !== 'stock')
    return {
      body: `${verb}: { cohort: ${cohort}, number: ${number ?? 'NUMBER'} }`,
      missing: [open('the cohort', fish), open('how many', number)],
    };
  const mass = new RegExp(String.raw`${figure}\s*(kg|g)\b`, 'i').exec(text);
  const each = mass === null ? undefined : `${digits(numberOf(mass[1]))} ${mass[2].toLowerCase()}`;
  return {
    body: `stock: { cohort: ${cohort}, number: ${number ?? 'NUMBER'}, mass: ${each ?? 'MASS'} }`,
    missing: [open('the cohort', fish), open('how many', number), open('the mass of one', each)],
  };
}

function bodyOf({ verb, product = '' }: Meaning, text: string, on: ActedOn, context: WordContext): Body {
  const lasting = (body: string, missing: readonly (string | undefined)[]): Body => {
    const span = spanIn(text);
    return { body: `for: ${span ?? 'TIME'}, ${body}`, missing: [...missing, open('how long', span)] };
  };
  switch (verb) {
    case 'dose':
      return doseBody(text, product, on, context);
    case 'change-water':
      return changeBody(text, on, context);
    case 'lose-fish':
    case 'harvest-fish':
    case 'stock':
      return fishBody(verb, text, on);
    case 'power-cut':
      return lasting('power-cut: all', []);
    case 'pump-off':
      return lasting(`pump-off: ${on.pump ?? 'PUMP'}`, [open('the pump', on.pump)]);
    case 'air-off':
      return lasting(`air-off: ${on.vessel ?? 'VESSEL'}`, [open('the vessel', on.vessel)]);
    case 'drain-solids': {
      const share = shareIn(text);
      return {
        body: `drain-solids: { vessel: ${on.vessel ?? 'VESSEL'}, share: ${share ?? 'SHARE'} }`,
        missing: [open('the vessel', on.vessel), open('which share', share)],
      };
    }
  }
}

/** An item of words as an action; undefined where they tell of none. */
export function toldAction(
  text: string,
  date: string,
  on: ActedOn,
  context: WordContext,
): ToldLine | undefined {
  const meaning = meaningOf(text, context.own);
  if (meaning === undefined) return undefined;
  const { body, missing, assumed = [] } = bodyOf(meaning, text, on, context);
  return {
    verb: meaning.verb,
    line: `{ at: ${date}, ${body} }`,
    missing: missing.filter((each) => each !== undefined),
    assumed: assumed.filter((each) => each !== undefined),
  };
}

/** Items of a cell: parted by semicolons, plus signs, line ends, `and`, and commas that part no figures. */
export function itemsOf(text: string): readonly string[] {
  return text
    .split(/\s*(?:;|\+|\n|&|,(?!\d)|\band\b)\s*/i)
    .map((item) => item.trim())
    .filter((item) => item !== '');
}
