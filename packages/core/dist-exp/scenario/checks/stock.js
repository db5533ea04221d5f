import { formatQuantity } from '../../base/units.js';
/** Bed area may be taken up a little more than wholly: areas are measured with a tape. */
const tapeMargin = 1.02;
/** Area of a bed, m2; of a channel plants may take any. */
function areaOf(bed) {
    return bed === undefined || bed.kind === 'channel' ? Infinity : bed.open + bed.covered;
}
/** Checks that a planting is no larger than its bed. */
export function checkPlanted(report, path, area, bed) {
    const wide = areaOf(bed) * tapeMargin;
    if (bed === undefined || area <= wide)
        return;
    const expected = `at most ${formatQuantity(wide / tapeMargin, 'area')}`;
    report.fault([...path, 'area'], `larger than ${bed.name}`, { expected });
}
/** Checks that no crop is older than its age at harvest. */
export function checkAge(report, path, age, harvest) {
    if (age > harvest)
        report.fault([...path, 'age'], 'older than at harvest', {
            expected: `at most ${formatQuantity(harvest, 'time')}`,
        });
}
/** What grows at the same time in a bed must fit on it. Beds that start empty are taken to follow others. */
export function checkBeds(report, plantings, vessels) {
    const taken = new Map();
    for (const planting of plantings.values()) {
        if (planting === undefined || planting.start === 'empty')
            continue;
        const wide = areaOf(vessels.get(planting.vessel));
        const before = taken.get(planting.vessel) ?? 0;
        const sum = before + planting.area;
        taken.set(planting.vessel, sum);
        if (before > 0 && sum > wide * tapeMargin && planting.area <= wide * tapeMargin) {
            const got = `${formatQuantity(Number(sum.toPrecision(6)), 'area')} in all`;
            const expected = `at most ${formatQuantity(wide, 'area')}`;
            report.fault(['plantings', planting.name, 'area'], `plantings larger than ${planting.vessel}`, {
                got,
                expected,
            });
        }
    }
}
/** The first row of a table of rations whose mass is not above that of the row before; -1 where masses rise. */
export function fallingRow(rows) {
    return rows.findIndex(({ mass }, index) => index > 0 && mass <= (rows[index - 1]?.mass ?? 0));
}
/** Whether hours of feeding, as shares of a day, lie within one day, the second later. */
export function isWithinDay({ from, to }) {
    return from >= 0 && from < to && to <= 1;
}
//# sourceMappingURL=stock.js.map