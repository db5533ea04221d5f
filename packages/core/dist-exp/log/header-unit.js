import { convert, dimensionNames } from '../base/units.js';
/** What is a unit by its looks, whether Leat knows it or not: a mass, an amount or a share, also by volume or by mass. */
const amount = String.raw `(?:[munkpµμ]?(?:g|gr|mol|eq|val|m|M|N)|mcg|lbs?|oz|pp[mbt]|psu|[%‰])`;
const by = String.raw `(?:[mµμud]?[lL]|(?:[cd]?m)(?:3|³|\^3)|kg|gal|100 ?[gmlL]{1,2}|d|day|h)`;
const looks = {
    whole: new RegExp(String.raw `^(?:${amount}(?: ?[A-Z][A-Za-z0-9]*)?(?: ?\/ ?${by}.*)?|[mµμk]?[VSW](?:\/cm)?)$`),
    within: new RegExp(String.raw `(?:^|[\s,;:_-])((?:${amount}(?: ?N)? ?\/ ?${by}(?:(?: as)? [A-Z][A-Za-z0-9]*)?)|kg|lbs?|oz|pp[mbt]|mg|gal|m3|°\s?[CF])(?=$|[\s,;:)_-])`),
};
const isUnit = (text) => looks.whole.test(text) ||
    dimensionNames.some((dimension) => 'value' in convert(1, text, dimension));
/** As what a concentration is counted, as people write it behind the unit: `mg/L NO3-N`, `ppm CaCO3`, `mg/l as NH4+`. */
const asWhat = /^(ppm|(?:mg|g|[uµμ]g) ?\/ ?(?:[lL]|m3)) ?-? ?(?:as )?(?:(?:NO2|NO3|NH3|NH4|TAN)[-+]?-)?(N|CaCO3|NO2|NO3|NH3|NH4|HCO3)[-+]?$/i;
const kinds = ['N', 'CaCO3', 'NO2', 'NO3', 'NH3', 'NH4', 'HCO3'];
/** A unit as a system file writes it, where a header writes it another way. */
function usual(unit) {
    if (/^lbs$/i.test(unit))
        return 'lb';
    if (/^gr(?:ams?)?$/i.test(unit))
        return 'g';
    const [, plain, as] = asWhat.exec(unit.replace(/mg ?\/ ?l/i, 'mg/L')) ?? [];
    const kind = kinds.find((each) => each.toLowerCase() === as?.toLowerCase());
    return plain === undefined || kind === undefined ? unit : `${plain} as ${kind}`;
}
/**
 * The unit that a header of a log writes: in brackets (`Ammonia (kg)`, `NO3 [mg/L as NO3]`) or among
 * its words (`Chloride g/L`); undefined where none is written. It need not be one that is known.
 */
export function unitInHeader(header) {
    for (const [, text = ''] of header.matchAll(/[([{]([^)\]}]*)[)\]}]/g))
        if (isUnit(usual(text.trim())))
            return usual(text.trim());
    const [, among] = looks.within.exec(header) ?? [];
    return among === undefined ? undefined : usual(among);
}
//# sourceMappingURL=header-unit.js.map