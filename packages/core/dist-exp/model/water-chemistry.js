// Reads numbers as: chemistry of a vessel
import { acidBaseConstants, hydrogenIon, speciate, SPECIATION, } from '../chemistry/acid-base.js';
import { openIonicStrength } from '../chemistry/ions.js';
import { waterState } from './layout.js';
/**
 * pH, un-ionised ammonia, carbon dioxide and saturation index of a vessel, NaN where its water has no pH in 0-14.
 * Formulas: chemistry/acid-base.ts.
 */
export function waterChemistry(values, waters, vessel) {
    return openWaterChemistry(values)(waters, vessel);
}
/** As `waterChemistry`, for many moments: the last constants of each vessel are kept. */
export function openWaterChemistry(values) {
    const molar = values.value('molar.nitrogen');
    const kept = new Map();
    const constantsAt = (vessel, warmth, ions) => {
        const last = kept.get(vessel);
        if (last !== undefined && last.warmth === warmth && last.ions === ions)
            return last.constants;
        const constants = acidBaseConstants(values, warmth, ions);
        kept.set(vessel, { warmth, ions, constants });
        return constants;
    };
    const out = new Float64Array(SPECIATION);
    return ({ y, volume, temperature, ionic }, vessel) => {
        const per = (component) => y[waterState(vessel, component)] / volume[vessel];
        const tan = per('tan');
        const carbon = per('carbon');
        const k = constantsAt(vessel, temperature[vessel], ionic[vessel]);
        const h = hydrogenIon(per('alkalinity'), carbon, tan / molar, k, Number.NaN);
        speciate(tan, carbon, h, k, molar, out, 0);
        const saturation = out[3] * per('calcium');
        const saturationIndex = saturation > 0 ? Math.log10(saturation) : Number.NaN;
        return { pH: out[0], ammonia: out[1], carbonDioxide: out[2], saturationIndex };
    };
}
/** Opens the ionic strength of the water of a vessel, mol L-1, by the amounts in y and its volume, m3. */
export function openVesselIons(values) {
    const strength = openIonicStrength(values);
    return (y, volume, vessel) => {
        const per = (component) => y[waterState(vessel, component)] / volume;
        return strength({
            tan: per('tan'),
            nitrite: per('nitrite'),
            nitrate: per('nitrate'),
            chloride: per('chloride'),
            alkalinity: per('alkalinity'),
            calcium: per('calcium'),
        });
    };
}
//# sourceMappingURL=water-chemistry.js.map