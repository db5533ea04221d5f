import type { Condition, Measure, SweepPoint } from '@leat/core';
import { type Display, plainDisplay } from '../display/display.js';
import { askedTold } from './asked.js';

/** One quantity of a sweep with its values: where it stands in the file, in which unit, and between which ends. */
export interface SweptQuantity {
  readonly varied: {
    readonly path: string;
    readonly unit: string;
    readonly from: number;
    readonly to: number;
  };
  readonly values: readonly number[];
}

/** A sweep that was run, as far as it is told and drawn. */
export interface Sweep {
  readonly title: string;
  /** One or two. */
  readonly lists: readonly SweptQuantity[];
  readonly measures: readonly Pick<Measure, 'text' | 'unit'>[];
  readonly conditions: readonly Pick<Condition, 'text' | 'unit'>[];
  /** In the order of the grid, the second quantity running fastest. */
  readonly points: readonly (SweepPoint & { readonly values: readonly number[] })[];
}

/** One thing that was asked of every point of a sweep. */
export interface AskedInSweep {
  readonly text: string;
  readonly of: (point: SweepPoint) => number;
}

/** Everything that was asked, in the units that are shown: the measures, then the margins of the conditions. */
export function askedInSweep(
  { measures, conditions }: Pick<Sweep, 'measures' | 'conditions'>,
  display: Display = plainDisplay,
): readonly AskedInSweep[] {
  const words = display.words.text.sweep;
  return [
    ...measures.map((measure, i) => {
      const { unit, value } = askedTold(measure, display);
      const { text } = measure;
      return {
        text: unit === '' ? text : `${text}, ${unit}`,
        of: (point: SweepPoint) => value(point.measures[i]),
      };
    }),
    ...conditions.map((condition, i) => {
      const { unit, difference } = askedTold(condition, display);
      return {
        text: words.margin(condition.text, unit === '' ? words.shares : unit),
        of: (point: SweepPoint) => difference(point.margins[i]),
      };
    }),
  ];
}
