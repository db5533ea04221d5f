import { formatQuantity } from '../../base/units.js';
import { batchName } from '../scenario.js';
import { startWaterRanges } from './ranges.js';
/** Each state stands once, and each vessel has all that water holds. */
function checkStates(report, path, { states, volumes }) {
    const seen = new Set();
    for (const { component, place } of states) {
        const key = `${component}@${place}`;
        if (seen.has(key))
            report.fault(path, `${key} stands twice`, { expected: 'each state once' });
        seen.add(key);
    }
    for (const vessel of Object.keys(volumes)) {
        for (const component of Object.keys(startWaterRanges)) {
            if (seen.has(`${component}@${vessel}`))
                continue;
            report.fault(path, `${component}@${vessel} is missing`, { expected: 'each state of a vessel' });
        }
    }
}
/** What a place is of must be the same: fish of one species do not become those of another. */
function checkSame(report, path, kind, saved, own) {
    for (const [place, was] of Object.entries(saved)) {
        const is = own.get(place);
        if (is === undefined || is === was)
            continue;
        report.fault(path, `${place} is of another ${kind} than was saved`, { got: is, expected: was });
    }
}
function checkVolumes(report, path, { volumes }, vessels) {
    for (const [place, volume] of Object.entries(volumes)) {
        const holds = vessels.get(place)?.volume ?? Infinity;
        if (volume <= holds * (1 + 1e-9))
            continue;
        report.fault(path, `${place} is saved with more water than it holds`, {
            got: formatQuantity(volume, 'volume'),
            expected: `at most ${formatQuantity(holds, 'volume')}`,
        });
    }
}
/**
 * Checks that a saved state is of this system: its places are there, each state stands once and each vessel has all that
 * water holds, water is within its vessels, species and crops are as they were.
 */
export function checkSavedContent(report, path, saved, { vessels, cohorts, plantings }) {
    const batches = [...plantings].flatMap(([planting, { batches = 0, crop = '' } = {}]) => Array.from({ length: batches }, (_, batch) => [batchName(planting, batches, batch), crop]));
    const places = [...vessels.keys(), ...cohorts.keys(), ...batches.map(([batch]) => batch)];
    const named = new Set([...Object.keys(saved.volumes), ...saved.states.map(({ place }) => place)]);
    for (const place of named)
        report.known(place, places, path, 'place');
    checkStates(report, path, saved);
    checkVolumes(report, path, saved, vessels);
    const species = [...cohorts].map(([cohort, given]) => [cohort, given?.species ?? '']);
    checkSame(report, path, 'species', saved.species, new Map(species));
    checkSame(report, path, 'crop', saved.crops, new Map(batches));
}
/** Checks that a run ends after the moment that it goes on from; `way` says what else may be done. */
export function checkGoesOn(report, path, time, days, way) {
    if (time < days)
        return;
    report.fault(path, `the run ends before it begins: the state is of day ${time}`, {
        expected: `days above ${time}${way}`,
    });
}
//# sourceMappingURL=saved.js.map