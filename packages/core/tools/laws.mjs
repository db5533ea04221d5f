/**
 * The rate law of every process as it stands in docs/model.md. A test works each out and holds it against the code, and
 * holds the ids it names against those that the process reads, so that no law can go stale.
 */
import { namesOf, parseLaw, valueOf } from './expression.mjs';

/** What a name of a law stands for: a variable of the state, a condition of the place, or a number of the tables. */
const variable = (name, tex, says) => ({ kind: 'variable', name, tex, says });
const condition = (name, tex, says) => ({ kind: 'condition', name, tex, says });
const number = (id, tex) => ({ kind: 'number', id, tex });

/** Names that all laws may use. */
const shared = {
  C_tan: variable('tan', 'C_{TAN}', 'total ammonia nitrogen, g N/m3'),
  C_no2: variable('nitrite', 'C_{NO_2}', 'nitrite, g N/m3'),
  C_no3: variable('nitrate', 'C_{NO_3}', 'nitrate, g N/m3'),
  C_o2: variable('oxygen', 'C_{O_2}', 'oxygen, g/m3'),
  C_s: variable('solids', 'C_S', 'suspended solids, g dry/m3'),
  C_c: variable('carbon', 'C_T', 'inorganic carbon, mol/m3'),
  C_alk: variable('alkalinity', 'C_{Alk}', 'alkalinity, eq/m3'),
  C_nh3: variable('ammonia', 'C_{NH_3}', 'un-ionised ammonia, g N/m3'),
  C_co2: variable('carbon-dioxide', 'C_{CO_2}', 'dissolved carbon dioxide, mol/m3'),
  C_ca: variable('calcium', 'C_{Ca}', 'calcium, mol/m3'),
  s_c: variable('saturation', '\\omega', 'carbonate over the solubility of calcite, m3/mol'),
  L: variable('calcite', 'L', 'lime, mol'),
  pH: variable('pH', '\\mathrm{pH}', 'acidity'),
  X_a: variable('aob', 'X_A', 'ammonia oxidisers on the surface, g COD'),
  X_n: variable('nob', 'X_N', 'nitrite oxidisers on the surface, g COD'),
  p: variable('acclimation', 'p', 'lower flank of the bell of the film, pH'),
  S: variable('settled', 'S', 'settled solids, g dry'),
  W: variable('crop-mass', 'W', 'crop of a batch, g dry'),
  N: variable('crop-nitrogen', 'N', 'nitrogen in it, g N'),
  B: variable('fish-mass', 'B', 'fish of a group, g'),
  n: variable('fish-number', 'n', 'fish of a group'),
  T: condition('temperature', 'T', 'water temperature, degC'),
  T_air: condition('air', 'T_{air}', 'air temperature, degC'),
  V: condition('volume', 'V', 'volume at the standpipe, m3'),
  A_s: condition('surface', 'A_s', 'wetted surface, m2'),
  A_o: condition('open', 'A_o', 'open water, m2'),
  A_f: condition('floor', 'A_f', 'floor, m2'),
  A: condition('area', 'A', 'area of the batch, m2'),
  e: condition('capture', 'e', 'share of incoming solids caught'),
  k_air: condition('aeration', 'k_L a', 'aeration now, at 20 degC, 1/d'),
  o_air: condition('airShare', 's', 'share of its oxygen that the air of the aeration gives up'),
  Q: condition('inflow', 'Q', 'water that flows through, m3/d'),
  m: condition('most', 'm', 'most that the doser gives of one product now, g/d'),
  p_0: condition('setPoint', 'p_0', 'what the doser holds: pH, or alkalinity in eq/m3'),
  d: condition('band', 'd', 'how far beyond it the doser gives its most'),
  q_d: condition('sign', 'q', '1 where the doser gives a base, -1 where it gives an acid'),
  F_m: condition('fed', 'F_m', 'feed offered as a mass, g/d'),
  F_s: condition('fedShare', 'F_s', 'feed offered as a share of body mass, 1/d'),
};

/** Names of some laws only, and equations that they share. */
const fishNames = { K_f: number('fish.k-oxygen', 'K_{f}'), u: number('fish.uneaten', 'u') };
const fed = { F: 'F_m + F_s * B' };

const filmNames = {
  x: number('biofilm.capacity', 'x'),
  Y_a: number('aob.yield', 'Y_A'),
  Y_n: number('nob.yield', 'Y_N'),
  p_h: number('nitrous.pk', 'p_{HNO_2}'),
};
const filmEquations = { s_h: '1 / (1 + 10^(pH - p_h))', C_hno2: 's_h * C_no2' };
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
};
const aobEquations = {
  ...filmEquations,
  f_a: 'X_a / (x * A_s * Y_a / (Y_a + Y_n))',
  b_a: '1 / (1 + 10^(p - pH) + 10^(pH - high_a))',
  i_a: 'I(C_nh3, K_ai) * I(C_hno2, K_ah)',
  a_a: 'mu_a * th_a^(T - 20) * M(C_tan, K_a) * M(C_o2, K_ao) * M(C_c, K_ac) * b_a * i_a * X_a',
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
};
const nobEquations = {
  ...filmEquations,
  f_n: 'X_n / (x * A_s * Y_n / (Y_a + Y_n))',
  b_n: '1 / (1 + 10^(p - pH) + 10^(pH - high_n))',
  i_n: 'I(C_nh3, K_ni) * I(C_hno2, K_nh)',
  a_n: 'mu_n * th_n^(T - 20) * M(C_no2, K_n) * M(C_o2, K_no) * M(C_c, K_nc) * b_n * i_n * X_n',
};

const solidsNames = {
  th_s: number('solids.theta', '\\theta_S'),
  K_s: number('solids.k-oxygen', 'K_S'),
};
const settledNames = {
  ...solidsNames,
  k_s: number('solids.mineralisation-settled', 'k_{S}'),
  x_s: number('solids.exposed', '\\epsilon'),
};

const cropNames = {
  g: number('crop.growth', 'g'),
  T_opt: number('crop.optimum-temperature', 'T_{opt}'),
  T_b: number('crop.base-temperature', 'T_b'),
  m_f: number('crop.final-mass', 'm_f'),
  a: number('crop.nitrogen-a', 'a'),
  b: number('crop.nitrogen-b', 'b'),
  p: number('crop.nitrogen-plateau', 'p'),
  N_min: number('crop.nitrogen-minimum', 'N_{min}'),
  t_r: number('crop.recovery-time', 't_r'),
};
const growthEquations = {
  w: 'W / (100 * A)',
  N_c: 'a * (w^4 + p^4)^(-b / 4)',
  G: 'g * max(0, min(T_air, T_opt) - T_b) * W * (1 - W / (m_f * A)) * (1 - N_min * W / N) / (1 - N_min / N_c)',
};
const cropEquations = {
  ...growthEquations,
  h: 'b / (1 + (p / w)^4)',
  D: 'max(0, (1 - h) * N_c * G + (N_c * W - N) / t_r)',
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
  feeding: { law: 'F * (1 - u) * M(C_o2, K_f)', equations: fed, names: fishNames },
  'uneaten-feed': { law: 'F * (1 - (1 - u) * M(C_o2, K_f))', equations: fed, names: fishNames },
  upkeep: {
    law: 'q * th_f^(T - T_f) * M(C_o2, K_f) * B',
    names: {
      q: number('species.fasting-loss', 'q'),
      th_f: number('fish.fasting-theta', '\\theta_f'),
      T_f: number('species.reference-temperature', 'T_f'),
      K_f: fishNames.K_f,
    },
  },
  mortality: { law: 'd_f * B', names: { d_f: number('species.mortality', 'd_f') } },
  'mortality-count': { law: 'd_f * n', names: { d_f: number('species.mortality', 'd_f') } },
  'ammonia-oxidation': { law: 'a_a * (1 - f_a)', equations: aobEquations, names: aobNames },
  'ammonia-oxidation-idle': { law: 'a_a * f_a / Y_a', equations: aobEquations, names: aobNames },
  'nitrite-oxidation': { law: 'a_n * (1 - f_n)', equations: nobEquations, names: nobNames },
  'nitrite-oxidation-idle': { law: 'a_n * f_n / Y_n', equations: nobEquations, names: nobNames },
  'aob-decay': {
    law: 'd_a * th_da^(T - 20) * M(C_o2, K_ao) * X_a',
    names: {
      d_a: number('aob.decay', 'd_A'),
      th_da: number('aob.decay-theta', '\\theta_{d,A}'),
      K_ao: aobNames.K_ao,
    },
  },
  'nob-decay': {
    law: 'd_n * th_dn^(T - 20) * M(C_o2, K_no) * X_n',
    names: {
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
  'solids-mineralisation': {
    law: 'k_w * th_s^(T - 20) * M(C_o2, K_s) * C_s',
    names: { k_w: number('solids.mineralisation-suspended', 'k_{w}'), ...solidsNames },
  },
  'sludge-mineralisation': { law: 'k_s * th_s^(T - 20) * x_s * M(C_o2, K_s) * S', names: settledNames },
  denitrification: {
    law: 'k_s * th_s^(T - 20) * y * (1 - x_s * M(C_o2, K_s)) * M(C_no3, K_d) * S',
    names: {
      ...settledNames,
      y: number('denitrification.activity', '\\eta'),
      K_d: number('denitrification.k-nitrate', 'K_D'),
    },
  },
  settling: { law: 'v_s * A_f * C_s', names: { v_s: number('solids.settling-velocity', 'v_S') } },
  capture: { law: 'Q * e / (1 - e) * C_s', names: {} },
  'crop-growing': { law: 'G', equations: growthEquations, names: cropNames },
  'nitrate-uptake': {
    law: 'D * M(C_no3, K_c) * (1 - s_t * M(C_tan, K_t))',
    equations: cropEquations,
    names: {
      ...cropNames,
      K_c: number('crop.k-nitrate', 'K_c'),
      K_t: number('crop.k-tan', 'K_t'),
      s_t: number('crop.tan-share', 's'),
    },
  },
  'tan-uptake': {
    law: 'D * s_t * M(C_tan, K_t)',
    equations: cropEquations,
    names: { ...cropNames, K_t: number('crop.k-tan', 'K_t'), s_t: number('crop.tan-share', 's') },
  },
  'calcium-uptake': {
    law: 'x_c / M_n * D * (M(C_no3, K_c) * (1 - s_t * M(C_tan, K_t)) + s_t * M(C_tan, K_t)) * M(C_ca, K_x)',
    equations: cropEquations,
    names: {
      ...cropNames,
      K_c: number('crop.k-nitrate', 'K_c'),
      K_t: number('crop.k-tan', 'K_t'),
      s_t: number('crop.tan-share', 's'),
      x_c: number('crop.calcium', 'x_{Ca}'),
      K_x: number('crop.k-calcium', 'K_{Ca}'),
      M_n: number('molar.nitrogen', 'M_N'),
    },
  },
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
