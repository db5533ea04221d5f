import type { Answers, ClimateKind } from './answers.js';

/** Twelve values a year, January first, in a climate of the north. */
export interface ClimateYear {
  /** Of the water, degC. */
  readonly water: readonly number[];
  /** Reference evapotranspiration outdoors, mm/d. */
  readonly et0: readonly number[];
  /** Rain, mm/d. */
  readonly rain: readonly number[];
}

/**
 * Three years to begin with. INVENTED: no station is described; they have the course of a year of such places, and are to
 * be replaced by one's own. Files that are written of them say so.
 */
export const climateYears: Readonly<Record<Exclude<ClimateKind, 'own'>, ClimateYear>> = {
  warm: {
    water: [24, 24, 25, 26, 27, 28, 28, 28, 27, 26, 25, 24],
    et0: [3.5, 3.9, 4.4, 4.8, 5, 4.9, 4.8, 4.8, 4.5, 4.1, 3.6, 3.3],
    rain: [1.5, 1.5, 2, 3, 5, 7, 7, 7, 6, 5, 3, 2],
  },
  temperate: {
    water: [12, 12, 13, 16, 19, 22, 24, 24, 21, 18, 15, 13],
    et0: [0.5, 0.9, 1.6, 2.6, 3.5, 4.1, 4.2, 3.6, 2.4, 1.3, 0.7, 0.4],
    rain: [2.2, 1.9, 1.9, 1.8, 2, 2.1, 2.2, 2.1, 2, 2.2, 2.4, 2.4],
  },
  dry: {
    water: [20, 20, 22, 24, 25, 26, 27, 27, 25, 23, 21, 20],
    et0: [2.5, 3.2, 4.6, 6, 7.4, 8.4, 8.5, 7.7, 6.3, 4.5, 3, 2.3],
    rain: [1.1, 1.1, 1, 0.7, 0.5, 0.3, 0.2, 0.2, 0.3, 0.5, 0.8, 1],
  },
};

/** Half a year later: the same climate in the south. */
const halfYearLater = (values: readonly number[]): readonly number[] => [
  ...values.slice(6),
  ...values.slice(0, 6),
];

/** The year that was answered: one's own months, or those of a climate in its hemisphere. */
export function climateOf(answers: Answers): ClimateYear {
  if (answers.climate === 'own') {
    return { water: answers['water-temperatures'], et0: answers.et0, rain: answers.rain };
  }
  const { water, et0, rain } = climateYears[answers.climate];
  if (answers.hemisphere === 'north') return { water, et0, rain };
  return { water: halfYearLater(water), et0: halfYearLater(et0), rain: halfYearLater(rain) };
}
