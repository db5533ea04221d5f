import { names } from '../library/names.js';

/** Everyday names of what is dosed, by the product of the tables. */
const everyday: readonly { readonly words: RegExp; readonly product: string }[] = [
  { words: /baking soda|bicarb(?:onate)? of soda|sodium bicarb/i, product: 'sodium-bicarbonate' },
  { words: /potassium bicarb/i, product: 'potassium-bicarbonate' },
  { words: /potash lye|caustic potash|potassium hydroxide|\bkoh\b/i, product: 'potassium-hydroxide' },
  { words: /hydrated lime|slaked lime|calcium hydroxide|builder'?s lime/i, product: 'calcium-hydroxide' },
  { words: /ammonium chloride|sal ammoniac|\bnh4cl\b/i, product: 'ammonium-chloride' },
  { words: /\bsalt\b|sodium chloride|\bnacl\b/i, product: 'sodium-chloride' },
];

const mass = /(\d+(?:[.,]\d+)?)\s*(kg|g|grams?|oz|lbs?)\b/i;
const change =
  /(\d+(?:[.,]\d+)?)\s*%\s*(?:water\s*)?(?:change|exchange|wc)|(?:changed|exchanged|replaced)\s*(\d+(?:[.,]\d+)?)\s*%/i;
const stocked =
  /(?:stocked|added|new|introduced)\s*(\d+)\s*(?:\w+\s+)?(?:fish|fingerlings|tilapia|trout|carp|catfish|perch|barramundi|cod)/i;
const died = /(\d+)\s*(?:fish\s*)?(?:dead|died|lost|mortalit)|(?:dead|died|lost|mortalit\w*)\D{0,12}(\d+)/i;

/**
 * What a note seems to say was done to the system, as the line of a scenario's actions that would say it; undefined
 * where it says nothing of the kind. It is a proposal: Leat takes no action from words.
 */
export function deedInNote(text: string, date: string): string | undefined {
  const product = everyday.find(({ words }) => words.test(text))?.product;
  const amount = mass.exec(text);
  if (product !== undefined && names('dose').includes(product)) {
    const [, digits = '', unit = ''] = amount ?? [];
    const much =
      amount === null
        ? 'MASS'
        : `${digits.replace(',', '.')} ${unit
            .toLowerCase()
            .replace(/^grams?$/, 'g')
            .replace(/^lbs$/, 'lb')}`;
    return `{ at: ${date}, dose: { into: VESSEL, product: ${product}, mass: ${much} } }`;
  }
  const part = change.exec(text);
  if (part !== null) {
    const share = (part[1] ?? part[2] ?? '').replace(',', '.');
    return `{ at: ${date}, change-water: { vessel: VESSEL, share: ${share} %, water: WATER } }`;
  }
  const fish = stocked.exec(text);
  if (fish !== null) return `{ at: ${date}, stock: { cohort: COHORT, number: ${fish[1]}, mass: MASS } }`;
  const lost = died.exec(text);
  if (lost !== null) return `{ at: ${date}, lose-fish: { cohort: COHORT, number: ${lost[1] ?? lost[2]} } }`;
  return undefined;
}
