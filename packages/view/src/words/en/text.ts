/** Numbers, spans and units; limits; actions; what comes after events; changes of a file; costs; cautions. */
export const text = {
  none: '-',
  infinite: 'inf',
  /** A unit of a number as it is written in a system file, such as `mg/L as NO3`. */
  unit: (unit: string): string => unit,
  spans: {
    minutes: (count: string): string => `${count} min`,
    hours: (count: string): string => `${count} h`,
    day: (count: string): string => `${count} d`,
    days: (count: string): string => `${count} days`,
    weeks: (count: string): string => `${count} weeks`,
    months: (count: string): string => `${count} months`,
    years: (count: string): string => `${count} years`,
  },
  wholeSystem: 'the whole system',
  inPlace: (what: string, place: string): string => `${what} in ${place}`,
  ofGroup: (what: string, group: string): string => `${what} of ${group}`,
  limits: {
    tooLittle: 'too little',
    tooLittleChloride: 'too little chloride against nitrite',
    /** For whom a limit holds at most or at least so much, at its line in a picture. */
    label: (whom: string, direction: 'above' | 'below'): string =>
      `${whom} at ${direction === 'above' ? 'most' : 'least'}`,
  },
  actions: {
    every: (days: string): string => `every ${days} d`,
    dose: (mass: string, product: string, vessel: string, often: string): string =>
      `${mass} ${product} into ${vessel} ${often}`,
    drainSolids: (share: string, vessel: string, water: string, often: string): string =>
      `${share} of the solids of ${vessel} and ${water} ${often}`,
    changeWater: (much: string, vessel: string, water: string, often: string): string =>
      `${much} of ${vessel} changed for ${water} ${often}`,
  },
  after: {
    head: 'after what happened',
    harm: { lethal: ' (deadly)', harmful: ' (harms them)' },
    passed: (what: string, harm: string, span: string): string => `${what}${harm} after ${span}`,
    times: (kind: string, count: number): string => `${kind} (${count} times)`,
    held: (kinds: string): string => `no limit for fish was passed within 3 days (or to the end) of ${kinds}`,
  },
  changes: {
    none: (section: string, was: string): string => `no ${section} (${was})`,
    instead: (now: string, was: string): string => `${now} instead of ${was}`,
    more: (count: number): string => `${count} more of it`,
    /** What became of a quantity, by its share of what it was. */
    shares: {
      nothing: 'cut to nothing',
      quarter: 'cut to a quarter',
      third: 'cut to a third',
      half: 'cut to a half',
      double: 'doubled',
      treble: 'three times what it was',
    },
    toShare: (share: number): string => `${share < 100 ? 'cut' : 'raised'} to ${share} %`,
    sized: (what: string, how: string, to: string, from: string): string =>
      `${what} ${how} (${to}, was ${from})`,
    /** What the keys of a file are, by the section and the last key of a path. */
    meanings: {
      'fish ration': (name: string): string => `feed of ${name}`,
      'fish number': (name: string): string => `number of fish of ${name}`,
      'fish mass': (name: string): string => `size of the fish of ${name}`,
      'plantings area': (name: string): string => `area of ${name}`,
      'vessels volume': (name: string): string => `volume of ${name}`,
      'vessels aeration': (name: string): string => `air of ${name}`,
      'vessels media': (name: string): string => `filter media of ${name}`,
      'pumps inlet': (name: string): string => `inlet of pump ${name}`,
    },
    gone: (name: string): string => `no ${name}`,
    nobodyDoses: (what: string): string => `nobody doses${what === '' ? '' : ` ${what}`}`,
    dosed: (what: string, how: string): string => `${what} dosed (${how})`,
    notEmpty: (name: string): string => `${name} not left empty`,
    emptyFrom: (name: string, from: string): string => `${name} left empty from ${from} on`,
    emptyUntil: (name: string, from: string, until: string): string =>
      `${name} left empty from ${from} to ${until}`,
  },
  costs: {
    spent: 'spent',
    earned: 'earned',
    line: (name: string, money: string, list: string): string => `${name}: ${money} (${list})`,
    left: (money: string): string => `left over: ${money}, of what has a price; stock and building apart`,
  },
  sweep: {
    margin: (condition: string, unit: string): string => `margin of "${condition}", ${unit}`,
    shares: 'shares of the limit',
  },
  cautions: [
    'A model of well-mixed vessels with published averages: measure your own water before you act on it.',
    'Fish welfare, food safety and discharge: local codes and licensed practice decide, not this run.',
    'Electricity near water, caustic dosing (it burns): licensed practice, protective gear, small doses.',
  ] as readonly string[],
};
