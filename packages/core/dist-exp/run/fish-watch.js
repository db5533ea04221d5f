import { hazardsIn, rowsOfDeaths } from '../model/hazards.js';
/** Fewer than half a fish: none is left. */
const NONE = 0.5;
/** Books what is left of a cohort, less than half a fish, as dead: taken out, or to those that lie in the water. */
function clear({ model, state, ledger }, cohort) {
    const { mass, number, fat, dead, deadFat } = model.layout.fish[cohort];
    for (const [from, to] of [
        [number, -1],
        [mass, dead],
        [fat, deadFat],
    ]) {
        const amount = state.y[from];
        ledger.post('dead fish', from, -amount);
        if (to >= 0)
            ledger.post('dead fish', to, amount);
    }
}
/**
 * Opens the watch over the fish: at each day boundary it is said of a cohort whose last fish has died since the boundary
 * before, with what killed most at that moment, and the part of a fish that is left is booked as dead. Fish that were taken
 * out are no deaths. Answers whether anything was booked.
 */
export function openFishWatch(parts) {
    const { model, state, ledger } = parts;
    const { fish } = model.layout;
    const rows = rowsOfDeaths(model);
    const before = fish.map(({ number }, cohort) => ({ alive: state.y[number], died: state.x[rows[cohort]] }));
    return (time) => {
        let cleared = false;
        fish.forEach(({ number }, cohort) => {
            const alive = state.y[number];
            const died = state.x[rows[cohort]];
            const was = before[cohort];
            const deaths = died - was.died;
            if (was.alive >= NONE && alive < NONE && deaths >= (was.alive - alive) / 2) {
                const [{ cause }] = hazardsIn(model, cohort, {
                    y: state.y,
                    volume: state.water.volume,
                    temperature: state.day.temperature,
                    ionic: state.day.ionic,
                });
                const { name } = model.scenario.cohorts[cohort];
                ledger.say(time, 'fish-death', name, `all fish of ${name} are dead; leading cause: ${cause}`);
                clear(parts, cohort);
                cleared = true;
            }
            before[cohort] = { alive: state.y[number], died };
        });
        return cleared;
    };
}
//# sourceMappingURL=fish-watch.js.map