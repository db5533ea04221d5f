// Reads numbers as: where lime may lie
import { sum } from '../base/sum.js';
import { batchName } from '../scenario/scenario.js';
import { unitOf, waterComponents, } from '../processes/components.js';
import { asOurs } from './own.js';
/** Those of them that go with the water. */
export function ownInWater({ own }) {
    return own.filter(({ component }) => component.place === 'water');
}
/** Unit in which a component is counted, ours or a user's own. */
export function unitIn({ own }, component) {
    return own.find(({ component: { id } }) => id === component)?.component.unit ?? unitOf[component];
}
/** Index of a water component of a vessel. */
export function waterState(vessel, component) {
    return vessel * waterComponents.length + waterComponents.indexOf(component);
}
/** Index of a component at a place: -1 where its vessel has none, undefined for what is held nowhere. */
export function stateOf(layout, place, component) {
    switch (component) {
        case 'aob':
            return layout.aob[place.vessel];
        case 'nob':
            return layout.nob[place.vessel];
        case 'acclimation':
            return layout.acclimation[place.vessel];
        case 'awake':
            return layout.awake[place.vessel];
        case 'heterotrophs':
            return layout.heterotrophs[place.vessel];
        case 'settled':
            return layout.settled[place.vessel];
        case 'settled-refractory':
            return layout.settledRefractory[place.vessel];
        case 'calcite':
            return layout.calcite[place.vessel];
        case 'fish-mass':
            return layout.fish[place.cohort].mass;
        case 'fish-number':
            return layout.fish[place.cohort].number;
        case 'fish-fat':
            return layout.fish[place.cohort].fat;
        case 'fish-dead':
            return layout.fish[place.cohort].dead;
        case 'fish-dead-fat':
            return layout.fish[place.cohort].deadFat;
        case 'crop-mass':
            return layout.batches[place.batch].mass;
        case 'crop-nitrogen':
            return layout.batches[place.batch].nitrogen;
        case 'fruit-mass':
            return layout.batches[place.batch].fruit;
        default: {
            const water = waterComponents.find((name) => name === component);
            if (water !== undefined)
                return waterState(place.vessel, water);
            return layout.own.find(({ component: { id } }) => id === component)?.states[place.vessel];
        }
    }
}
/** Share of the wetted surface of a system from which on a vessel gets lime scale of its own. */
const SCALES = 0.1;
/** Vessels that may hold lime: those given some, those dosed with a product that brings it, and those with much surface. */
function limedVessels({ vessels, actions, rules, dosers = [] }, parameters) {
    const brings = (product) => {
        const id = `dose.${product}.calcite`;
        return parameters.has(id) && parameters.value(id) > 0;
    };
    const done = [
        ...actions.map(({ action }) => action),
        ...rules.flatMap(({ doing, undoing }) => [...doing, ...undoing]),
    ];
    const dosed = [
        ...done.flatMap((action) => (action.kind === 'dose' && brings(action.product) ? [action.vessel] : [])),
        ...dosers.flatMap(({ vessel, products }) => (products.some(brings) ? [vessel] : [])),
    ];
    const whole = sum(vessels.map(({ surface }) => surface));
    const own = vessels.filter(({ lime, surface }) => lime !== undefined || surface > SCALES * whole);
    return new Set([...own.map(({ name }) => name), ...dosed]);
}
/** Whether a component of a user's own stands in a vessel. */
function stands({ place }, { name, surface, floor }) {
    if (place === 'water')
        return true;
    if (place === 'surface')
        return surface > 0;
    return place === 'floor' ? floor > 0 : place.includes(name);
}
/** Gives every state of a scenario its place in y, components of a user's own last. */
export function layOut(scenario, parameters, ownComponents = []) {
    const vessels = scenario.vessels.map((vessel) => vessel.name);
    const index = new Map(vessels.map((name, at) => [name, at]));
    const vesselOf = (name) => index.get(name) ?? -1;
    const states = [];
    const add = (component, place, vessel) => states.push({ component, place, vessel }) - 1;
    vessels.forEach((name, vessel) => waterComponents.forEach((component) => add(component, name, vessel)));
    const onSurface = (component) => scenario.vessels.map((vessel, index) => (vessel.surface > 0 ? add(component, vessel.name, index) : -1));
    const aob = onSurface('aob');
    const nob = onSurface('nob');
    const acclimation = onSurface('acclimation');
    const awake = onSurface('awake');
    const heterotrophs = onSurface('heterotrophs');
    const onFloor = (component) => scenario.vessels.map((vessel, index) => vessel.floor > 0 || vessel.capture > 0 ? add(component, vessel.name, index) : -1);
    const settled = onFloor('settled');
    const settledRefractory = onFloor('settled-refractory');
    const limed = limedVessels(scenario, parameters);
    const calcite = scenario.vessels.map(({ name }, index) => limed.has(name) ? add('calcite', name, index) : -1);
    const fish = scenario.cohorts.map((cohort) => {
        const vessel = vesselOf(cohort.vessel);
        const own = (component) => add(component, cohort.name, vessel);
        const left = (component) => (cohort.dead === 'left' ? own(component) : -1);
        return {
            mass: own('fish-mass'),
            number: own('fish-number'),
            fat: own('fish-fat'),
            dead: left('fish-dead'),
            deadFat: left('fish-dead-fat'),
            vessel,
        };
    });
    const batches = scenario.plantings.flatMap((planting, index) => Array.from({ length: planting.batches }, (_, batch) => {
        const vessel = vesselOf(planting.vessel);
        const name = batchName(planting.name, planting.batches, batch);
        return {
            name,
            planting: index,
            vessel,
            area: planting.area / planting.batches,
            mass: add('crop-mass', name, vessel),
            nitrogen: add('crop-nitrogen', name, vessel),
            fruit: planting.picks === undefined ? -1 : add('fruit-mass', name, vessel),
        };
    }));
    const own = ownComponents.map((component) => ({
        component,
        states: scenario.vessels.map((vessel, at) => stands(component, vessel) ? add(asOurs(component), vessel.name, at) : -1),
    }));
    return {
        ...{ states, vessels, aob, nob, acclimation, awake, heterotrophs },
        ...{ settled, settledRefractory, calcite, fish, batches, own },
    };
}
//# sourceMappingURL=layout.js.map