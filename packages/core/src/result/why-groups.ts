import { sum } from '../base/sum.js';
import type { DifferencePart } from './why.js';

/** Parts of a difference that are one thing to who runs a system; `value` is their sum, in the unit of the difference. */
export interface PartGroup extends DifferencePart {
  /** What it is made of, the largest first; one part: it stands for itself. */
  readonly parts: readonly DifferencePart[];
}

/** What belongs together, by the name of the part. The first that fits holds. */
const kinds: readonly (readonly [name: string, fits: RegExp])[] = [
  ['water lost and topped up', /^(transpiration|evaporation|top-up with |overflow|rain)/],
  ['water changed and let out', /^(water exchange|water let out|water filled in|discharge)/],
  ['denitrification', /^denitrification/],
  ['ammonia oxidation', /^(growth of ammonia oxidisers|ammonia oxidation)/],
  ['nitrite oxidation', /^(growth of nitrite oxidisers|nitrite oxidation)/],
  [
    'growth and decay of the film',
    /^(decay of (ammonia|nitrite) oxidisers|(growth|decay and detachment) of heterotrophs)/,
  ],
  ['uptake by crops', /uptake by crops$/],
  ['crop growth', /^(crop growth|growth of fruit)/],
  ['excretion of fish', /^(nitrogen given off by fish|upkeep of fish)/],
  ['feeding', /^(feed eaten|feed not eaten|feed given)/],
  ['dead fish', /^(dead fish|fat of dead fish|fish lost)/],
  ['breakdown of solids', /^(hydrolysis|breakdown|fermentation|oxidation of dissolved|organic nitrogen to)/],
  ['settling and capture of solids', /^(settling|capture)/],
  ['exchange with air', /^(oxygen|carbon dioxide) (exchange|from air|to air)/],
  ['dosing', /^dosing/],
  ['lime', /^(dissolution of lime|lime scale)/],
];

const flow = /^carried (?:in from|out to) (.*)$/;

/** What a part belongs to; its own name where it stands alone. */
function groupOf(name: string): string {
  const vessel = flow.exec(name)?.[1];
  if (vessel !== undefined) return `flow between here and ${vessel}`;
  return kinds.find(([, fits]) => fits.test(name))?.[0] ?? name;
}

/** Whether all of some parts did more, or all less; water that comes and goes nets to neither. */
function doneBy(name: string, parts: readonly DifferencePart[]): Pick<DifferencePart, 'did'> {
  const [first] = parts;
  if (parts.length > 1 && name.startsWith('water ')) return {};
  return first.did !== undefined && parts.every(({ did }) => did === first.did) ? { did: first.did } : {};
}

/**
 * The parts of a difference by what they are to who runs a system: opposite terms of one cause are netted (transpiration
 * against top-up), parts of one thing are one. Sums as the parts do; the largest first.
 */
export function groupParts(parts: readonly DifferencePart[]): readonly PartGroup[] {
  const groups = new Map<string, DifferencePart[]>();
  for (const part of parts) {
    const name = groupOf(part.name);
    groups.set(name, [...(groups.get(name) ?? []), part]);
  }
  return [...groups]
    .map(([name, members]) => ({
      name: members.length === 1 ? members[0].name : name,
      value: sum(members.map(({ value }) => value)),
      ...doneBy(name, members),
      parts: members,
    }))
    .sort((p, q) => Math.abs(q.value) - Math.abs(p.value) || (p.name < q.name ? -1 : 1));
}
