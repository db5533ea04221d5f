/** What made a quantity differ. Names of processes stand as the library has them. */
export const why = {
  /** Causes in other words than those of the library; none in English. */
  causes: {} as Readonly<Record<string, string>>,
  flow: (vessel: string): string => `flow between here and ${vessel}`,
  carriedIn: (vessel: string): string => `carried in from ${vessel}`,
  carriedOut: (vessel: string): string => `carried out to ${vessel}`,
  /** Whether a cause did more in the second run than in the first, or less. */
  did: (how: 'more' | 'less', cause: string): string => `${how} ${cause}`,
  by: (amount: string, cause: string): string => `${amount} by ${cause}`,
  smaller: (count: number): string => `${count} smaller`,
  lastDigit: (count: number): string => `${count} more, each under half a last digit`,
  onDay: (day: string, value: string): string => `on ${day}, at ${value},`,
  asOn: (day: string, value: string): string => `on ${day}, at ${value}`,
  inRun: (name: string, value: string): string => `in ${name} (${value})`,
  on: (what: string, day: string): string => `${what} on ${day}`,
  same: (what: string, second: string, first: string): string => `${what} is the same ${second} as ${first}`,
  differs: (what: string, by: string, higher: boolean, second: string, first: string): string =>
    `${what} is ${by} ${higher ? 'higher' : 'lower'} ${second} than ${first}`,
  through: (what: string): string => `through what: ${what}`,
  nothing: 'nothing made a difference',
  ofAll: 'of all that moved it',
  difference: 'difference',
};
