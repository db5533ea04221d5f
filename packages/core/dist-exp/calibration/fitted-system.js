import { valueAt } from './free-parameter.js';
import { withStart } from './start-water.js';
/** Values at standard deviates. */
export function fittedValuesAt(free, at) {
    return free.map(({ name, kind, unit, prior }, i) => ({ name, kind, unit, value: valueAt(prior, at[i]) }));
}
/** Values as `--set` takes them. */
export function settingsOf(values) {
    return values.flatMap(({ name, kind, unit, value }) => {
        if (kind === 'start')
            return [];
        return kind === 'number'
            ? [{ path: `parameters.${name}`, value: String(value) }]
            : [{ path: name, value: unit === '' ? String(value) : `${value} ${unit}` }];
    });
}
/** A scenario with fitted water at the start. */
export function withFittedStart(scenario, values) {
    const starts = values.filter(({ kind }) => kind === 'start');
    return starts.length === 0 ? scenario : withStart(scenario, starts);
}
/**
 * The scenario of a system at values. Reads the file anew only where a value goes into the reading: a path, or a number
 * of the tables that the file's defaults are made of.
 */
export function openScenarios(system, base, days) {
    const inReading = new Set(base.used);
    return (values) => {
        const settings = settingsOf(values);
        const again = values.some(({ kind, name }) => kind === 'path' || (kind === 'number' && inReading.has(name)));
        if (again)
            return withFittedStart(system.read(settings, days).scenario, values);
        const numbers = values.filter(({ kind }) => kind === 'number');
        const overrides = [
            ...base.scenario.overrides.filter(({ id }) => numbers.every(({ name }) => name !== id)),
            ...numbers.map(({ name, value }) => ({ id: name, value })),
        ];
        return withFittedStart({ ...base.scenario, overrides }, values);
    };
}
//# sourceMappingURL=fitted-system.js.map