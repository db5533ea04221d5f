import { describeReading, trueValue } from './test-kit.js';
/**
 * Looks at each doser at a day boundary: one that runs, whose water is a whole band or more beyond what it holds, gives
 * its most and holds no longer. That is told once, until it holds again.
 */
export function watchDosers({ model, state, ledger }, time) {
    const { dosers = [] } = model.scenario;
    if (dosers.length === 0)
        return;
    const waters = {
        model,
        y: state.y,
        volume: state.water.volume,
        temperature: state.day.temperature,
        ionic: state.day.ionic,
    };
    dosers.forEach(({ hold, vessel, probe = vessel, setPoint, band, sign, most }, index) => {
        const value = trueValue(hold, waters, model.layout.vessels.indexOf(probe));
        const beyond = state.operation.dosing[index] && sign * (setPoint - value) >= band;
        if (beyond && !state.spent[index]) {
            const there = probe === vessel ? '' : ` in ${probe}`;
            const shown = `${hold}${there} is ${describeReading(hold, value)}`;
            ledger.say(time, 'control', vessel, `${shown}: holds no longer, at its most (${most} g/d)`);
        }
        state.spent[index] = beyond;
    });
}
//# sourceMappingURL=dosers.js.map