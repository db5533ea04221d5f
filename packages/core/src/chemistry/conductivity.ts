// Reads numbers as: electrical conductivity
import type { Values } from '../library/values.js';
import { type IonContent, openIonicStrength } from './ions.js';

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
  const limiting = (ion: string): number => values.value(`conductivity.${ion}`);
  const known = [
    ...[limiting('ammonium'), limiting('nitrite'), limiting('nitrate'), limiting('chloride')],
    ...[limiting('bicarbonate'), limiting('calcium')],
  ];
  let cations: number | undefined;
  let anions: number | undefined;
  return (water) => {
    const ammonium = water.ammonia * perNitrogen;
    const nitrite = water.nitrite * perNitrogen;
    const nitrate = water.nitrate * perNitrogen;
    const chloride = water.chloride * perChlorine;
    const bicarbonate = Math.max(0, water.alkalinity);
    const calcium = 2 * water.calcium;
    const rest = water.alkalinity + nitrite + nitrate + chloride - (ammonium + calcium);
    const root = Math.sqrt(Math.max(0, strength(water)));
    const slowed = root / (1 + root);
    const carried = (charge: number, most: number, charges: number): number =>
      charge * (most - (relaxation * most + drag * charges) * slowed);
    const others = rest > 0 ? (cations ??= limiting('cations')) : (anions ??= limiting('anions'));
    const microsiemens =
      carried(ammonium, known[0], 1) +
      carried(nitrite, known[1], 1) +
      carried(nitrate, known[2], 1) +
      carried(chloride, known[3], 1) +
      carried(bicarbonate, known[4], 1) +
      carried(calcium, known[5], 2) +
      carried(Math.abs(rest), others, 1);
    return microsiemens / 1000;
  };
}
