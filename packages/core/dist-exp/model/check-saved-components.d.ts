import type { Scenario } from '../scenario/scenario.js';
import type { OwnComponent } from './own.js';
/**
 * Checks that a saved state holds nothing that this model has never heard of: a component of a user's own that is not given
 * again would be lost.
 * @throws InputError with a fault for each
 */
export declare function checkSavedComponents({ saved }: Scenario, components: readonly OwnComponent[]): void;
//# sourceMappingURL=check-saved-components.d.ts.map