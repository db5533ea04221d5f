const setting = { sets: true, spreads: false };
const act = { sets: false, spreads: false };
const repeatedAct = { sets: false, spreads: true };
/**
 * The kinds of action, in the order in which they are done at one instant: what leaves, then water and cleaning, then
 * what comes, then settings. What each does to a run stands in `run/actions.ts`, how each is written in
 * `scenario/sections`.
 */
export const actionKinds = {
    'lose-fish': act,
    'harvest-fish': act,
    grade: act,
    'harvest-crop': act,
    'leave-empty': act,
    'drain-solids': repeatedAct,
    clean: act,
    medicate: act,
    'change-water': repeatedAct,
    'cart-water': act,
    dose: repeatedAct,
    stock: act,
    plant: act,
    'source-water': setting,
    'top-up': setting,
    feed: setting,
    aeration: setting,
    control: setting,
    pump: setting,
};
/** The kinds of action in the order in which they are done at one instant; within a kind: the order of the file. */
export const actionOrder = Object.keys(actionKinds);
const place = new Map(actionOrder.map((kind, index) => [kind, index]));
/** Compares actions by the place of their kinds in `actionOrder`, for sorting. */
export function byKind(a, b) {
    return (place.get(a.kind) ?? 0) - (place.get(b.kind) ?? 0);
}
/** Whether an action leaves a setting behind. */
export function isSetting({ kind }) {
    return actionKinds[kind].sets;
}
/** Whether an action can be spread evenly over time. */
export function isSpreadable(action) {
    return actionKinds[action.kind].spreads;
}
//# sourceMappingURL=action-kinds.js.map