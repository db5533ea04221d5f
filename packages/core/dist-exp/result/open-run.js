import { integratorOf } from '../run/driver.js';
import { endStateOf } from '../run/saved.js';
import { Stepping } from '../run/stepping.js';
import { checkOneAction } from '../scenario/check-scenario.js';
import { lastValue } from './series.js';
/**
 * Opens a run of a model, at its start. Any number of runs of one model may be open at once.
 * @param options as for `simulate`
 */
export function openRun(model, options = {}) {
    const run = new Stepping(model, options, integratorOf(options));
    return {
        get day() {
            return run.day;
        },
        get outcome() {
            return run.outcome;
        },
        advance: (to) => run.advance(to),
        read: (name) => {
            const before = run.lastSample();
            return lastValue({ model, samples: [...(before === undefined ? [] : [before]), run.look()] }, name);
        },
        do: (action) => {
            checkOneAction(model.scenario, action, model.parameters);
            run.do(action);
        },
        state: () => endStateOf({ model, state: run.state() }),
        finish: () => run.finish(),
    };
}
//# sourceMappingURL=open-run.js.map