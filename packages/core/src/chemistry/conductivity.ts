// Reads numbers as: electrical conductivity
import type { Values } from '../library/values.js';
import { type IonContent, openIonicStrength } from './ions.js';

/** Ions whose amounts are known, by the number of the tables that says how well each conducts. */
type Ion = 'ammonium' | 'nitrite' | 'nitrate' | 'chloride' | 'bicarbonate' | 'calcium' | 'cations' | 'anions';

/**
 * Opens an estimate of the electrical conductivity at 25 degC of a water by its ions, mS/cm, whatever its temperature, as
 * meters show it. Each ion gives its charge c, meq/L, times its equivalent conductivity, which falls from that at infinite
 * dilution l0 with the ionic strength I: l = l0 - (a l0 + b z) sqrt I / (1 + sqrt I), z its charges, the limiting law of Onsager with the
 * size of ions in its denominator (Robinson & Stokes 1959). All alkalinity counts as bicarbonate; what is wanting of charge
 * stands for potassium, sodium and magnesium as one cation (or, if anions are wanting, for sulphate). Salts of which nothing
 * is known, magnesium sulphate and phosphates, are not in it: the estimate is low by them.
 */
export function openConductivity(values: Values): (water: IonContent) => number {
  const strength = openIonicStrength(values);
  const perNitrogen = 1 / values.value('molar.nitrogen');
  const perChlorine = 1 / values.value('molar.chlorine');
  const relaxation = values.value('conductivity.relaxation');
  const drag = values.value('conductivity.drag');
  const limiting = new Map<Ion, number>();
  const of = (ion: Ion): number => {
    const known = limiting.get(ion) ?? values.value(`conductivity.${ion}`);
    limiting.set(ion, known);
    return known;
  };
  return (water) => {
    const ammonium = water.ammonia * perNitrogen;
    const nitrite = water.nitrite * perNitrogen;
    const nitrate = water.nitrate * perNitrogen;
    const chloride = water.chloride * perChlorine;
    const bicarbonate = Math.max(0, water.alkalinity);
    const known = ammonium + 2 * water.calcium;
    const rest = water.alkalinity + nitrite + nitrate + chloride - known;
    const root = Math.sqrt(Math.max(0, strength(water)));
    const slowed = root / (1 + root);
    const amounts: readonly (readonly [Ion, number])[] = [
      ['ammonium', ammonium],
      ['nitrite', nitrite],
      ['nitrate', nitrate],
      ['chloride', chloride],
      ['bicarbonate', bicarbonate],
      ['calcium', 2 * water.calcium],
      [rest > 0 ? 'cations' : 'anions', Math.abs(rest)],
    ];
    let microsiemens = 0;
    for (const [ion, charge] of amounts) {
      const most = of(ion);
      const charges = ion === 'calcium' ? 2 : 1;
      microsiemens += charge * (most - (relaxation * most + drag * charges) * slowed);
    }
    return microsiemens / 1000;
  };
}
