/**
 * The contract between a model and an integrator. Nothing here knows what is modelled: there are
 * states y, rates r, a constant sparse stoichiometry S, and
 *
 *     y' = Sᵀ r(t, y)        x' = r(t, y)
 *
 * where x, the extents, is what each rate has amounted to since the start. Because J = Sᵀ ∂r/∂y is
 * built from the same S, every linear invariant of S (nitrogen, charge ...) survives each step.
 */
/** Nothing remembered yet. */
export function noMemory() {
    return { natural: undefined, opening: Infinity, refusedBefore: false };
}
/** Work counts at zero. */
export function noWork() {
    return { steps: 0, rejected: 0, evaluations: 0, jacobians: 0, factorisations: 0, solves: 0 };
}
//# sourceMappingURL=contract.js.map