/**
 * Amounts below which accuracy is not asked for, before the factor of the relative tolerance:
 * usual concentrations (g, eq, mol m-3) in water, shares of the room on a surface, g on a floor, per batch and cohort.
 */
const scale = {
    tan: 1,
    nitrite: 1,
    nitrate: 1,
    solids: 1,
    refractory: 1,
    dissolved: 1,
    'organic-nitrogen': 1,
    alkalinity: 1,
    carbon: 1,
    oxygen: 10,
    chloride: 100,
    calcium: 1,
};
/** Absolute tolerance of each state at a relative tolerance. */
export function absoluteTolerances(model, relative) {
    const { scenario, layout, parameters } = model;
    const yields = parameters.value('aob.yield') + parameters.value('nob.yield');
    const own = new Map(layout.own.map(({ component }) => [component.id, component]));
    return Float64Array.from(layout.states, (state) => {
        const vessel = scenario.vessels[state.vessel];
        const ofUser = own.get(state.component);
        if (ofUser !== undefined)
            return relative * (ofUser.scale ?? 1) * (ofUser.place === 'water' ? vessel.volume : 1);
        const concentration = scale[state.component];
        if (concentration !== undefined)
            return relative * concentration * vessel.volume;
        switch (state.component) {
            case 'aob':
            case 'nob': {
                // A seed of a millionth of the room of a population is still resolved: start-up grows from it.
                const share = parameters.value(`${state.component}.yield`) / yields;
                return relative * 1e-4 * parameters.value('biofilm.capacity') * share * vessel.surface;
            }
            case 'heterotrophs':
                return relative * 1e-2 * parameters.value('heterotroph.cover') * vessel.surface;
            case 'settled':
            case 'settled-refractory':
            case 'calcite':
                return relative * vessel.volume;
            default:
                return relative;
        }
    });
}
//# sourceMappingURL=tolerances.js.map