import { Matrix } from 'ml-matrix';

type Predict = (at: Float64Array) => Float64Array | undefined;

/**
 * Derivatives of predictions by differences: a row a prediction, a column a number. Where the model fails on one side
 * the other is taken.
 *
 * @param both whether differences are central (twice the work, the error of the square of the step)
 * @throws RangeError where the model fails on both sides of a number
 */
export function differences(
  predict: Predict,
  at: Float64Array,
  predicted: Float64Array,
  step: (j: number) => number,
  both: boolean,
): Matrix {
  const jacobian = Matrix.zeros(predicted.length, at.length);
  at.forEach((_, j) => {
    const moved = (by: number): Float64Array | undefined =>
      predict(at.map((each, k) => (k === j ? each + by : each)));
    const h = step(j);
    const up = moved(h);
    const down = both || up === undefined ? moved(-h) : undefined;
    if (up === undefined && down === undefined)
      throw new RangeError(`no prediction on either side of number ${j}`);
    const width = (up === undefined ? 0 : h) + (down === undefined ? 0 : h);
    for (let i = 0; i < predicted.length; i++) {
      jacobian.set(i, j, ((up ?? predicted)[i] - (down ?? predicted)[i]) / width);
    }
  });
  return jacobian;
}
