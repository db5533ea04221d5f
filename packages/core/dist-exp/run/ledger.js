import { waterComponents } from '../processes/components.js';
import { ownInWater, waterState } from '../model/layout.js';
/** Concentrations of a source water in the order of the water components. */
export function concentrationsOf(water) {
    return waterComponents.map((component) => {
        switch (component) {
            case 'solids':
            case 'refractory':
            case 'dissolved':
            case 'organic-nitrogen':
                return 0;
            default:
                return water[component];
        }
    });
}
/** Opens the book over the states of a run; what it books is added to the record. */
export function openLedger(model, y, { postings, events }) {
    const { states, vessels } = model.layout;
    const own = ownInWater(model.layout);
    const book = (account, component, vessel, amount, state) => {
        if (amount !== 0)
            postings.push({ account, component, vessel: vessels[vessel], amount, state });
    };
    const post = (account, state, amount) => {
        y[state] += amount;
        book(account, states[state].component, states[state].vessel, amount, state);
    };
    return {
        post,
        postWater: (account, vessel, amount) => {
            book(account, 'water', vessel, amount, -1);
        },
        say: (time, kind, place, text, short) => {
            events.push({ time, kind, place, text, ...(short && { short }) });
        },
        remove: (account, vessel, share) => {
            for (const component of waterComponents) {
                const state = waterState(vessel, component);
                post(account, state, -share * y[state]);
            }
            for (const { states } of own)
                post(account, states[vessel], -share * y[states[vessel]]);
        },
        bring: (water, vessel, volume) => {
            concentrationsOf(water).forEach((concentration, c) => {
                post('source water', waterState(vessel, waterComponents[c]), concentration * volume);
            });
        },
    };
}
//# sourceMappingURL=ledger.js.map