import { unitOf, waterComponents } from '../processes/components.js';
import { suspendedNames, vesselSources } from './series.js';
const statesOf = (model, component, within) => model.layout.states.flatMap((state, i) => state.component === component && within(state.vessel) ? [i] : []);
/** Water components of some vessels: as a concentration (with the whole beside it) and as an amount. */
function inWater(run, place, vessels, wholes) {
    const { model } = run;
    const units = new Map(vesselSources(run).map(({ name, unit }) => [name, unit]));
    const both = (named, components) => {
        const states = components.flatMap((each) => statesOf(model, each, (vessel) => vessels.includes(vessel)));
        const amount = { kind: 'states', states };
        const unit = unitOf[components[0]];
        const whole = wholes.find(({ name }) => name === `${named}@system`);
        return [
            {
                name: `${named}@${place}`,
                unit: units.get(`${named}@${model.layout.vessels[vessels[0]]}`) ?? unit,
                amount,
                per: { kind: 'water', vessels },
                ...(whole && { whole }),
            },
            { name: `${named}-amount@${place}`, unit, amount },
        ];
    };
    return waterComponents.flatMap((each) => [
        ...(each === 'solids' ? both('solids', ['solids', 'refractory']) : []),
        ...both(suspendedNames[each] ?? each, [each]),
    ]);
}
/** Water and what stands in some vessels: volume, biofilm (per surface and whole), settled solids, lime. */
function inVessels(model, place, vessels) {
    const value = vessels.reduce((total, vessel) => total + model.scenario.vessels[vessel].surface, 0);
    const per = { kind: 'size', name: `surface of ${place}`, value };
    const settled = (name, components) => {
        const states = components.flatMap((each) => statesOf(model, each, (vessel) => vessels.includes(vessel)));
        const amount = { kind: 'states', states };
        return states.length === 0 ? [] : [{ name: `${name}@${place}`, unit: unitOf[components[0]], amount }];
    };
    const held = (component) => {
        const states = statesOf(model, component, (vessel) => vessels.includes(vessel));
        if (states.length === 0)
            return [];
        const amount = { kind: 'states', states };
        const unit = unitOf[component];
        return [
            { name: `${component}@${place}`, unit: `${unit}/m2`, amount, per },
            { name: `${component}-amount@${place}`, unit, amount },
        ];
    };
    return [
        { name: `volume@${place}`, unit: 'm3', amount: { kind: 'water', vessels } },
        ...held('aob'),
        ...held('nob'),
        ...settled('settled', ['settled', 'settled-refractory']),
        ...settled('degradable-settled', ['settled']),
        ...settled('refractory-settled', ['settled-refractory']),
        ...settled('calcite', ['calcite']),
    ];
}
/** Components of a user's own in some vessels: in water per volume and as an amount, elsewhere as an amount. */
function ownQuantities({ layout }, place, vessels, wholes = []) {
    return layout.own.flatMap(({ component, states }) => {
        const { id, unit } = component;
        const there = vessels.map((vessel) => states[vessel]).filter((state) => state >= 0);
        if (there.length === 0)
            return [];
        const amount = { kind: 'states', states: there };
        const name = `${id}@${place}`;
        if (component.place !== 'water')
            return [{ name, unit, amount }];
        const whole = wholes.find((each) => each.name === `${id}@system`);
        return [
            { name, unit: `${unit}/m3`, amount, per: { kind: 'water', vessels }, ...(whole && { whole }) },
            { name: `${id}-amount@${place}`, unit, amount },
        ];
    });
}
/** Fish of some cohorts, if there are any: mass, number, mean mass. */
function fishQuantities(model, place, cohorts) {
    if (cohorts.length === 0)
        return [];
    const { fish } = model.layout;
    const mass = { kind: 'states', states: cohorts.map((cohort) => fish[cohort].mass) };
    const fat = { kind: 'states', states: cohorts.map((cohort) => fish[cohort].fat) };
    const number = { kind: 'states', states: cohorts.map((cohort) => fish[cohort].number) };
    return [
        { name: `fish-mass@${place}`, unit: 'g', amount: mass },
        { name: `fish-number@${place}`, unit: 'fish', amount: number },
        { name: `fish-mean-mass@${place}`, unit: 'g', amount: mass, per: number },
        { name: `fish-fat@${place}`, unit: 'g COD', amount: fat },
    ];
}
/** Standing crop of some plantings, if there are any: dry mass and nitrogen. */
function cropQuantities(model, place, plantings) {
    if (plantings.length === 0)
        return [];
    const batches = model.layout.batches.filter(({ planting }) => plantings.includes(planting));
    const states = (which) => ({
        kind: 'states',
        states: batches.map((batch) => batch[which]).filter((state) => state >= 0),
    });
    const bears = batches.some(({ fruit }) => fruit >= 0);
    return [
        { name: `crop-mass@${place}`, unit: 'g dry', amount: states('mass') },
        { name: `crop-nitrogen@${place}`, unit: 'g N', amount: states('nitrogen') },
        ...(bears ? [{ name: `fruit-mass@${place}`, unit: 'g dry', amount: states('fruit') }] : []),
    ];
}
/**
 * Every quantity of a run that is a sum of what processes, flows and actions did. Names and units are
 * those of the series; beside them `-amount` for what a series gives per volume or surface, and
 * `@system` for all vessels, cohorts or plantings together (a concentration: the mean of all water).
 */
export function quantitiesOf(run) {
    const { model } = run;
    const { layout, scenario } = model;
    const all = [...layout.vessels.keys()];
    const whole = inWater(run, 'system', all, []);
    const wholeOwn = ownQuantities(model, 'system', all);
    return [
        ...layout.vessels.flatMap((name, vessel) => [
            ...inWater(run, name, [vessel], whole),
            ...inVessels(model, name, [vessel]),
            ...ownQuantities(model, name, [vessel], wholeOwn),
        ]),
        ...scenario.cohorts.flatMap(({ name }, cohort) => fishQuantities(model, name, [cohort])),
        ...scenario.plantings.flatMap(({ name }, planting) => cropQuantities(model, name, [planting])),
        ...whole,
        ...inVessels(model, 'system', all),
        ...wholeOwn,
        ...fishQuantities(model, 'system', [...scenario.cohorts.keys()]),
        ...cropQuantities(model, 'system', [...scenario.plantings.keys()]),
    ];
}
//# sourceMappingURL=why-quantities.js.map