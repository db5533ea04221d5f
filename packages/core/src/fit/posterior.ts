import { EigenvalueDecomposition, inverse, Matrix } from 'ml-matrix';

/** Curvature of the losses over standard deviates, the priors' included. */
export function informationOf(jacobian: Matrix, curvature: ArrayLike<number>): Matrix {
  const information = Matrix.eye(jacobian.columns);
  for (let i = 0; i < jacobian.rows; i++) {
    for (let j = 0; j < jacobian.columns; j++) {
      for (let k = 0; k < jacobian.columns; k++) {
        information.set(j, k, information.get(j, k) + curvature[i] * jacobian.get(i, j) * jacobian.get(i, k));
      }
    }
  }
  return information;
}

/** Covariance of the deviates: the inverse of the information, whose eigenvalues are never below 1. */
export function covarianceOf(information: Matrix): Matrix {
  return inverse(information);
}

/** Correlations of a covariance. */
export function correlationsOf(covariance: Matrix): number[][] {
  const size = covariance.rows;
  return Array.from({ length: size }, (_, j) =>
    Array.from(
      { length: size },
      (__, k) => covariance.get(j, k) / Math.sqrt(covariance.get(j, j) * covariance.get(k, k)),
    ),
  );
}

/** A root of a covariance: R with R Rᵀ = C, to draw with. */
export function rootOf(covariance: Matrix): Matrix {
  const { realEigenvalues, eigenvectorMatrix } = new EigenvalueDecomposition(covariance, {
    assumeSymmetric: true,
  });
  return eigenvectorMatrix.mmul(Matrix.diag(realEigenvalues.map((value) => Math.sqrt(Math.max(value, 0)))));
}
