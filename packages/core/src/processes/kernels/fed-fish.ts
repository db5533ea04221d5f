import { growthAt, growthPartialsAt, growthReads } from './fish-energy.js';
import { INTAKE_COEFFICIENTS, INTAKE_READS, intakeAt, intakePartialsAt } from './intake.js';
import type { Kernel } from './kernel.js';

/** Variables and coefficients of growth; the coefficients begin with those of intake. */
const GROWTH_READS = growthReads.length;
const GROWTH_COEFFICIENTS = INTAKE_COEFFICIENTS + 5;

/** Where, after the coefficients of intake, feed not eaten has what is offered: a mass, and a share of body mass. */
export const OFFERED = INTAKE_COEFFICIENTS;

/** Where, after those of growth, excretion has nitrogen that is digested of feed and that growth takes, g N per g. */
export const NITROGEN = GROWTH_COEFFICIENTS;

/** Place of the mass of a group among the variables of intake. */
const MASS = 5;

/**
 * Feed eaten, feed not eaten, growth and excretion of every group, handed over in this order: intake and growth are worked
 * out once. Coefficients as in the four processes; what they share is read from excretion, which has all but what is
 * offered.
 */
export const fedFishKernel: Kernel = {
  name: 'fed-fish',
  rates: ([eating, uneaten, growing, excretion], v, r) => {
    const { count, at, k, size } = excretion;
    for (
      let i = 0, n = 0, o = 0, q = OFFERED;
      i < count;
      i++, n += GROWTH_READS, o += size, q += uneaten.size
    ) {
      const eaten = intakeAt(v, at, n, k, o);
      const grown = growthAt(v, at, n, k, o, eaten);
      r[eating.row + i] = eaten;
      r[uneaten.row + i] = uneaten.k[q] + uneaten.k[q + 1] * v[at[n + MASS]] - eaten;
      r[growing.row + i] = grown;
      r[excretion.row + i] = k[o + NITROGEN] * eaten - k[o + NITROGEN + 1] * grown;
    }
  },
  partials: ([eating, uneaten, growing, excretion], v) => {
    const { count, at, k, size } = excretion;
    for (let i = 0, o = 0; i < count; i++, o += size) {
      const n = i * GROWTH_READS;
      const m = i * INTAKE_READS;
      const eaten = intakePartialsAt(v, at, n, k, o, eating.d, m);
      for (let q = 0; q < INTAKE_READS; q++) {
        uneaten.d[m + q] = -eating.d[m + q];
        growing.d[n + q] = eating.d[m + q];
      }
      uneaten.d[m + MASS] += uneaten.k[i * uneaten.size + OFFERED + 1];
      growthPartialsAt(v, at, n, k, o, eaten, growing.d, n);
      for (let q = 0; q < GROWTH_READS; q++) {
        excretion.d[n + q] = -k[o + NITROGEN + 1] * growing.d[n + q];
        if (q < INTAKE_READS) excretion.d[n + q] += k[o + NITROGEN] * eating.d[m + q];
      }
    }
  },
};
