/** Numbers, spans and units; limits; actions; what comes after events; changes of a file; costs; cautions. */
export const text = {
  none: '-',
  infinite: 'inf',
  /** A unit of a number as it is written in a system file, such as `mg/L as NO3`. */
  unit: (unit: string) => unit,
  spans: {
    minutes: (count: string) => `${count} min`,
    hours: (count: string) => `${count} h`,
    day: (count: string) => `${count} d`,
    days: (count: string) => `${count} days`,
    weeks: (count: string) => `${count} weeks`,
    months: (count: string) => `${count} months`,
    years: (count: string) => `${count} years`,
  },
  wholeSystem: 'the whole system',
  inPlace: (what: string, place: string) => `${what} in ${place}`,
  limits: {
    tooLittle: 'too little',
    tooLittleChloride: 'too little chloride against nitrite',
    /** For whom a limit holds at most or at least so much, at its line in a picture. */
    label: (whom: string, direction: 'above' | 'below') => `${whom} at ${direction === 'above' ? 'most' : 'least'}`,
  },
  actions: {
    every: (days: string) => `every ${days} d`,
    dose: (mass: string, product: string, vessel: string, often: string) =>
      `${mass} ${product} into ${vessel} ${often}`,
    drainSolids: (share: string, vessel: string, water: string, often: string) =>
      `${share} of the solids of ${vessel} and ${water} ${often}`,
    changeWater: (much: string, vessel: string, water: string, often: string) =>
      `${much} of ${vessel} changed for ${water} ${often}`,
  },
  after: {
    head: 'after what happened',
    harm: { lethal: ' (deadly)', harmful: ' (harms them)' },
    passed: (what: string, harm: string, span: string) => `${what}${harm} after ${span}`,
    times: (kind: string, count: number) => `${kind} (${count} times)`,
    held: (kinds: string) => `no limit for fish was passed within 3 days (or to the end) of ${kinds}`,
  },
  changes: {
    none: (section: string, was: string) => `no ${section} (${was})`,
    instead: (now: string, was: string) => `${now} instead of ${was}`,
    more: (count: number) => `${count} more of it`,
  },
  costs: {
    spent: 'spent',
    earned: 'earned',
    line: (name: string, money: string, list: string) => `${name}: ${money} (${list})`,
    left: (money: string) => `left over: ${money}, of what has a price; stock and building apart`,
  },
  sweep: {
    margin: (condition: string, unit: string) => `margin of "${condition}", ${unit}`,
    shares: 'shares of the limit',
  },
  cautions: [
    'A model of well-mixed vessels with published averages: measure your own water before you act on it.',
    'Fish welfare, food safety and discharge: local codes and licensed practice decide, not this run.',
    'Electricity near water, caustic dosing (it burns): licensed practice, protective gear, small doses.',
  ] as readonly string[],
};
