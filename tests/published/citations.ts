import { sourceCells } from '../../packages/core/src/library/tables.generated.js';

/** Publications that a check cites and no number of the library comes from. None has a DOI unless it was seen. */
const others: Readonly<Record<string, string>> = {
  'trussell-1972':
    'Trussell, The percent un-ionized ammonia in aqueous ammonia solutions at different pH levels and temperatures, J. Fish. Res. Board Can. 29, 1972, reprinted in a test-kit manual',
  'aqion-ammonia': 'aqion, worked example "Free ammonia in water" (a speciation program)',
  'aqion-open-system': 'aqion, "Carbonate species vs pH (open system)" (a speciation program)',
  'canada-ammonia': 'Canadian Council of Ministers of the Environment, water quality guideline for ammonia',
  'jcu-lecture': 'James Cook University, CH3041 lecture 5, pH of a raindrop',
  'stumm-morgan': 'Stumm & Morgan, Aquatic Chemistry, table of carbonate constants',
  'apha-4500': 'APHA, Standard Methods 4500-O, table of oxygen solubility; USGS tables of dissolved oxygen',
  'en-25814': 'EN 25814 (ISO 5814), saturation table, as reprinted in a meter manual',
  'oregon-table-30':
    'Oregon DEQ, ammonia criteria, tables 30(a)-(c), which follow EPA-822-R-13-001; as quoted in the tests of the R package ORDEQWaterQualityCriteria (J. Law)',
};

/** What a key stands for: a source of the library, or of this list. Throws RangeError where it is neither. */
export function citationOf(key: string): string {
  const cells = sourceCells.find(([each]) => each === key);
  if (cells !== undefined) {
    const [, citation, year, doi] = cells;
    return [citation, year, doi].filter((part) => part !== 'none').join(', ');
  }
  if (!(key in others)) throw new RangeError(`no source ${key} in the library or in citations.ts`);
  return others[key];
}
