/** The rate laws of fish; see `laws.mjs`. */
import { number } from './law-terms.mjs';

const eatingNames = {
  u: number('fish.uneaten', 'u'),
  a_f: number('species.appetite', 'a_f'),
  b_f: number('fish.appetite-exponent', 'b_f'),
  T_l: number('species.temperature-low', 'T_{low}'),
  T_h: number('species.temperature-high', 'T_{high}'),
  T_ol: number('species.temperature-optimum-low', 'T_{ol}'),
  T_oh: number('species.temperature-optimum-high', 'T_{oh}'),
  c_o: number('fish.appetite-oxygen', 'c_{O_2}'),
  L_ox: number('species.limit-oxygen', 'L_{O_2}'),
  c_t: number('fish.appetite-toxic', 'c_t'),
  c_c: number('fish.appetite-carbon-dioxide', 'c_{CO_2}'),
  L_a: number('species.lethal-ammonia', 'L_{NH_3}'),
  L_n: number('species.lethal-nitrite', 'L_{NO_2}'),
  L_c: number('species.lethal-carbon-dioxide', 'L_{CO_2}'),
  K_cl: number('species.chloride-halving', 'K_{Cl}'),
  m_c: number('molar.carbon', 'm_C'),
  m_o: number('molar.oxygen-gas', 'm_{O_2}'),
};
const eatingEquations = {
  w_f: '(B + 0.0001) / ((n + 0.000001) * 100)',
  f_T: 'sin(1.5707963267948966 * max(0, min(1, (T - T_l) / (T_ol - T_l), (T_h - T) / (T_h - T_oh))))',
  f_o: 'C_o2^2 / (C_o2^2 + (c_o * L_ox)^2)',
  n_e: 'C_no2 / (1 + C_cl / K_cl)',
  f_t: '1 / ((1 + (C_nh3 / (c_t * L_a))^2) * (1 + (n_e / (c_t * L_n))^2) * (1 + (C_co2 * (m_c + m_o) / (c_c * L_c))^2))',
  A_f_: 'f_h * a_f * f_T * f_o * f_t * w_f^(-b_f) * B',
  O: '(1 - u) * (F_m + F_s * B)',
  I_f: 'O / (1 + (O / A_f_)^10)^(1 / 10)',
};
const growthNames = {
  ...eatingNames,
  k_f: number('species.energy-retention', 'k'),
  e_f: number('species.energy-digestibility', '\\epsilon_E'),
  d_p: number('species.protein-digestibility', '\\epsilon_P'),
  D_f: number('feed.demand', 'D_F'),
  p_f: number('feed.protein', 'p_F'),
  p_n: number('protein.nitrogen', 'n_P'),
  p_d: number('protein.demand', 'd_P'),
  n_b_: number('species.body-nitrogen', 'n_B'),
  d_b: number('species.body-demand', 'd_B'),
  y_f: number('fish.fat-exponent', 'y'),
  r_p: number('fish.protein-retention', 'k_P'),
};
const growthEquationsOfFish = {
  ...eatingEquations,
  l_f: 'n_b_ * p_d / p_n',
  q_f: '(1 + y_f) * ((d_b - l_f) * w_f^y_f)^2',
  g_e: 'k_f * e_f * D_f * F_f / (l_f * F_f + q_f * B)',
  g_p: 'r_p * d_p * p_f * p_n / n_b_',
  G_f: 'I_f * g_e / (1 + (g_e / g_p)^4)^(1 / 4)',
};
const upkeepNames = {
  k_f: growthNames.k_f,
  M_f: number('species.maintenance', 'M'),
  th_f: number('fish.maintenance-theta', '\\theta_f'),
  T_f: number('species.reference-temperature', 'T_f'),
  x_f: number('fish.maintenance-exponent', 'x_f'),
  K_f: number('fish.k-oxygen', 'K_f'),
  a_l: number('fish.fasting-lean', 'a_l'),
};
const upkeepEquations = {
  w_f: eatingEquations.w_f,
  H_f: 'k_f * M_f * th_f^(T - T_f) * M(C_o2, K_f) * w_f^(x_f - 1) * B',
  s_f: 'F_f / (F_f + a_l * B)',
};
const deathNames = {
  d_f: number('species.mortality', 'd_f'),
  h_m: number('fish.hazard-highest', 'h_m'),
  T_c: number('species.lethal-temperature-low', 'T_c'),
  T_w: number('species.lethal-temperature-high', 'T_w'),
  t_h: number('fish.hazard-temperature', '\\delta_T'),
  h_o: number('fish.hazard-oxygen', 'h_{O_2}'),
  s_o: number('fish.hazard-oxygen-slope', 's_{O_2}'),
  L_o_: number('species.lethal-oxygen', 'L_{O_2}'),
  s_t: number('fish.hazard-slope', 's_t'),
  L_a: eatingNames.L_a,
  L_n: eatingNames.L_n,
  L_c: eatingNames.L_c,
  K_cl: eatingNames.K_cl,
  m_c: eatingNames.m_c,
  m_o: eatingNames.m_o,
};
const halving = '0.17328679513998632';
const bent = (hazard) => `(${hazard}) * h_m / ((${hazard}) + h_m)`;
const poison = (share) => bent(`${halving} * (${share})^s_t`);
const deathEquations = {
  n_e: eatingEquations.n_e,
  h_T: `d_f + ${bent(`${halving} * exp(min((T_c - T) / t_h, 50))`)} + ${bent(`${halving} * exp(min((T - T_w) / t_h, 50))`)}`,
  h_O: 'h_o * L_o_^s_o / (C_o2^s_o + h_o * L_o_^s_o / h_m)',
  h_A: poison('C_nh3 / L_a'),
  h_N: poison('n_e / L_n'),
  h_C: poison('C_co2 * (m_c + m_o) / L_c'),
  h_f: 'h_T + h_O + h_A + h_N + h_C',
};
const dying = (what) => ({ law: `h_f * ${what}`, equations: deathEquations, names: deathNames });
const rotNames = { k_r: number('fish.rot', 'k_r'), th_r: number('fish.rot-theta', '\\theta_r') };

export const lawsOfFish = {
  feeding: { law: 'I_f', equations: eatingEquations, names: eatingNames },
  'uneaten-feed': { law: 'F_m + F_s * B - I_f', equations: eatingEquations, names: eatingNames },
  growing: { law: 'G_f', equations: growthEquationsOfFish, names: growthNames },
  excretion: {
    law: 'd_p * p_f * p_n * I_f - n_b_ * G_f',
    equations: growthEquationsOfFish,
    names: growthNames,
  },
  'upkeep-fat': { law: 's_f * H_f', equations: upkeepEquations, names: upkeepNames },
  upkeep: { law: '(1 - s_f) * H_f', equations: upkeepEquations, names: upkeepNames },
  mortality: dying('B'),
  'mortality-fat': dying('F_f'),
  'mortality-count': dying('n'),
  'mortality-left': dying('B'),
  'mortality-left-fat': dying('F_f'),
  rot: { law: 'k_r * th_r^(T - 25) * Z', names: rotNames },
  'rot-fat': { law: 'k_r * th_r^(T - 25) * Z_f', names: rotNames },
};
