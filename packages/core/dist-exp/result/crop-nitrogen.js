// Reads numbers as: nitrogen of crops
import { scopeTo } from '../model/scope.js';
import { critical, cropCoefficients } from '../processes/kernels/crop.js';
import { anyConditions } from '../processes/process.js';
/**
 * Share of the time and the batches that stand in which a crop held less nitrogen than a share (`limit.crop-nitrogen-low`)
 * of its critical curve: it then grows less for want of it. 0 where nothing stands.
 */
export function cropNitrogenShare({ model, samples }) {
    const { layout, scenario, parameters } = model;
    const least = parameters.value('limit.crop-nitrogen-low.value');
    let standing = 0;
    let short = 0;
    for (const { planting, area, mass, nitrogen } of layout.batches) {
        const values = scopeTo(parameters, { crop: scenario.plantings[planting].crop });
        const k = cropCoefficients(values, { ...anyConditions, area });
        for (const { y } of samples) {
            if (!(y[mass] > 0))
                continue;
            standing++;
            if (y[nitrogen] < least * y[mass] * critical(y[mass], k, 0))
                short++;
        }
    }
    return standing === 0 ? 0 : short / standing;
}
//# sourceMappingURL=crop-nitrogen.js.map