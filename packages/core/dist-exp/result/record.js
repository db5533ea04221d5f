import { contentHash } from '../base/content-hash.js';
/** Version of the library, the same as in its package.json. */
export const version = '0.1.0';
/**
 * Hash of what a scenario says, 64 hexadecimal digits: the same for two files that say the same in
 * other units or on other lines, another for any other number. Saved fits and ensembles carry it, so the form that is
 * hashed has names of its own: what a timed action does stands under `deed`.
 */
export function scenarioHash(scenario) {
    const actions = scenario.actions.map(({ at, action }) => ({ at, deed: action }));
    return contentHash({ ...scenario, actions });
}
/** The manifest of a run. Holds no time of day and no place on a disk. */
export function manifestOf(run) {
    return {
        version,
        scenario: scenarioHash(run.model.scenario),
        integrator: run.integrator,
        tolerance: run.tolerance,
        seed: run.model.scenario.rules.some(({ kit }) => kit.error) ? run.model.scenario.seed : null,
        given: [...new Set(run.model.scenario.overrides.map(({ id }) => id))].sort(),
    };
}
//# sourceMappingURL=record.js.map