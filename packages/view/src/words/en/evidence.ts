/** What a report says of differences and their reasons, of how sure it is, and of what it rests on. */
export const evidence = {
  differences: {
    title: 'How the runs differ, and why',
    never: (other: string, first: string, share: string): string =>
      `${other} never differs from ${first} by more than ${share} of the highest of a quantity.`,
    first: (other: string, first: string, day: string, what: string, now: string, was: string): string =>
      `${other} first differs from ${first} on ${day}: ${what} is ${now} against ${was}.`,
    quantity: 'quantity',
    unit: 'unit',
    end: (letter: string): string => `${letter} end`,
    highest: (letter: string): string => `${letter} highest`,
    farthest: 'farthest apart',
    sideBySide: 'Key quantities side by side',
    caption: 'Largest differences first, in percent of the largest size in any run',
    fromDay: (day: string, days: string): string => `from ${day}, ${days} d`,
    held: 'held',
    limits: 'Limits passed in some runs and not in all',
    saved: (one: string, other: string): string =>
      `${one} and ${other}: a saved document cannot be asked why; make the report from the scenario files.`,
    why: (other: string, first: string): string => `Why ${other} differs from ${first} `,
    nothing: 'Nothing differs enough to ask why.',
    note: 'Each on the day on which it differs most. To the right: raised it; to the left: lowered it. The parts add up to the difference.',
    smaller: (count: number): string => `${count} smaller ones`,
    reasons: (
      what: string,
      day: string,
      from: readonly [string, string],
      to: readonly [string, string],
      unit: string,
    ): string =>
      `${what}, ${day}: ${from[0]} in ${from[1]}, ${to[0]} in ${to[1]} (${unit}). What made the difference:`,
    difference: 'difference',
  },
  chances: {
    title: 'How sure we are',
    runs: (count: number): string => `${count} runs`,
    partOf: (ran: number, members: number): string => `${ran} of ${members} runs`,
    failed: (count: number, first: number, reason: string): string =>
      ` ${count} of them broke off and are in no band; the first, ${first}, for: ${reason}.`,
    drawn: (part: string, numbers: number, method: string, seed: number, failed: string): string =>
      `${part}, each with ${numbers} numbers drawn from their published ranges (${method}, seed ${seed}).${failed} ` +
      'The bands hold what those ranges leave open, not what the model leaves out.',
    band: (median: string, low: string, high: string): string => `${median} (${low} to ${high})`,
    when: (day: string, days: string, source: string): string =>
      `first on day ${day}, for ${days} d; ${source}`,
    limit: (bound: string, place: string, whom: string): string => `${bound}, ${place}, for ${whom}`,
    limitColumn: 'limit; day and length: median and 90 % band',
    caption: 'Share of the runs in which a limit was passed',
    passedNone: (count: number): string =>
      `${count === 1 ? '1 limit was' : `${count} limits were`} passed in none of them.`,
    judgedNone: (count: number): string =>
      `${count === 1 ? '1 limit was' : `${count} limits were`} judged in none of them.`,
    reach: (low: string, high: string): string => `${low} to ${high}`,
    margin: (text: string): string => `margin of: ${text}`,
    asked: 'asked',
    holdsIn: 'holds in',
    median: 'median',
    band50: '50 % band',
    band90: '90 % band',
    answered: 'runs with an answer',
    table: 'What was asked of every run',
  },
  basis: {
    title: 'What this rests on',
    assumed: 'Assumed',
    always: [
      'Every vessel is well mixed: no dead corners, no layers.',
      'Fish, crops and bacteria behave as published averages of their kind; no disease, no pests, no hunger for light.',
      'Nitrogen, carbon, oxygen, acidity, chloride, calcium and water are followed; phosphorus, iron and potassium are not.',
      'What has no published value here is marked as common practice or as from memory.',
    ] as readonly string[],
    sources: 'Where the numbers are from',
    sourcesNote: 'Each opens to the ids of the numbers that came from it.',
    given: (where: string): string => ` (given in ${where})`,
    manifest: 'Manifest',
    manifestCaption: 'What must be the same for the same bytes',
    columns: {
      run: 'run',
      file: 'file',
      version: 'Leat',
      scenario: 'scenario (SHA-256)',
      integrator: 'integrator',
      tolerance: 'tolerance',
      seed: 'seed',
      over: 'put over the file',
      ended: 'ended',
    },
    /** How a run ended, by what the library calls it. */
    endings: {
      done: 'done',
      'step-too-small': 'step-too-small',
      'too-many-steps': 'too-many-steps',
      'not-finite': 'not-finite',
      singular: 'singular',
      chattering: 'chattering',
      'negative-state': 'negative-state',
    },
    noneDrawn: 'none drawn',
    none: 'none',
    cautions: 'Cautions',
  },
};
