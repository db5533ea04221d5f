import { arrhenius } from './rate-terms.js';
/** Water that transfer to the film of a surface would clear of a substance, m3 d-1: velocity x surface. */
export function transferOf(values, { surface, temperature }, coming) {
    const ofTan = values.value('biofilm.transfer') *
        arrhenius(values.value('biofilm.transfer-theta'), temperature) *
        surface;
    return coming === 'tan' ? ofTan : ofTan * values.value(`biofilm.transfer-${coming}`);
}
/** Heterotrophs that cover one half of a surface, g COD: half / (half + H) of it is left bare to nitrifiers. */
export function bareHalf(values, { surface }) {
    return values.value('heterotroph.cover') * surface;
}
//# sourceMappingURL=film-coefficients.js.map