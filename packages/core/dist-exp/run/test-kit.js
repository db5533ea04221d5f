import { normalQuantile } from '../base/normal.js';
import { waterState } from '../model/layout.js';
import { waterChemistry } from '../model/water-chemistry.js';
import { unitOfMeasurable } from '../scenario/measurables.js';
import { convert } from '../base/units.js';
const components = {
    ammonia: 'tan',
    nitrite: 'nitrite',
    nitrate: 'nitrate',
    alkalinity: 'alkalinity',
    oxygen: 'oxygen',
    chloride: 'chloride',
};
/**
 * What is truly there: g m-3 (nitrogen as N), eq m-3, pH, degC or m3. Not finite where a vessel is dry
 * or its water has no pH from 0 to 14.
 */
export function trueValue(read, waters, vessel) {
    switch (read) {
        case 'pH':
            return waterChemistry(waters.model.parameters, waters, vessel).pH;
        case 'temperature':
            return waters.temperature[vessel];
        case 'volume':
            return waters.volume[vessel];
        default:
            return waters.y[waterState(vessel, components[read])] / waters.volume[vessel];
    }
}
/** A level or reading in twelve digits, so that multiples of a resolution compare as they are written. */
export function twelveDigits(value) {
    return Number(value.toPrecision(12));
}
/**
 * What a kit shows of a true value: a normal error added, then rounded to a whole multiple of the resolution.
 * A large absolute error may show less than zero. Draws one number where the kit has an error, else none.
 *
 * @param random uniform numbers in [0, 1)
 */
export function readingOf(kit, value, random) {
    const { error, resolution } = kit;
    let shown = value;
    if (error !== undefined) {
        let chance = random();
        // The quantile of 0 is not finite.
        while (chance === 0)
            chance = random();
        const deviate = normalQuantile(chance);
        shown += error.deviation * deviate * (error.kind === 'relative' ? value : 1);
    }
    return twelveDigits(resolution === undefined ? shown : Math.round(shown / resolution) * resolution);
}
/** A reading or a level in words, four digits: `2.25 mg N/L`; alkalinity in degrees of hardness as well. */
export function describeReading(read, value) {
    const digits = (number) => String(Number(number.toPrecision(4)));
    const unit = unitOfMeasurable[read];
    const text = unit === '' ? digits(value) : `${digits(value)} ${unit}`;
    const degree = read === 'alkalinity' ? convert(1, 'dKH', 'alkalinity') : undefined;
    return degree !== undefined && 'value' in degree ? `${text} (${digits(value / degree.value)} dKH)` : text;
}
//# sourceMappingURL=test-kit.js.map