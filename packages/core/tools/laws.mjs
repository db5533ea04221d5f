/**
 * The rate law of every process as it stands in docs/model.md. A test works each out and holds it against the code, and
 * holds the ids it names against those that the process reads, so that no law can go stale.
 */
import { namesOf, parseLaw, valueOf } from './expression.mjs';
import { number, shared } from './law-terms.mjs';
import { lawsOfFish } from './laws-of-fish.mjs';
import { lawsOfSolids } from './laws-of-solids.mjs';

/** Names of some laws only, and equations that they share. */
const transferNames = {
  v_t: number('biofilm.transfer', 'v'),
  th_t: number('biofilm.transfer-theta', '\\theta_v'),
  D_o: number('biofilm.transfer-oxygen', 'D_{O_2}'),
};
const transferEquation = { q_t: 'v_t * th_t^(T - 20) * A_s' };
const coverNames = {
  H_c: number('heterotroph.cover', 'h'),
  c_m: number('heterotroph.cover-most', 'c_{most}'),
};
const coverEquation = { u_c: '1 - c_m * M(X_h, H_c * A_s)' };
const filmNames = {
  ...transferNames,
  ...coverNames,
  m_o: number('molar.oxygen-gas', 'm_{O_2}'),
  m_n: number('molar.nitrogen', 'm_N'),
  x: number('biofilm.capacity', 'x'),
  Y_a: number('aob.yield', 'Y_A'),
  Y_n: number('nob.yield', 'Y_N'),
  p_h: number('nitrous.pk', 'p_{HNO_2}'),
};
const filmEquations = {
  ...transferEquation,
  ...coverEquation,
  s_h: '1 / (1 + 10^(pH - p_h))',
  C_hno2: 's_h * C_no2',
};
const aobNames = {
  ...filmNames,
  mu_a: number('aob.growth', '\\mu_A'),
  th_a: number('aob.growth-theta', '\\theta_A'),
  K_a: number('aob.k-tan', 'K_A'),
  K_ao: number('aob.k-oxygen', 'K_{A,O_2}'),
  K_ac: number('aob.k-carbon', 'K_{A,C}'),
  K_ai: number('aob.ki-ammonia', 'K_{A,NH_3}'),
  K_ah: number('aob.ki-nitrous', 'K_{A,HNO_2}'),
  high_a: number('aob.ph-high', 'p_{A,high}'),
  K_as: number('aob.k-salt', 'K_{A,s}'),
  n_as: number('aob.salt-power', 'n_A'),
};
const aobEquations = {
  ...filmEquations,
  f_a: 'X_a / (x * A_s * Y_a / (Y_a + Y_n))',
  b_a: '1 / (1 + 10^(p - pH) + 10^(pH - high_a))',
  i_a: 'I(C_nh3, K_ai) * I(C_hno2, K_ah)',
  s_a: '1 / (1 + (m_I / K_as)^n_as)',
  g_a: 'mu_a * th_a^(T - 20) * M(C_c, K_ac) * b_a * i_a * s_a * X_a * w_f',
  o_a: 'J(C_o2, g_a, K_ao, D_o * q_t * Y_a * m_n / (2 * m_o))',
  a_a: 'u_c * J(C_tan, o_a, K_a, q_t * Y_a)',
};
const nobNames = {
  ...filmNames,
  mu_n: number('nob.growth', '\\mu_N'),
  th_n: number('nob.growth-theta', '\\theta_N'),
  K_n: number('nob.k-nitrite', 'K_N'),
  K_no: number('nob.k-oxygen', 'K_{N,O_2}'),
  K_nc: number('nob.k-carbon', 'K_{N,C}'),
  K_ni: number('nob.ki-ammonia', 'K_{N,NH_3}'),
  K_nh: number('nob.ki-nitrous', 'K_{N,HNO_2}'),
  high_n: number('nob.ph-high', 'p_{N,high}'),
  K_ns: number('nob.k-salt', 'K_{N,s}'),
  n_ns: number('nob.salt-power', 'n_N'),
};
const nobEquations = {
  ...filmEquations,
  f_n: 'X_n / (x * A_s * Y_n / (Y_a + Y_n))',
  b_n: '1 / (1 + 10^(p - pH) + 10^(pH - high_n))',
  i_n: 'I(C_nh3, K_ni) * I(C_hno2, K_nh)',
  s_n: '1 / (1 + (m_I / K_ns)^n_ns)',
  g_n: 'mu_n * th_n^(T - 20) * M(C_no2, K_n) * M(C_c, K_nc) * b_n * i_n * s_n * X_n * w_f',
  a_n: 'u_c * J(C_o2, g_n, K_no, D_o * q_t * Y_n * m_n / (2 * m_o))',
};

const cropNames = {
  g: number('crop.growth', 'g'),
  T_opt: number('crop.optimum-temperature', 'T_{opt}'),
  T_b: number('crop.base-temperature', 'T_b'),
  l: number('crop.light-use', '\\lambda'),
  K_I: number('crop.k-light', 'K_I'),
  i_e: number('water.ionic-per-conductivity', 'i_e'),
  d_e: number('crop.salt-dilution', 'd_e'),
  E_t: number('crop.salt-threshold', 'E_t'),
  E_s: number('crop.salt-slope', 'E_s'),
  p_c: number('crop.ph-high', 'p_c'),
  s_c: number('crop.ph-slope', 's_c'),
  p_h: number('crop.ph-half', 'p_h'),
  a: number('crop.nitrogen-a', 'a'),
  b: number('crop.nitrogen-b', 'b'),
  p: number('crop.nitrogen-plateau', 'p'),
  n_l: number('crop.nitrogen-least', 'n_l'),
  t_r: number('crop.recovery-time', 't_r'),
  n_f: number('crop.fruit-nitrogen', 'n_f'),
};
const growthEquations = {
  w: 'W / (100 * A)',
  N_c: 'a * (w^4 + p^4)^(-b / 4)',
  W_c: 'l * A * (K_I + I) / (g * (T_opt - T_b))',
  f_e: 'max(0, 1 - E_s * max(0, m_I / (i_e * d_e) - E_t))',
  c: 'f_e * l * I * A * max(0, min(T_air, T_opt) - T_b) / (T_opt - T_b)',
  f_p: '1 / (1 + s_c * B(pH - p_c, 0.1) + 10^(p_h - pH))',
  G: 'f_p * c * (1 - exp(-W / W_c)) * max(0, 1 - n_l * N_c * W / N) / (1 - n_l)',
};
const cropEquations = {
  ...growthEquations,
  h: 'b / (1 + (p / w)^4)',
  D: 'max(0, ((1 - b_f) * (1 - h) * N_c + b_f * n_f) * G + (N_c * W - N) / t_r)',
};

const uptakeEquations = {
  ...cropEquations,
  a_t: 's_t * M(C_tan, K_t) / (1 + 10^(p_t - pH))',
};
const uptakeNames = {
  ...cropNames,
  K_t: number('crop.k-tan', 'K_t'),
  s_t: number('crop.tan-share', 's'),
  p_t: number('crop.tan-ph-half', 'p_t'),
};

const gasNames = {
  th_g: number('gas.theta', '\\theta_g'),
  v_o: number('gas.surface-velocity', 'v_{O_2}'),
};
const gasEquations = { K_g: 'th_g^(T - 20) * (k_air * V + v_o * A_o)' };

/**
 * By process id: the law, the equations it uses (in order), and the names that stand for numbers. `given` names what is
 * worked out elsewhere, with where.
 */
export const laws = {
  ...lawsOfFish,
  'ammonia-oxidation': { law: 'a_a * (1 - f_a)', equations: aobEquations, names: aobNames },
  'ammonia-oxidation-idle': { law: 'a_a * f_a / Y_a', equations: aobEquations, names: aobNames },
  'nitrite-oxidation': { law: 'a_n * (1 - f_n)', equations: nobEquations, names: nobNames },
  'nitrite-oxidation-idle': { law: 'a_n * f_n / Y_n', equations: nobEquations, names: nobNames },
  'aob-decay': {
    law: 'd_a * th_da^(T - 20) * M(C_o2, K_ao) * X_a * u_c',
    equations: coverEquation,
    names: {
      ...coverNames,
      d_a: number('aob.decay', 'd_A'),
      th_da: number('aob.decay-theta', '\\theta_{d,A}'),
      K_ao: aobNames.K_ao,
    },
  },
  'nob-decay': {
    law: 'd_n * th_dn^(T - 20) * M(C_o2, K_no) * X_n * u_c',
    equations: coverEquation,
    names: {
      ...coverNames,
      d_n: number('nob.decay', 'd_N'),
      th_dn: number('nob.decay-theta', '\\theta_{d,N}'),
      K_no: nobNames.K_no,
    },
  },
  acclimating: {
    law: '(p_w - p) / t_p',
    equations: { p_w: 'p_l + B(p_f - p_l - B(p_f + p_d - pH, 0.1), 0.1)' },
    names: {
      p_f: number('nitrifier.flank-fresh', 'p_f'),
      p_d: number('nitrifier.flank-distance', 'p_d'),
      p_l: number('nitrifier.flank-lowest', 'p_l'),
      t_p: number('nitrifier.acclimation-time', 't_p'),
    },
  },
  wakening: {
    law: 'k_w * M(C_o2, K_ao) * (1 - w_f) - k_z * (1 - M(C_o2, K_ao))^2 * w_f',
    names: {
      k_w: number('biofilm.wakening', 'k_w'),
      k_z: number('biofilm.stunning', 'k_z'),
      K_ao: aobNames.K_ao,
    },
  },
  'heterotroph-growth': {
    law: 'J(C_d, o_h, K_hd, D_d * q_t * Y_h)',
    equations: {
      ...transferEquation,
      g_h: 'mu_h * th_h^(T - 20) * M(C_tan, K_hn) * (X_h + H_0 * A_s)',
      o_h: 'J(C_o2, g_h, K_ho, D_o * q_t * Y_h / (1 - Y_h))',
    },
    names: {
      ...transferNames,
      D_d: number('biofilm.transfer-dissolved', 'D_D'),
      mu_h: number('heterotroph.growth', '\\mu_H'),
      th_h: number('heterotroph.growth-theta', '\\theta_H'),
      K_hd: number('heterotroph.k-dissolved', 'K_{H,D}'),
      K_ho: number('heterotroph.k-oxygen', 'K_{H,O_2}'),
      K_hn: number('heterotroph.k-tan', 'K_{H,TAN}'),
      Y_h: number('heterotroph.yield', 'Y_H'),
      H_0: number('heterotroph.attached', 'h_0'),
    },
  },
  'heterotroph-loss': {
    law: 'd_h * th_dh^(T - 20) * X_h',
    names: {
      d_h: number('heterotroph.decay', 'd_H'),
      th_dh: number('heterotroph.decay-theta', '\\theta_{d,H}'),
    },
  },
  ...lawsOfSolids,
  'crop-growing': { law: '(1 - b_f) * G', equations: growthEquations, names: cropNames },
  'nitrate-uptake': {
    law: 'D * M(C_no3, K_c) * (1 - a_t)',
    equations: uptakeEquations,
    names: { ...uptakeNames, K_c: number('crop.k-nitrate', 'K_c') },
  },
  'tan-uptake': { law: 'D * a_t', equations: uptakeEquations, names: uptakeNames },
  'calcium-uptake': {
    law: 'x_c / M_n * D * (M(C_no3, K_c) * (1 - a_t) + a_t) * M(C_ca, K_x)',
    equations: uptakeEquations,
    names: {
      ...uptakeNames,
      K_c: number('crop.k-nitrate', 'K_c'),
      x_c: number('crop.calcium', 'x_{Ca}'),
      K_x: number('crop.k-calcium', 'K_{Ca}'),
      M_n: number('molar.nitrogen', 'M_N'),
    },
  },
  'fruit-growing': { law: 'b_f * G', equations: growthEquations, names: cropNames },
  'oxygen-exchange': {
    law: 'K_g * (O_sat - C_o2)',
    equations: gasEquations,
    names: gasNames,
    given: {
      O_sat: { tex: 'C_{O_2}^{sat}(T, P)', says: 'saturation of oxygen, g/m3: `chemistry/gases.ts`' },
    },
  },
  'carbon-dioxide-exchange': {
    law: 'c * th_g^(T - 20) * (k_air * V * phi(n_b) + v_o * A_o) * (C_sat - C_co2)',
    equations: { n_b: 'c * th_g^(T - 20) * o_air / (L_o * H_c)' },
    names: {
      ...gasNames,
      c: number('gas.carbon-dioxide-ratio', 'c'),
      L_o: number('gas.oxygen-solubility', 'L_{O_2}'),
    },
    given: {
      H_c: {
        tex: 'H_{CO_2}(T)',
        says: 'carbon dioxide in air over that in water at rest with it, by volume: `chemistry/acid-base.ts`',
      },
      C_sat: {
        tex: 'C_{CO_2}^{sat}(T, P)',
        says: 'saturation of carbon dioxide under the air of the place, mol/m3: `chemistry/acid-base.ts`',
      },
    },
  },
  'ammonia-loss': {
    law: 'v_n * exp(c_n * (T - 20)) * A_o * C_nh3',
    names: { v_n: number('gas.ammonia-velocity', 'v_N'), c_n: number('gas.ammonia-exponent', 'c_N') },
  },
  'flood-oxygen': {
    law: 'f_w * min(D_w, Q) * (O_sat - C_o2) / (1 + L_o)',
    names: { f_w: number('gas.flood-contact', 'f_w'), L_o: number('gas.oxygen-solubility', 'L_{O_2}') },
    given: {
      O_sat: { tex: 'C_{O_2}^{sat}(T, P)', says: 'saturation of oxygen, g/m3: `chemistry/gases.ts`' },
    },
  },
  'flood-carbon-dioxide': {
    law: 'f_w * min(D_w, Q) * H_c * (C_sat - C_co2) / (1 + H_c)',
    names: { f_w: number('gas.flood-contact', 'f_w') },
    given: {
      H_c: {
        tex: 'H_{CO_2}(T)',
        says: 'carbon dioxide in air over that in water at rest with it, by volume: `chemistry/acid-base.ts`',
      },
      C_sat: {
        tex: 'C_{CO_2}^{sat}(T, P)',
        says: 'saturation of carbon dioxide under the air of the place, mol/m3: `chemistry/acid-base.ts`',
      },
    },
  },
  'lime-dissolution': {
    law: 'f_l * a_l * M_c * L * (k_1 * 1000 * 10^(-pH) + k_2 * C_co2 + k_3) * 1.01 * z^2 / (z + 0.01)',
    equations: { z: 'max(0, 1 - C_ca * s_c)' },
    names: {
      f_l: number('lime.active', 'f_L'),
      a_l: number('lime.area', 'a_L'),
      M_c: number('molar.calcium-carbonate', 'M_{CaCO_3}'),
    },
    given: {
      k_1: { tex: 'k_1(T)', says: 'attack of hydrogen ions on clean calcite, m/d: `chemistry/calcite.ts`' },
      k_2: { tex: 'k_2(T)', says: 'attack of carbon dioxide on clean calcite, m/d: `chemistry/calcite.ts`' },
      k_3: { tex: 'k_3(T)', says: 'attack of water on clean calcite, mol/(m2 d): `chemistry/calcite.ts`' },
    },
  },
  'lime-scale': {
    law: 'r_l * A_s * z^2 / (z + s_l)',
    equations: { z: 'max(0, C_ca * s_c - s_l)' },
    names: { r_l: number('lime.scale-rate', 'r_L'), s_l: number('lime.scale-onset', '\\Omega_0') },
  },
  'dosing-by-ph': { law: 'm * sigma(q_d * (p_0 - pH) / d)', names: {} },
  'dosing-by-alkalinity': { law: 'm * sigma(q_d * (p_0 - C_alk) / d)', names: {} },
};

/** What a name of a law stands for; undefined where it is an equation of its own. */
export const standsFor = (law, name) => law.names[name] ?? law.given?.[name] ?? shared[name];

/**
 * The rate of a process by its law.
 *
 * @param id of the process
 * @param look gives the value of what a name stands for; for a value that is given, its name
 */
export function rateByLaw(id, look) {
  const law = laws[id];
  const known = new Map();
  const value = (name) => {
    const equation = law.equations?.[name];
    if (equation === undefined) {
      const meant = standsFor(law, name);
      if (meant === undefined) throw new Error(`${id}: nothing is said of ${name}`);
      return look(meant.kind === undefined ? { kind: 'given', name } : meant);
    }
    if (!known.has(name)) known.set(name, valueOf(parseLaw(equation), value));
    return known.get(name);
  };
  return valueOf(parseLaw(law.law), value);
}

/** Names that a law and its equations use, each once, in the order in which they come. */
export function namesUsed(law) {
  const seen = new Set();
  const visit = (text) => {
    for (const name of namesOf(parseLaw(text))) {
      if (seen.has(name)) continue;
      seen.add(name);
      if (law.equations?.[name] !== undefined) visit(law.equations[name]);
    }
  };
  visit(law.law);
  return [...seen];
}
