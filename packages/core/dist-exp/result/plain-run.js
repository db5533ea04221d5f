import { createParameters, parametersAt } from '../library/parameters.js';
import { compileChecked } from '../model/compile.js';
/** A run without its model, which holds functions; `openPlainRun` makes it a run again, on the other side. */
export function plainRun(run) {
    const { model, outcome, samples, postings, events, doses, ages, work, integrator, tolerance, state } = run;
    const own = createParameters(model.scenario.overrides);
    const numbers = Array.from(model.parameters.rows()).flatMap(({ id, value }) => own.has(id) && own.row(id).value !== value ? [[id, value]] : []);
    return {
        ...{ schema: 'leat-plain-run', scenario: model.scenario, numbers, used: model.parameters.used() },
        ...{ outcome, samples, postings, events, doses, ages, work, integrator, tolerance, state },
        extended: model.extension !== undefined,
    };
}
/**
 * The run that plain data were made of. Its scenario was checked when it ran, and is not checked again.
 * @param extension components and processes of the user's own, where there were any: functions are not carried
 * @throws RangeError where there were such and none are given
 */
export function openPlainRun(plain, extension) {
    if (plain.extended && extension === undefined)
        throw new RangeError('this run had components or processes of its own: give the extension again');
    const { scenario, numbers, used } = plain;
    const { outcome, samples, postings, events, doses, ages, work, integrator, tolerance, state } = plain;
    const parameters = parametersAt(new Map(numbers), createParameters(scenario.overrides));
    const model = compileChecked(scenario, parameters, {
        closureDraws: 0,
        ...(extension && { extension }),
    });
    for (const id of used)
        model.parameters.value(id);
    return { model, outcome, samples, postings, events, doses, ages, work, integrator, tolerance, state };
}
//# sourceMappingURL=plain-run.js.map