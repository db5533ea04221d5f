// Reads numbers as: light on the crops in a file
import { dayOfYear } from '../../base/calendar.js';
import { internalUnit } from '../../base/units.js';
import { daylightHours, solarRadiation, sunPosition } from '../../weather/radiation.js';
import { dailyRanges } from '../checks/ranges.js';
import { compact } from '../file/reader.js';
import { formByKey, number, section, share } from '../file/values.js';
import { combined, valueOn } from '../value-on.js';
import { daily, readDaily } from './daily.js';
const lamps = section({
    hours: daily('time', 'how long they burn a day; range: 0 to 24 h'),
    level: daily('light', 'their light on the crops while they burn; range: 0 to 1700 umol/m2/s'),
}, 'lamps over the crops');
/** Cover where none is written. */
const usualCover = {
    sky: 'that of the tables where greenhouse-factor is below 1, else 100 %',
    planting: '100 %',
};
/** What stands between the sky and a crop. */
const over = (place) => ({
    cover: share(`share of the light above that comes through glass or film; default: ${usualCover[place]}`).optional(),
    shade: daily('share', 'share of light that shade cloth takes; range: 0 to 100 %; default: 0 %').optional(),
    lamps: lamps.meta({ description: 'lamps over the crops; default: none' }).optional(),
});
const skySection = section({
    outdoors: daily('light', 'photosynthetic light under the open sky; range: 0 to 150 mol/m2/d; default: worked out from ' +
        '`radiation`, from `latitude` and `sunshine`, or from the weather file of et0, else that of the tables').optional(),
    radiation: daily('radiation', 'solar radiation under the open sky, in place of outdoors; range: 0 to 50 MJ/m2/d; default: none').optional(),
    latitude: number('degrees north, with sunshine in place of outdoors; range: -90 to 90; default: none', -90, 90).optional(),
    sunshine: daily('time', 'bright sunshine a day; range: 0 to 24 h; default: none').optional(),
    ...over('sky'),
}, 'light on the crops from that of the sky');
const overSection = section(over('planting'), 'light on a crop from that of the climate');
/** The key `light` of the climate: a daily value, or how it comes down from the sky. */
export const skyLight = formByKey(Object.keys(skySection.shape), skySection, daily('light', 'photosynthetic light on the crops; range: 0 to 150 mol/m2/d'));
/** The key `light` of a planting: a daily value in place of that of the climate, or what stands over it besides. */
export const ownLight = formByKey(Object.keys(overSection.shape), overSection, daily('light', 'photosynthetic light on this crop; range: 0 to 150 mol/m2/d'));
const constant = (value) => ({ kind: 'constant', value });
const hours = 24;
/** Light outdoors from latitude and hours of sunshine, by FAO-56, mol m-2 d-1. */
function sunLight(reader, latitude, sunshine, { startDate, days }) {
    const { parameters } = reader;
    const perRadiation = parameters.value('light.per-radiation');
    const count = Math.max(1, Math.ceil(days));
    const values = Array.from({ length: count }, (_, index) => {
        const sun = sunPosition(parameters, latitude, dayOfYear(startDate, index));
        if (daylightHours(sun) === 0)
            return 0;
        const day = { dayOfYear: dayOfYear(startDate, index), high: 0, low: 0 };
        const bright = valueOn(sunshine, startDate, index) * hours;
        const site = { latitude, elevation: 0 };
        return perRadiation * solarRadiation(parameters, site, { ...day, sunshine: bright }, sun).value;
    });
    return { kind: 'daily', values };
}
/** Light outdoors, mol m-2 d-1, by the best of what is given. */
function outdoors(reader, path, given, sky) {
    const { days } = sky;
    const read = (key, need) => {
        const value = given[key];
        return value && readDaily(reader, [...path, key], value, { ...dailyRanges[need], days });
    };
    const ways = [given.outdoors, given.radiation, given.sunshine ?? given.latitude];
    if (ways.filter((way) => way !== undefined).length > 1) {
        const expected = 'one of outdoors, radiation, latitude with sunshine';
        reader.fault(path, 'light outdoors given twice', { expected });
        return undefined;
    }
    const perRadiation = reader.parameters.value('light.per-radiation');
    const fromRadiation = (radiation) => radiation && combined([radiation], (value) => value * perRadiation, sky);
    if (given.outdoors !== undefined)
        return read('outdoors', 'light');
    if (given.radiation !== undefined)
        return fromRadiation(read('radiation', 'radiation'));
    if (given.latitude !== undefined || given.sunshine !== undefined) {
        const sunshine = read('sunshine', 'sunshine');
        if (given.latitude === undefined || given.sunshine === undefined) {
            const lacks = given.latitude === undefined ? 'latitude' : 'sunshine';
            reader.fault([...path, lacks], 'missing', { expected: 'latitude and sunshine together' });
            return undefined;
        }
        return sunshine && sunLight(reader, given.latitude, sunshine, sky);
    }
    if (sky.radiation !== undefined)
        return fromRadiation(sky.radiation);
    return constant(reader.parameters.value('light.outdoors'));
}
/** Light that comes through cover and cloth, with that of lamps; undefined (and faults) where a part cannot be read. */
function under(reader, path, { shade: cloth, lamps: lit }, above, span) {
    const { days } = span;
    const zero = constant(0);
    const daylong = { ...dailyRanges.sunshine, days };
    const shade = cloth && readDaily(reader, [...path, 'shade'], cloth, { ...dailyRanges.shade, days });
    const burning = lit && readDaily(reader, [...path, 'lamps', 'hours'], lit.hours, daylong);
    const level = lit && readDaily(reader, [...path, 'lamps', 'level'], lit.level, { ...dailyRanges.light, days });
    if (above.light === undefined)
        return {};
    const light = combined([above.light, shade ?? zero, burning ?? zero, level ?? zero], (sky, taken, on, lamp) => sky * above.cover * (1 - taken) + on * lamp, span);
    const saved = reader.parameters.value('light.shade-water');
    const shelter = shade && combined([shade], (taken) => 1 - saved * taken, span);
    return compact({ light, shelter });
}
const isDaily = (given) => 'kind' in given;
/** Whether a crop stands in the light of the climate: one that has a light of its own day by day does not. */
function isWanted(reader) {
    return reader.keys(['plantings']).some((name) => {
        const path = ['plantings', name, 'light'];
        return !reader.has(path) || Object.keys(overSection.shape).some((key) => reader.has([...path, key]));
    });
}
/** What of the light was taken for granted, in words. */
function noteAssumed(reader, light, from, cover) {
    const path = ['climate', 'light'];
    const value = light.kind === 'constant' ? `${light.value} ${internalUnit('light')}` : undefined;
    if (light.kind === 'constant')
        reader.defaults.push({ path, value: value ?? '' });
    else
        reader.defaults.push({ path, value: { daily: [...light.values], unit: internalUnit('light') } });
    const said = from === 'weather'
        ? 'worked out from the radiation of the weather file'
        : `taken as ${value ?? ''}, for want of a place and its weather`;
    const through = cover === 1 ? '' : `, ${Number((100 * cover).toPrecision(3))} % of it through the cover`;
    reader.notes.push(`${reader.where(['climate'])}: climate.light: not written, ${said}${through}`);
}
/**
 * Light on the crops of a system, mol m-2 d-1: as written, or from the sky, the weather file or the tables, through cover
 * and cloth, with lamps. Where nothing is written, what was assumed is noted.
 */
export function readSkyLight(reader, given, sky) {
    const path = ['climate', 'light'];
    if (given !== undefined && isDaily(given))
        return compact({ light: readDaily(reader, path, given, { ...dailyRanges.light, days: sky.days }) });
    if (given === undefined && !isWanted(reader))
        return {};
    const usual = sky.underCover ? reader.parameters.value('light.cover') : 1;
    const cover = given?.cover ?? (given === undefined ? usual : reader.fallback([...path, 'cover'], usual, usual));
    const answer = under(reader, path, given ?? {}, { light: outdoors(reader, path, given ?? {}, sky), cover }, sky);
    if (given === undefined && answer.light !== undefined)
        noteAssumed(reader, answer.light, sky.radiation === undefined ? 'tables' : 'weather', cover);
    return answer;
}
/** Light on one planting where it has its own: in place of that of the climate, or through what stands over it besides. */
export function readOwnLight(reader, path, given, above, span) {
    if (given === undefined)
        return {};
    if (!isDaily(given))
        return under(reader, path, given, { light: above, cover: given.cover ?? 1 }, span);
    return compact({ light: readDaily(reader, path, given, { ...dailyRanges.light, days: span.days }) });
}
//# sourceMappingURL=light.js.map