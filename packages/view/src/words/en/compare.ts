/** Runs side by side on a screen. */
export const compare = {
  otherwise: (name: string, first: string): string => `${name} is otherwise than ${first} in:`,
  saysTheSame: (name: string, first: string): string => `${name} says what ${first} says`,
  andMore: (count: number): string => `and ${count} more`,
  notJudged: (name: string): string => `${name} not judged`,
  worst: (value: string, day: string): string => `worst ${value} ${day}`,
  passed: (name: string, day: string, days: string, worst: string): string =>
    `${name} PASSED from ${day} for ${days} d, ${worst}`,
  kept: (name: string, worst: string): string => `${name} kept, ${worst}`,
  limit: (bound: string, where: string, whom: string, source: string): string =>
    `${bound} at ${where}, for ${whom} [${source}]`,
  noLimits: 'limits passed in some and not in all: none',
  limits: 'limits passed in some and not in all',
  more: (count: number): string => `${count} more: see --json`,
  unit: 'unit',
  end: 'end',
  most: 'most',
  highest: 'highest',
  farthest: 'farthest',
  alike: (share: string, names: string): string => `alike within ${share} %: ${names}`,
  cost: 'cost',
  spent: 'spent',
  earned: 'earned',
  leftOver: 'left over',
  currencies: 'not of one currency: not to be held against each other',
  cameFrom: (what: 'nitrogen' | 'water'): string => `${what} came from`,
  wentTo: (what: 'nitrogen' | 'water'): string => `${what} went to`,
  never: (other: string, first: string, share: string): string =>
    `${other} never differs from ${first} by more than ${share} of the highest of a quantity`,
  parting: (
    other: string,
    first: string,
    day: string,
    what: string,
    values: readonly [string, string],
    share: string,
  ): string =>
    `${other} first differs from ${first} on ${day}: ${what} is ${values[0]} against ${values[1]}, ` +
    `more than ${share} of its highest apart`,
  brokeOff: (name: string, day: string, kind: string): string =>
    `${name} BROKE OFF on ${day}: ${kind}. Its end is there.`,
  uneven: 'The runs are not of one length: each end is that of its own run.',
  differences: 'largest differences first, in percent of the largest size in any run',
};
