import { checkMoment } from '../checks/actions.js';
import { dayOf, moment } from './times.js';
/** Keys of a planting that say when it stands: so crops follow each other in a bed, and a bed lies fallow between. */
export const seasonTimes = {
    from: moment('when the bed is first planted, all batches at once; default: at the start, unless start is empty').optional(),
    until: moment('when what stands is harvested and the bed left empty; default: never, the crop goes on as `after` says').optional(),
};
/** What is done to beds where seasons of their crops begin and end, in days since the start; faults where they cannot be. */
export function readSeasons(reader, frame, plantings) {
    return [...plantings].flatMap(([planting, sound]) => {
        // What is no moment was told with the planting.
        if (sound === undefined)
            return [];
        const path = ['plantings', planting];
        const dayAt = (key) => {
            const when = reader.has([...path, key]) ? reader.parse(seasonTimes[key], [...path, key]) : undefined;
            return when && dayOf(when, frame);
        };
        const [from, until] = [dayAt('from'), dayAt('until')];
        if (from !== undefined && until !== undefined && until <= from) {
            reader.fault([...path, 'until'], 'not after from', { expected: 'a later moment' });
            return [];
        }
        const act = (key, at, action) => at !== undefined && checkMoment(reader, [...path, key], at, frame.lastDay)
            ? [{ at, action, where: reader.where([...path, key]) }]
            : [];
        return [
            ...act('from', from, { kind: 'plant', planting }),
            ...act('until', until, { kind: 'harvest-crop', planting, replant: false }),
        ].filter(({ at }) => at < frame.days);
    });
}
//# sourceMappingURL=seasons.js.map