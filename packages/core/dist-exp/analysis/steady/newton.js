import { LuDecomposition, Matrix } from 'ml-matrix';
const MOST_STEPS = 60;
/** A step this small against the state is the last. */
const SMALL = 1e-10;
/** A step may take a state this far towards zero. */
const TOWARDS_ZERO = 0.9;
/** A state below this share of what counts as one may go all the way: a population that dies out ends at 0. */
const AS_GOOD_AS_NONE = 1e-3;
/** Scales rows and columns to 1, solves, and scales back. Undefined where the matrix is singular to rounding. */
function solved(matrix, right) {
    const size = right.length;
    const rows = Array.from({ length: size }, (_, i) => 1 / Math.max(...matrix.getRow(i).map(Math.abs)));
    const scaled = matrix.clone().mulColumnVector(rows);
    const columns = Array.from({ length: size }, (_, j) => 1 / Math.max(...scaled.getColumn(j).map(Math.abs)));
    scaled.mulRowVector(columns);
    const lu = new LuDecomposition(scaled);
    const pivots = Array.from(lu.upperTriangularMatrix.diagonal(), Math.abs);
    if (!pivots.every((pivot) => pivot > 1e-15))
        return undefined;
    const answer = lu.solve(Matrix.columnVector(Array.from(right, (value, i) => value * rows[i])));
    return Float64Array.from(columns, (column, j) => column * answer.get(j, 0));
}
/**
 * Newton's method from a first guess. A step that would take an amount below zero is shortened; the search is
 * lost when steps grow, and found when a step is under 1e-10 of every state.
 */
export function newton(guess, equation) {
    const { free, mayBeNegative, scale } = equation;
    const y = Float64Array.from(guess);
    let before = Infinity;
    for (let steps = 1; steps <= MOST_STEPS; steps++) {
        const { residual, matrix } = equation.evaluate(y);
        if (!residual.every(Number.isFinite))
            return { kind: 'lost', reason: 'not-finite' };
        const step = solved(matrix, residual);
        if (step === undefined)
            return { kind: 'lost', reason: 'singular' };
        let share = 1;
        free.forEach((state, i) => {
            if (mayBeNegative(state) || step[i] <= 0 || y[state] <= AS_GOOD_AS_NONE * scale[state])
                return;
            share = Math.min(share, (TOWARDS_ZERO * y[state]) / step[i]);
        });
        const size = free.reduce((most, state, i) => Math.max(most, Math.abs(step[i]) / Math.max(scale[state], Math.abs(y[state]))), 0);
        if (!Number.isFinite(size))
            return { kind: 'lost', reason: 'not-finite' };
        // Far off, a step may be long; near by, one that is no shorter than the last shows that the way is lost.
        if (share === 1 && size > 2 * before && size > SMALL)
            return { kind: 'lost', reason: 'diverging' };
        before = share === 1 ? size : Infinity;
        free.forEach((state, i) => (y[state] -= share * step[i]));
        if (share === 1 && size <= SMALL)
            return { kind: 'found', y, steps, lastStep: size };
    }
    return { kind: 'lost', reason: 'too-many-steps' };
}
//# sourceMappingURL=newton.js.map