/**
 * What it means to pass a limit, the worst first: `domain` the laws of the model were measured on this side of it alone, so
 * that what follows is no forecast; `lethal` fish die of it within days, `harmful` it hurts them,
 * `uncomfortable` they eat and grow less or are ill at ease; `crop` advice for a crop, `design` a guide of design,
 * `release` a criterion for water that is let out.
 */
export const harms = ['domain', 'lethal', 'harmful', 'uncomfortable', 'crop', 'design', 'release'];
/** A reader of a run and all its series. */
export function limitReader(run, all) {
    const series = new Map(all.map((each) => [each.name, each]));
    return {
        run,
        parameters: run.model.parameters,
        values(name) {
            const found = series.get(name);
            if (found === undefined)
                throw new RangeError(`no series ${name}`);
            return found.values;
        },
    };
}
/** A limit from a row of the tables, with the averaging time of another (absent: none). */
export function limitFrom(parameters, what) {
    const { source, page, mark } = parameters.row(what.id);
    return {
        ...what,
        value: parameters.value(what.id),
        averaging: what.averaging === undefined ? 0 : parameters.value(what.averaging),
        source,
        page,
        mark,
    };
}
//# sourceMappingURL=limit-check.js.map