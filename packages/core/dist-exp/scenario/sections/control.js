// Reads numbers as: control in a file
import * as z from 'zod';
import { formatQuantity } from '../../base/units.js';
import { kindComplaint } from '../file/complaint.js';
import { nodeAt } from '../file/tree.js';
import { choice, positive, section, word } from '../file/values.js';
import { checkPairs, signOf } from '../checks/dosers.js';
import { most } from '../checks/ranges.js';
import { level as anyLevel, readLevel } from './level.js';
const level = (description) => anyLevel(description, ['75 mg/L as CaCO3', 6.8]);
const products = z
    .union([z.string(), z.array(z.string()).min(1)], {
    error: ({ input }) => kindComplaint(input, 'a product of the library, or a list of them'),
})
    .meta({
    description: 'what is dosed: products of the library that all bring base, or all acid; several are fed in equal masses',
    examples: ['potassium-hydroxide'],
});
/** One doser of `control`. */
export const controlSchema = section({
    hold: choice('what is held', ['pH', 'alkalinity']),
    in: word('the vessel into which is dosed'),
    probe: word('the vessel in which the probe stands, whose water is measured; default: the one into which is dosed').optional(),
    at: level('the value held: a base is fed below it, an acid above it; range: a pH from 0 to 14, or 0 or more'),
    with: products,
    band: level('how far beyond `at` the doser gives its most; nearer it gives less; range: more than 0; default: 0.1 pH, or 0.1 eq/m3').optional(),
    most: positive('mass-flow', 'most that the doser gives, of all its products together'),
}, 'a doser that holds pH or alkalinity');
/** Band where none is written: pH, or eq m-3. */
const usualBand = 0.1;
function readBand(reader, path, hold, written) {
    if (written === undefined) {
        const shown = hold === 'pH' ? usualBand : formatQuantity(usualBand, 'alkalinity');
        return reader.fallback(path, usualBand, shown);
    }
    const band = readLevel(reader, path, written, hold);
    if (band === undefined || band > 0)
        return band;
    reader.fault(path, 'must be more than zero', {
        expected: hold === 'pH' ? 'such as 0.1' : 'such as "0.1 meq/L"',
    });
    return undefined;
}
function readDoser(reader, path, vessels) {
    const given = reader.parse(controlSchema, path);
    if (given === undefined)
        return undefined;
    const { hold, in: vessel, probe, most: limit } = given;
    const dosed = reader.known(vessel, vessels, [...path, 'in'], 'vessel');
    const measured = probe === undefined || reader.known(probe, vessels, [...path, 'probe'], 'vessel');
    const known = dosed && measured;
    const setPoint = readLevel(reader, [...path, 'at'], given.at, hold);
    const band = readBand(reader, [...path, 'band'], hold, given.band);
    const written = given.with;
    const names = typeof written === 'string' ? [written] : written;
    const at = [...path, 'with'];
    const list = nodeAt(reader.tree, at)?.kind === 'list';
    const library = {
        products: reader.names('dose'),
        alkalinity: (product) => reader.parameters.value(`dose.${product}.alkalinity`),
    };
    const sign = signOf(reader, names, library, at, (index) => (list ? [...at, index] : at));
    if (!known || setPoint === undefined || band === undefined || sign === undefined)
        return undefined;
    const elsewhere = probe === undefined || probe === vessel ? {} : { probe };
    return { hold, vessel, ...elsewhere, setPoint, products: names, band, most: limit, sign };
}
/** Reads the section `control`: dosers that hold pH or alkalinity. */
export function readControl(reader, vessels) {
    const dosers = reader.listed('control', most.dosers, (path) => readDoser(reader, path, vessels));
    checkPairs(reader, dosers, ['control', 'at']);
    return dosers.filter((doser) => doser !== undefined);
}
//# sourceMappingURL=control.js.map