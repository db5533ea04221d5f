import { formatQuantity } from '../../base/units.js';
import type { FieldPath, Named, Report } from '../file/report.js';
import type { Path } from '../file/tree.js';
import type { Action, Cohort, Vessel } from '../scenario.js';
import { absurd } from './ranges.js';

const quantityText = (value: number, dimension: Parameters<typeof formatQuantity>[1]): string =>
  formatQuantity(Number(value.toPrecision(6)), dimension);

/** Checks that so many fish fit into their vessel, and that one of them can be so large. */
function checkFish(
  report: Report,
  at: FieldPath,
  fish: Pick<Cohort, 'number' | 'mass'>,
  home?: Vessel,
): void {
  const { number, mass } = fish;
  if (mass > absurd.fish) {
    const expected = `at most ${quantityText(absurd.fish, 'mass')}: no fish of fresh water is heavier`;
    report.fault(at('mass'), 'heavier than any fish', { expected });
    return;
  }
  if (home === undefined || !(number * mass > absurd.stocking * home.volume)) return;
  const expected =
    `at most ${quantityText(absurd.stocking * home.volume, 'mass')} of fish in the ` +
    `${quantityText(home.volume, 'volume')} of ${home.name}: half of it would be fish`;
  const got = `${number} fish of ${quantityText(mass, 'mass')}, ${quantityText(number * mass, 'mass')} in all`;
  report.fault(at('number'), 'more fish than the water can hold', { got, expected });
}

/** Checks that fish are not given many times their own mass of feed a day. */
function checkRation(report: Report, path: Path, { number, mass, ration }: Cohort): void {
  const stock = number * mass;
  const given =
    ration.kind === 'mass'
      ? stock > 0
        ? ration.gramsPerDay / stock
        : 0
      : ration.kind === 'share'
        ? ration.perDay
        : Math.max(...ration.rows.map(({ perDay }) => perDay));
  if (!(given > absurd.ration)) return;
  const expected =
    stock > 0
      ? `at most ${quantityText(absurd.ration * stock, 'mass-flow')}: twice the mass of the fish, ${quantityText(stock, 'mass')}, each day`
      : `at most ${quantityText(absurd.ration, 'share-rate')}: twice the mass of the fish each day`;
  report.fault([...path, 'ration'], 'more feed than fish could eat', { expected });
}

/**
 * Checks what each number by itself allows, but not all of them together: fish that do not fit into the water, feed of
 * many times their mass.
 */
export function checkPlausible(report: Report, cohorts: Named<Cohort>, vessels: Named<Vessel>): void {
  for (const cohort of cohorts.values()) {
    if (cohort === undefined) continue;
    const path = ['fish', cohort.name];
    checkFish(
      report,
      (field) => [...path, ...(field === undefined ? [] : [field])],
      cohort,
      vessels.get(cohort.vessel),
    );
    checkRation(report, path, cohort);
  }
}

/** Checks the same of one action: fish that are stocked, a product that is dosed. */
export function checkPlausibleAction(
  report: Report,
  at: FieldPath,
  action: Action,
  cohorts: Named<Cohort>,
  vessels: Named<Vessel>,
): void {
  if (action.kind === 'stock') {
    const cohort = cohorts.get(action.cohort);
    checkFish(report, at, action, cohort === undefined ? undefined : vessels.get(cohort.vessel));
  }
  if (action.kind !== 'dose') return;
  const vessel = vessels.get(action.vessel);
  if (vessel === undefined || !(action.mass > absurd.dose * vessel.volume)) return;
  const expected =
    `at most ${quantityText(absurd.dose * vessel.volume, 'mass')} into the ` +
    `${quantityText(vessel.volume, 'volume')} of ${vessel.name}: no more of most products dissolves`;
  report.fault(at('mass'), 'more than the water can take up', { expected });
}
