// Reads numbers as: causes of death
import { causesOfDeath, hazardsOf } from '../processes/kernels/hazard.js';
import { anyConditions } from '../processes/process.js';
import { waterState } from './layout.js';
import { scopeTo } from './scope.js';
import { waterChemistry } from './water-chemistry.js';
/** What the fish of a cohort die of in their water at a moment, the worst first; nothing of what water without a pH would do. */
export function hazardsIn(model, cohort, waters) {
    const { vessel } = model.layout.fish[cohort];
    const values = scopeTo(model.parameters, { species: model.scenario.cohorts[cohort].species });
    const per = (component) => waters.y[waterState(vessel, component)] / waters.volume[vessel];
    const { ammonia, carbonDioxide } = waterChemistry(model.parameters, waters, vessel);
    const water = Float64Array.of(per('oxygen'), ammonia, per('nitrite'), per('chloride'), carbonDioxide);
    const at = { ...anyConditions, temperature: waters.temperature[vessel] };
    return hazardsOf(values, at, water)
        .map((perDay, index) => ({ cause: causesOfDeath[index], perDay }))
        .filter(({ perDay }) => Number.isFinite(perDay))
        .sort((a, b) => b.perDay - a.perDay);
}
/** Of each cohort the row of the model whose extent is the number of fish that have died. */
export function rowsOfDeaths({ layout, rows }) {
    return layout.fish.map(({ number }) => rows.findIndex(({ entries }) => entries.some(({ state, coefficient }) => state === number && coefficient < 0)));
}
//# sourceMappingURL=hazards.js.map