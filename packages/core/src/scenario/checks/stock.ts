import { formatQuantity } from '../../base/units.js';
import type { Named, Report } from '../file/report.js';
import type { Path } from '../file/tree.js';
import type { Planting, Vessel } from '../scenario.js';

/** Bed area may be taken up a little more than wholly: areas are measured with a tape. */
const tapeMargin = 1.02;

/** Area of a bed, m2; of a channel plants may take any. */
function areaOf(bed: Vessel | undefined): number {
  return bed === undefined || bed.kind === 'channel' ? Infinity : bed.open + bed.covered;
}

/** Checks that a planting is no larger than its bed. */
export function checkPlanted(report: Report, path: Path, area: number, bed: Vessel | undefined): void {
  const wide = areaOf(bed) * tapeMargin;
  if (bed === undefined || area <= wide) return;
  const expected = `at most ${formatQuantity(wide / tapeMargin, 'area')}`;
  report.fault([...path, 'area'], `larger than ${bed.name}`, { expected });
}

/** Checks that no crop is older than its age at harvest. */
export function checkAge(report: Report, path: Path, age: number, harvest: number): void {
  if (age > harvest)
    report.fault([...path, 'age'], 'older than at harvest', {
      expected: `at most ${formatQuantity(harvest, 'time')}`,
    });
}

/** What grows at the same time in a bed must fit on it. Beds that start empty are taken to follow others. */
export function checkBeds(report: Report, plantings: Named<Planting>, vessels: Named<Vessel>): void {
  const taken = new Map<string, number>();
  for (const planting of plantings.values()) {
    if (planting === undefined || planting.start === 'empty') continue;
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

/** Checks that trays are plantings, and that no plants are set out in a circle. */
export function checkTrays(report: Report, plantings: Named<Planting>): void {
  for (const planting of plantings.values()) {
    if (planting?.tray === undefined) continue;
    const path = ['plantings', planting.name, 'tray'];
    if (!report.known(planting.tray, plantings, path, 'planting')) continue;
    const passed = [planting.name];
    let next: string | undefined = planting.tray;
    while (next !== undefined && !passed.includes(next)) {
      passed.push(next);
      next = plantings.get(next)?.tray;
    }
    if (next === planting.name)
      report.fault(path, 'plants set out in a circle', {
        got: [...passed, next].join(' > '),
        expected: 'a tray that is sown',
      });
  }
}

/** The first row of a table of rations whose mass is not above that of the row before; -1 where masses rise. */
export function fallingRow(rows: readonly { readonly mass: number }[]): number {
  return rows.findIndex(({ mass }, index) => index > 0 && mass <= (rows[index - 1]?.mass ?? 0));
}

/** Whether hours of feeding, as shares of a day, lie within one day, the second later. */
export function isWithinDay({ from, to }: { readonly from: number; readonly to: number }): boolean {
  return from >= 0 && from < to && to <= 1;
}
