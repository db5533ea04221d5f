import { convert, describeDimension, type Dimension } from '../units.js';
import { nearest } from '../suggest.js';
import type { Fault } from '../errors.js';

/** What else a unit of the tables may be written in. Nitrogen must say as what it is counted. */
const dimensions: Readonly<Record<string, readonly Dimension[]>> = {
  degC: ['temperature'],
  'g/m3': ['concentration'],
  'eq/m3': ['alkalinity'],
  '1/d': ['share-rate', 'rate'],
  '1': ['share'],
  'g/g': ['share'],
  d: ['time'],
  'm/d': ['depth-rate'],
};

/** Properties whose g/m3 are of nitrogen, and of which ion. */
const nitrogen: Readonly<Record<string, Dimension>> = {
  tan: 'ammonia',
  nitrite: 'nitrite',
  nitrate: 'nitrate',
  'limit-ammonia': 'ammonia',
  'limit-nitrite': 'nitrite',
  'limit-nitrate': 'nitrate',
  'lethal-ammonia': 'ammonia',
  'lethal-nitrite': 'nitrite',
};

function dimensionsOf(unit: string, id: string): readonly Dimension[] {
  const property = id.slice(id.lastIndexOf('.') + 1);
  if (unit === 'g/m3' && Object.hasOwn(nitrogen, property)) return [nitrogen[property]];
  return Object.hasOwn(dimensions, unit) ? dimensions[unit] : [];
}

/**
 * A number of a row in the unit of the tables. The unit written must be that one, or one that converts to it.
 * @returns the value, or what is wrong: a problem and what was expected
 */
export function toTableUnit(
  value: number,
  written: string,
  unit: string,
  id: string,
): { readonly value: number } | Fault {
  if (written === unit) return { value };
  const allowed = dimensionsOf(unit, id);
  const answers = allowed.map((dimension) => convert(value, written, dimension));
  const good = answers.find((answer) => 'value' in answer);
  if (good !== undefined) return good;
  const said = answers.find(
    (answer) => 'problem' in answer && /ambiguous|negative|below/.test(answer.problem),
  );
  const also = allowed.length === 0 ? '' : `, or ${describeDimension(allowed[0])}`;
  const near = nearest(written, [unit]);
  return {
    problem: said !== undefined && 'problem' in said ? said.problem : 'not a unit of this number',
    got: written,
    expected: `${unit} as in our table${also}`,
    ...(near === undefined ? {} : { nearest: near }),
  };
}
