import { doserRanges, levelRange, most } from './ranges.js';
/** Share of a distance that counts as rounding. */
const ROUNDING = 1e-9;
/**
 * 1 where all products of a doser bring base, -1 where all bring acid; undefined and a fault where that is not so.
 * @param at the path of each product
 */
export function signOf(report, products, library, path, at) {
    const signs = products.map((name, index) => {
        if (!report.known(name, library.products, at(index), 'product'))
            return undefined;
        if (products.indexOf(name) < index)
            report.fault(at(index), 'a product given twice');
        const alkalinity = library.alkalinity(name);
        if (alkalinity !== 0)
            return Math.sign(alkalinity);
        report.fault(at(index), 'a product without alkalinity holds neither pH nor alkalinity', {
            expected: 'a base or an acid: see `leat show dosing`',
        });
        return undefined;
    });
    if (signs.length === 0 || signs.includes(undefined))
        return undefined;
    if (signs.every((sign) => sign === signs[0]))
        return signs[0] === 1 ? 1 : -1;
    report.fault(path, 'a base and an acid in one doser', {
        got: products.join(', '),
        expected: 'products that all bring base, or all acid; another entry for the others',
    });
    return undefined;
}
/** The vessel whose water a doser measures. */
const waterOf = ({ vessel, probe = vessel }) => probe;
/**
 * Dosers that cannot both be: the same twice in one vessel, or a base and an acid that feed at once by the same water.
 * @param section of the dosers, and its key of the value held
 */
export function checkPairs(report, dosers, [section, level]) {
    dosers.forEach((doser, index) => {
        const path = [section, index];
        for (const other of dosers.slice(0, index)) {
            if (doser === undefined || other?.hold !== doser.hold)
                continue;
            if (other.sign === doser.sign) {
                if (other.vessel !== doser.vessel)
                    continue;
                const kind = doser.sign === 1 ? 'base' : 'acid';
                report.fault(path, `${doser.hold} of ${doser.vessel} is held with ${kind} twice`, {
                    expected: 'one entry, with a list of products',
                });
                continue;
            }
            if (waterOf(other) !== waterOf(doser))
                continue;
            const [base, acid] = doser.sign === 1 ? [doser, other] : [other, doser];
            const apart = Math.max(base.band, acid.band);
            if (acid.setPoint - base.setPoint >= apart * (1 - ROUNDING))
                continue;
            report.fault([...path, level], 'a base and an acid so near that they work against each other', {
                got: `base below ${base.setPoint}, acid above ${acid.setPoint}`,
                expected: `the acid a band (${apart}) or more above the base`,
            });
        }
    });
}
/** Checks the dosers of a scenario built in code; gives those that are without fault. */
export function checkDosers(report, { dosers }, vessels, library) {
    if (dosers === undefined || !report.isList(dosers, ['dosers']))
        return [];
    if (!report.checkCount(['dosers'], dosers.length, most.dosers))
        return [];
    const sound = dosers.map((doser, index) => {
        const path = ['dosers', index];
        const before = report.faults.length;
        if (!report.holds(doser, path))
            return undefined;
        report.known(doser.vessel, vessels, [...path, 'vessel'], 'vessel');
        if (doser.probe !== undefined)
            report.known(doser.probe, vessels, [...path, 'probe'], 'vessel');
        report.numbers(doser, doserRanges, path);
        if (report.oneOf(doser.hold, ['pH', 'alkalinity'], [...path, 'hold']))
            report.within(doser.setPoint, levelRange(doser.hold), [...path, 'setPoint']);
        const list = [...path, 'products'];
        if (!report.isList(doser.products, list))
            return undefined;
        if (doser.products.length === 0)
            report.fault(list, 'missing', { expected: 'a product or more' });
        const sign = signOf(report, doser.products, library, list, (each) => [...list, each]);
        if (sign !== undefined && sign !== doser.sign)
            report.fault([...path, 'sign'], 'not that of its products', { expected: String(sign) });
        return report.faults.length > before ? undefined : doser;
    });
    checkPairs(report, sound, ['dosers', 'setPoint']);
    return sound.filter((doser) => doser !== undefined);
}
//# sourceMappingURL=dosers.js.map