import { groupProducts, SumsOfProducts } from './sums-of-products.js';
/** Finds the places of J once and makes the linear solver for them. */
export function stepMatrix(system, makeSolver) {
    const solver = makeSolver(jacobianPattern(system));
    const places = [];
    const coefficients = [];
    const partials = [];
    eachTerm(system, (row, column, partial, coefficient) => {
        places.push(solver.place(row, column));
        coefficients.push(coefficient);
        partials.push(partial);
    });
    const sums = groupProducts(places, coefficients, partials, solver.values.length);
    const jacobian = new SumsOfProducts(sums, 'negate');
    const diagonal = Int32Array.from({ length: system.states }, (_, i) => solver.place(i, i));
    const minusJ = new Float64Array(solver.values.length);
    return {
        solver,
        assemble(dr) {
            jacobian.apply(system.stoichiometry.value, dr, minusJ);
        },
        factor(hGamma) {
            const { values } = solver;
            const inverse = 1 / hGamma;
            values.set(minusJ);
            for (let i = 0; i < diagonal.length; i++)
                values[diagonal[i]] += inverse;
            return solver.factor();
        },
    };
}
function jacobianPattern(system) {
    const rows = Array.from({ length: system.states }, () => new Set());
    eachTerm(system, (row, column) => rows[row].add(column));
    const start = new Int32Array(system.states + 1);
    rows.forEach((row, i) => (start[i + 1] = start[i] + row.size));
    return { start, column: Int32Array.from(rows.flatMap((row) => [...row])) };
}
function eachTerm(system, 
/** Coefficient and partial by their indices in the values of stoichiometry and dependence. */
visit) {
    const { stoichiometry, dependence } = system;
    for (let k = 0; k < system.rates; k++) {
        for (let p = dependence.start[k]; p < dependence.start[k + 1]; p++) {
            for (let s = stoichiometry.start[k]; s < stoichiometry.start[k + 1]; s++) {
                if (stoichiometry.value[s] === 0)
                    continue;
                visit(stoichiometry.column[s], dependence.column[p], p, s);
            }
        }
    }
}
//# sourceMappingURL=jacobian.js.map