// Reads numbers as: scenario built in code
import { monthOf } from '../base/calendar.js';
import { carbonFromPh } from '../chemistry/acid-base.js';
import { oxygenSaturation } from '../chemistry/gases.js';
import { openIonicStrength } from '../chemistry/ions.js';
import { createParameters } from '../library/parameters.js';
import { valueInMonth } from './value-on.js';
const daily = (value) => (typeof value === 'number' ? { kind: 'constant', value } : value);
/**
 * Water as it is held, from what a test kit reads: its inorganic carbon follows from pH and alkalinity, and it holds as
 * much oxygen as air at the sea, unless said. Nitrogen, solids and chloride are 0 unless said, calcium goes with
 * alkalinity.
 * @param temperature degC
 * @param parameters the numbers of the tables; absent: ours
 */
export function startWater({ pH, alkalinity, ...given }, temperature, parameters = createParameters()) {
    const none = { tan: 0, nitrite: 0, nitrate: 0, solids: 0, chloride: 0 };
    const calcium = given.calcium ?? alkalinity * parameters.value('water.calcium-share');
    const rest = { ...none, ...given, calcium };
    const ionic = openIonicStrength(parameters)({ ...rest, alkalinity });
    return {
        ...rest,
        alkalinity,
        carbon: carbonFromPh(parameters, alkalinity, pH, rest.tan, temperature, ionic),
        oxygen: given.oxygen ?? oxygenSaturation(parameters, temperature),
    };
}
function startOf(given, startDate, parameters) {
    const { name, volume, filled = volume, water, temperature, aob = 0, nob = 0, settled = 0, grownAt } = given;
    return {
        ...{ vessel: name, volume: filled, aob, nob, settled },
        water: startWater(water, valueInMonth(daily(temperature), monthOf(startDate, 0), 0), parameters),
        ...(grownAt !== undefined && { grownAt }),
    };
}
function vesselOf(given) {
    const { name, volume, temperature, airShare, drain } = given;
    const { kind = 'vessel', surface = 0, floor = 0, open = 0, covered = 0 } = given;
    const { aeration = 0, capture = 0, leak = 0, exchange = 0 } = given;
    return {
        ...{ name, kind, volume, surface, floor, open, covered, aeration, capture, leak, exchange },
        temperature: daily(temperature),
        ...(airShare !== undefined && { airShare }),
        ...(drain !== undefined && { drain }),
    };
}
function feedOf(feed, parameters) {
    if (typeof feed !== 'string')
        return feed;
    const id = `feed.${feed}.protein`;
    // A feed that there is not is refused with the others, by name.
    return { name: feed, protein: parameters.has(id) ? parameters.value(id) : 0 };
}
/**
 * A whole scenario from what cannot be left out: numbers in place of daily values, water by pH and alkalinity, feeds by
 * name. Nothing is checked here: `compileModel` does, with every fault at its path.
 */
export function buildScenario({ vessels, cohorts = [], plantings = [], ...given }) {
    const parameters = createParameters(given.overrides);
    const { et0 = 0, air, startDate = '2026-01-01', ...rest } = given;
    return {
        ...{ title: 'a system', note: '', every: 1, startDate, seed: 1 },
        ...{ waters: [], pumps: [], flows: [], actions: [], rules: [], overrides: [] },
        reservoir: vessels.at(-1)?.name ?? '',
        ...rest,
        et0: daily(et0),
        ...(air !== undefined && { air: daily(air) }),
        vessels: vessels.map(vesselOf),
        start: vessels.map((vessel) => startOf(vessel, startDate, parameters)),
        cohorts: cohorts.map(({ ration, feed, ...cohort }) => ({
            ...cohort,
            ration: typeof ration === 'number' ? { kind: 'share', perDay: ration } : ration,
            feed: feedOf(feed, parameters),
        })),
        plantings: plantings.map((planting) => ({
            ...{ batches: 1, after: 'replant', start: 'new', age: 0 },
            ...planting,
        })),
    };
}
//# sourceMappingURL=build-scenario.js.map