import { InputError } from '../base/faults.js';
import { nearest } from '../base/nearest.js';
import { unitOf } from '../processes/components.js';
/**
 * Checks that a saved state holds nothing that this model has never heard of: a component of a user's own that is not given
 * again would be lost.
 * @throws InputError with a fault for each
 */
export function checkSavedComponents({ saved }, components) {
    if (saved === undefined)
        return;
    const known = [...Object.keys(unitOf), ...components.map(({ id }) => id)];
    const unknown = new Set(saved.states.map(({ component }) => component).filter((id) => !known.includes(id)));
    const faults = [...unknown].map((id) => {
        const near = nearest(id, known);
        const expected = 'a component of the model, or of `components` when it is compiled';
        return {
            key: 'saved.states',
            problem: 'unknown component',
            got: id,
            ...(near ? { nearest: near } : { expected }),
        };
    });
    if (faults.length > 0)
        throw new InputError(faults);
}
//# sourceMappingURL=check-saved-components.js.map