/** The rate laws of solids and of dissolved matter; see `laws.mjs`. */
import { number } from './law-terms.mjs';

const solidsNames = {
  th_s: number('solids.theta', '\\theta_S'),
  K_s: number('solids.k-oxygen', 'K_S'),
};
const settledNames = {
  ...solidsNames,
  k_s: number('solids.hydrolysis-settled', 'k_{S}'),
  Y_s: number('solids.yield', 'Y'),
  d_s: number('solids.demand', 'd'),
  D_o: number('solids.oxygen-diffusion', 'D'),
  rho: number('solids.settled-density', '\\rho'),
};
const settledEquations = {
  q_s: '(k_s * th_s^(T - 20) * (1 - Y_s) * d_s / (2 * D_o * rho))^0.5 / A_f',
  E_s: 'M(C_o2, K_s) * phi(q_s * (S * (S + S_r) / C_o2)^0.5)',
};
const airlessNames = {
  ...settledNames,
  y: number('denitrification.activity', '\\eta'),
  K_d: number('denitrification.k-nitrate', 'K_D'),
  k_b: number('denitrification.transfer', 'k_N'),
  w_n: number('molar.nitrogen', 'M_N'),
  w_o: number('molar.oxygen-gas', 'M_{O_2}'),
};
const airlessEquations = {
  ...settledEquations,
  U_s: '(1 - E_s) * S',
  H_s: 'k_s * th_s^(T - 20) * y * U_s',
  K_u: 'K_d + H_s * (1 - Y_s) * d_s * w_n / (1.25 * w_o) / (k_b * A_f)',
};
const settlingNames = {
  v_s: number('solids.settling-velocity', 'v_S'),
  k_m: number('solids.stirring', 'k_m'),
};
const refractoryNames = {
  k_r: number('solids.refractory-hydrolysis', 'k_{R}'),
  th_s: number('solids.theta', '\\theta_S'),
};
const dissolvedNames = {
  ...solidsNames,
  k_c: number('dissolved.oxidation', 'k_{D}'),
  K_n: number('dissolved.k-tan', 'K_{TAN}'),
};

/** By process, in the order of the list of processes. */
export const lawsOfSolids = {
  'solids-hydrolysis': {
    law: 'k_w * th_s^(T - 20) * C_s',
    names: {
      k_w: number('solids.hydrolysis-suspended', 'k_{w}'),
      th_s: number('solids.theta', '\\theta_S'),
    },
  },
  'refractory-hydrolysis': { law: 'k_r * th_s^(T - 20) * C_r', names: refractoryNames },
  'refractory-sludge-hydrolysis': { law: 'k_r * th_s^(T - 20) * S_r', names: refractoryNames },
  'sludge-mineralisation': {
    law: 'k_s * th_s^(T - 20) * E_s * S',
    equations: settledEquations,
    names: settledNames,
  },
  denitrification: {
    law: 'H_s * M(C_no3, K_u)',
    equations: airlessEquations,
    names: airlessNames,
  },
  'sludge-fermentation': {
    law: 'H_s * I(C_no3, K_u)',
    equations: airlessEquations,
    names: airlessNames,
  },
  settling: { law: 'v_s * A_f / (1 + (k_air * V / (A_f * k_m))^3) * C_s', names: settlingNames },
  'settling-refractory': { law: 'v_s * A_f / (1 + (k_air * V / (A_f * k_m))^3) * C_r', names: settlingNames },
  capture: { law: 'Q * e / (1 - e) * C_s', names: {} },
  'capture-refractory': { law: 'Q * e / (1 - e) * C_r', names: {} },
  'dissolved-oxidation': {
    law: 'k_c * th_s^(T - 20) * M(C_o2, K_s) * M(C_tan, K_n) * C_d',
    names: dissolvedNames,
  },
  'dissolved-denitrification': {
    law: 'k_c * th_s^(T - 20) * y * I(C_o2, K_s) * M(C_tan, K_n) * M(C_no3, K_d) * C_d',
    names: {
      ...dissolvedNames,
      y: number('denitrification.activity', '\\eta'),
      K_d: number('denitrification.k-nitrate', 'K_D'),
    },
  },
  ammonification: {
    law: 'k_a * th_s^(T - 20) * C_on',
    names: {
      k_a: number('organic-nitrogen.ammonification', 'k_{A}'),
      th_s: number('solids.theta', '\\theta_S'),
    },
  },
};
