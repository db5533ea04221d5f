/** How sure a course is: what many runs with numbers drawn from their ranges gave, one value for each time. */
export interface BandedSeries {
  /** Of the series, such as `nitrate@sump`. */
  readonly name: string;
  readonly unit: string;
  readonly median: readonly number[];
  /** Half of the runs lie between these. */
  readonly half: { readonly low: readonly number[]; readonly high: readonly number[] };
  /** Nine tenths of the runs lie between these. */
  readonly ninety: { readonly low: readonly number[]; readonly high: readonly number[] };
}

/** How likely a limit is passed. */
interface LimitChance {
  /** Id of the limit (`LimitResult.id`), its quantity and its place. */
  readonly id: string;
  readonly quantity: string;
  readonly place: string;
  readonly direction: 'above' | 'below';
  readonly value: number;
  readonly unit: string;
  readonly whom: string;
  /** Share of the runs in which it was passed, 0..1. */
  readonly probability: number;
}

/** What an ensemble of one scenario says, as far as a report draws it. */
export interface Bands {
  /** Number of runs. */
  readonly members: number;
  readonly seed: number;
  /** Output times, d. */
  readonly time: readonly number[];
  readonly series: readonly BandedSeries[];
  readonly limits: readonly LimitChance[];
}
