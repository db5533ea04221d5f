import { log } from '../../base/elementary.js';
import type { Matrix } from 'ml-matrix';
import { EigenvalueDecomposition, inverse } from 'ml-matrix';
import type { Component } from '../../processes/components.js';
import type { Layout } from '../../model/layout.js';

/** A way in which a state dies away, and what takes part in it. */
export interface Mode {
  /** Time in which a deviation falls to 1/e, d; negative where it grows. */
  readonly time: number;
  /** Time in which it falls to a twentieth: 95 % of the way back, d. */
  readonly recovery: number;
  /** Period of the swing that goes with it, d, where it swings. */
  readonly swing?: number;
  /**
   * What takes part, the most first: component, place (`everywhere` where no single one leads), `share` of the whole,
   * 0..1.
   */
  readonly parts: readonly {
    readonly component: Component;
    readonly place: string;
    readonly share: number;
  }[];
}

/** Parts below this share are not reported. */
const LEAST_PART = 0.1;
/** A place that has this much of a component's part is named. */
const LEADS = 0.8;

/** Scales a matrix by its states, so that its eigenvectors are of like size. */
function balanced(jacobian: Matrix, scale: readonly number[]): Matrix {
  return jacobian
    .clone()
    .mulRowVector([...scale])
    .mulColumnVector(scale.map((value) => 1 / value));
}

function partsOf(weights: readonly number[], states: Layout['states']): Mode['parts'] {
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  const byComponent = new Map<Component, { place: string; weight: number }[]>();
  weights.forEach((weight, i) => {
    const { component, place } = states[i];
    byComponent.set(component, [...(byComponent.get(component) ?? []), { place, weight }]);
  });
  return [...byComponent]
    .map(([component, places]) => {
      const share = places.reduce((sum, { weight }) => sum + weight, 0) / total;
      const most = places.reduce((best, each) => (each.weight > best.weight ? each : best));
      const place = most.weight >= LEADS * share * total ? most.place : 'everywhere';
      return { component, place, share };
    })
    .filter(({ share }) => share >= LEAST_PART)
    .sort((a, b) => b.share - a.share);
}

/**
 * Time constants of a linear system from its eigenvalues, the slowest first. What takes part in a mode is found
 * by participation factors, |right eigenvector x left eigenvector|, which do not depend on units.
 * @param jacobian of the states given, per day
 * @param scale what counts as one of each
 */
export function modesOf(
  jacobian: Matrix,
  scale: readonly number[],
  states: Layout['states'],
): readonly Mode[] {
  const size = scale.length;
  if (size === 0) return [];
  const decomposition = new EigenvalueDecomposition(balanced(jacobian, scale));
  const right = decomposition.eigenvectorMatrix;
  const left = inverse(right);
  const real = decomposition.realEigenvalues;
  const imaginary = decomposition.imaginaryEigenvalues;
  const modes: Mode[] = [];
  for (let j = 0; j < size; j++) {
    // Of a pair that swings, the two columns are the real and the imaginary part of one vector.
    const columns = imaginary[j] === 0 ? [j] : [j, j + 1];
    const weights = states.map((_, i) =>
      columns.reduce((sum, c) => sum + Math.abs(right.get(i, c) * left.get(c, i)), 0),
    );
    const time = -1 / real[j];
    modes.push({
      time,
      recovery: log(20) * time,
      ...(imaginary[j] === 0 ? {} : { swing: (2 * Math.PI) / Math.abs(imaginary[j]) }),
      parts: partsOf(weights, states),
    });
    j += columns.length - 1;
  }
  // A mode that grows comes before one that dies slowly.
  return modes.sort((a, b) => 1 / a.time - 1 / b.time);
}
