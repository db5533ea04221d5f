import { limitFrom } from './limit-check.js';
/** left/(1+10^(pivot-pH)) + right/(1+10^(pH-pivot)): how the criteria fall as pH rises. */
function byAcidity(pH, pivot, left, right) {
    return left / (1 + 10 ** (pivot - pH)) + right / (1 + 10 ** (pH - pivot));
}
/** How the criterion of a kind falls as pH rises, with the numbers of `epa.<kind>.*`. */
function acidityFactor(values, kind) {
    const [factor, pivot, left, right] = ['factor', 'pivot', 'left', 'right'].map((name) => values.value(`epa.${kind}.${name}`));
    return (pH) => factor * byAcidity(pH, pivot, left, right);
}
/** As `acuteCriterion`, for many waters: the numbers are looked up once. */
function openAcuteCriterion(values, trout) {
    const term = (name) => values.value(`epa.acute.${name}`);
    const [mussel, slope, reference] = [term('mussel'), term('slope'), term('reference')];
    const shapeAt = acidityFactor(values, 'acute');
    const warmthAt = (temperature) => mussel * 10 ** (slope * (reference - temperature));
    if (!trout) {
        const cap = term('cap');
        return (pH, temperature) => shapeAt(pH) * Math.min(cap, warmthAt(temperature));
    }
    const [pivot, left, right] = [term('pivot'), term('trout-left'), term('trout-right')];
    return (pH, temperature) => Math.min(byAcidity(pH, pivot, left, right), shapeAt(pH) * warmthAt(temperature));
}
/** As `chronicCriterion`, for many waters: the numbers are looked up once. */
function openChronicCriterion(values) {
    const term = (name) => values.value(`epa.chronic.${name}`);
    const [reference, floor, mussel, slope] = ['reference', 'floor', 'mussel', 'slope'].map(term);
    const shapeAt = acidityFactor(values, 'chronic');
    return (pH, temperature) => {
        const warmth = reference - Math.max(temperature, floor);
        return shapeAt(pH) * mussel * 10 ** (slope * warmth);
    };
}
/**
 * Acute criterion (CMC, one-hour mean), g TAN-N m-3: US EPA 2013, EPA-822-R-13-001.
 * @param trout whether salmon and trout of the genus Oncorhynchus are present
 */
export function acuteCriterion(values, pH, temperature, trout) {
    return openAcuteCriterion(values, trout)(pH, temperature);
}
/** Chronic criterion (CCC, 30-day mean, mussels present), g TAN-N m-3: US EPA 2013, EPA-822-R-13-001. */
export function chronicCriterion(values, pH, temperature) {
    return openChronicCriterion(values)(pH, temperature);
}
/** Salmon and trout that the acute criterion has a value of its own for. */
const oncorhynchus = ['rainbow-trout'];
const always = () => true;
/** Checks of the water of one vessel, as total ammonia over the criterion at its pH and temperature. */
function checksAt(reader, vessel) {
    const { parameters } = reader;
    const trout = reader.run.model.scenario.cohorts.some(({ species }) => oncorhynchus.includes(species));
    const tan = reader.values(`tan@${vessel}`);
    const pH = reader.values(`pH@${vessel}`);
    const temperature = reader.values(`temperature@${vessel}`);
    const acuteAt = openAcuteCriterion(parameters, trout);
    const chronicAt = openChronicCriterion(parameters);
    const acute = tan.map((each, i) => each / acuteAt(pH[i], temperature[i]));
    const chronic = tan.map((each, i) => each / chronicAt(pH[i], temperature[i]));
    const criterion = (kind, averaging, quantity) => ({
        ...limitFrom(parameters, {
            id: `epa.${kind}.factor`,
            averaging,
            quantity,
            unit: '1',
            direction: 'above',
            harm: 'release',
            whom: 'wild life',
        }),
        value: 1,
    });
    const peak = {
        ...criterion('chronic', 'epa.chronic.peak-averaging', 'ammonia-4-day-ratio'),
        value: parameters.value('epa.chronic.peak-factor'),
    };
    const check = (limit, values) => ({
        limit,
        place: vessel,
        values,
        matters: always,
    });
    return [
        check(criterion('acute', 'epa.acute.averaging', 'ammonia-acute-ratio'), acute),
        check(criterion('chronic', 'epa.chronic.averaging', 'ammonia-chronic-ratio'), chronic),
        check(peak, chronic),
    ];
}
/**
 * The criteria of US EPA 2013 for ammonia, for the water that would be let out: the reservoir and every
 * vessel that discharges. They protect wild life in the water that receives it, before any dilution.
 */
export function limitsForRelease(reader) {
    const { vessels, reservoir } = reader.run.model.scenario;
    return vessels
        .filter(({ name, exchange, leak }) => name === reservoir || exchange > 0 || leak > 0)
        .flatMap(({ name }) => checksAt(reader, name));
}
//# sourceMappingURL=limits-for-release.js.map