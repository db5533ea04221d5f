// The equations and stoichiometry of docs/model.md, from the processes and their laws. `npm run generate` writes them.
import { readFileSync } from 'node:fs';
import { table, withBlocks } from '../../../.tools/blocks.mjs';
import { compileModel, createParameters, processTable, readScenario, rowOf } from '../dist/index.js';
import { parseLaw, texOf } from './expression.mjs';
import { laws, namesUsed, standsFor } from './laws.mjs';
import { scopeTo } from '../dist/model/scope.js';
import { closeRow } from '../dist/model/stoichiometry.js';
import { conserved, contentOf, unitOf } from '../dist/processes/components.js';
import { processes } from '../dist/processes/index.js';

const document = new URL('../docs/model.md', import.meta.url);
const demo = new URL('../../cli/scenarios/glasshouse.yaml', import.meta.url);

/** Where a process works, in words. */
const placeWords = {
  water: 'in the water of each vessel',
  surface: 'on the surface of each vessel',
  floor: 'on the floor of each vessel',
  cohort: 'in each group of fish',
  batch: 'in each batch of a crop',
  lime: 'where lime may lie',
  doser: 'of each product of a doser',
};

/** Processes of a section of the document, in its order. */
const sections = {
  fish: [
    ...[
      'feeding',
      'uneaten-feed',
      'growing',
      'excretion',
      'upkeep-fat',
      'upkeep',
      'mortality',
      'mortality-fat',
    ],
    ...['mortality-count', 'mortality-left', 'mortality-left-fat', 'rot', 'rot-fat'],
  ],
  nitrifiers: [
    ...['ammonia-oxidation', 'ammonia-oxidation-idle', 'nitrite-oxidation', 'nitrite-oxidation-idle'],
    ...['aob-decay', 'nob-decay', 'acclimating', 'wakening'],
    ...['heterotroph-growth', 'heterotroph-loss'],
  ],
  solids: [
    ...['settling', 'settling-refractory', 'capture', 'capture-refractory'],
    ...['solids-hydrolysis', 'refractory-hydrolysis', 'refractory-sludge-hydrolysis'],
    ...['sludge-mineralisation', 'denitrification', 'sludge-fermentation'],
    ...['dissolved-oxidation', 'dissolved-denitrification', 'ammonification'],
  ],
  crops: ['crop-growing', 'nitrate-uptake', 'tan-uptake', 'calcium-uptake', 'fruit-growing'],
  gas: ['oxygen-exchange', 'carbon-dioxide-exchange', 'ammonia-loss', 'flood-oxygen', 'flood-carbon-dioxide'],
  lime: ['lime-dissolution', 'lime-scale'],
  dosers: ['dosing-by-ph', 'dosing-by-alkalinity'],
};

/** How an equation of its own is written. */
const equationTex = {
  F: 'F',
  z: 'z',
  f_a: '\\phi_A',
  f_n: '\\phi_N',
  s_h: '\\sigma',
  C_hno2: 'C_{HNO_2}',
  p_w: 'p_w',
  i_a: '\\iota_A',
  i_n: '\\iota_N',
  b_a: '\\beta_A',
  b_n: '\\beta_N',
  q_t: 'q',
  u_c: 'u',
  g_a: 'g_A',
  g_n: 'g_N',
  g_h: 'g_H',
  o_a: 'o_A',
  o_h: 'o_H',
  a_a: 'a_A',
  a_n: 'a_N',
  w: 'w',
  N_c: 'N_c',
  W_c: 'W_c',
  f_e: 'f_e',
  f_p: 'f_p',
  a_t: '\\alpha_t',
  s_a: 's_A',
  s_n: 's_N',
  c: 'c',
  G: 'G',
  w_f: 'w_f',
  f_T: 'f_T',
  f_o: 'f_{O_2}',
  n_e: 'C_{NO_2}^{eff}',
  f_t: 'f_t',
  A_f_: 'A_f',
  O: 'O',
  I_f: 'I',
  l_f: '\\ell',
  q_f: 'q',
  g_e: 'g_E',
  g_p: 'g_P',
  G_f: 'G_f',
  H_f: 'H',
  s_f: 's',
  h_T: 'h_T',
  h_O: 'h_{O_2}',
  h_A: 'h_{NH_3}',
  h_N: 'h_{NO_2}',
  h_C: 'h_{CO_2}',
  h_f: 'h',
  h: 'h',
  D: 'D',
  K_g: 'K_g',
  n_b: 'n',
  q_s: 'q',
  E_s: '\\epsilon',
  U_s: 'U',
  H_s: 'H',
  K_u: 'K_U',
};

const math = (lines) => ['```math', ...lines, '```'].join('\n');
const digits = (value) => String(Number(value.toPrecision(5)));

/** Names of the fish, the feed and the crop whose numbers are shown. */
const subject = {
  species: 'nile-tilapia',
  crop: 'lettuce-butterhead',
  feed: { name: 'grower-32', protein: 0.32 },
  product: 'potassium-hydroxide',
  lime: 'shell',
};

/** The table of coefficients of a process: how each comes, and what it is in the demo glasshouse. */
function stoichiometry(process, entries, values) {
  const terms = process.stoichiometry(values);
  return table(
    ['component', 'coefficient', 'how'],
    terms.map(({ component, coefficient, outside }) => {
      const entry = entries.find((each) => each.component === component && each.outside === outside);
      const shown = typeof coefficient === 'number' ? coefficient : (entry?.coefficient ?? 0);
      return [
        outside === undefined ? component : `${component}, account *${outside}*`,
        digits(shown),
        typeof coefficient === 'number' ? 'stated' : `closes ${coefficient.closes.replace('-', ' ')}`,
      ];
    }),
  );
}

/** One process: law, what its names stand for, stoichiometry. */
function told(process, entries, parameters, values) {
  const { id, title, place, unit, basis } = process;
  const law = laws[id];
  const write = (name) => equationTex[name] ?? standsFor(law, name).tex;
  const used = namesUsed(law);
  const equations = used
    .filter((name) => law.equations?.[name] !== undefined)
    .map((name) => `${write(name)} &= ${texOf(parseLaw(law.equations[name]), write)}`);
  const numbers = used
    .map((name) => standsFor(law, name))
    .filter((meant) => meant?.kind === 'number')
    .map(({ id: row, tex }) => {
      const full = row
        .replace(/^species/, `fish.${subject.species}`)
        .replace(/^feed\.(?=[a-z]+$)/, `feed.${subject.feed.name}.`)
        .replace(/^lime\.area$/, `lime.${subject.lime}.area`)
        .replace(/^crop\.(?=.)/, (found) => (parameters.has(row) ? found : `crop.${subject.crop}.`));
      const { unit: rowUnit } = rowOf(parameters, full);
      return [`$${tex}$`, `\`${row}\``, digits(values.value(row)), rowUnit === '1' ? '' : rowUnit];
    });
  const per = basis === 'volume' ? `${unit} per m3 and day` : `${unit} per day`;
  return [
    `#### ${title[0].toUpperCase()}${title.slice(1)}: \`${id}\``,
    '',
    `${placeWords[place][0].toUpperCase()}${placeWords[place].slice(1)}; rate in ${per}.`,
    '',
    math([`r = ${texOf(parseLaw(law.law), write)}`]),
    '',
    ...(equations.length === 0
      ? []
      : ['with', '', math(['\\begin{aligned}', equations.join(' \\\\\n'), '\\end{aligned}']), '']),
    ...(numbers.length === 0 ? [] : [table(['symbol', 'number', 'value', 'unit'], numbers), '']),
    stoichiometry(process, entries, values),
    '',
  ].join('\n');
}

/** Variables and conditions that the laws name. */
function symbols() {
  const seen = new Map();
  for (const law of Object.values(laws))
    for (const name of namesUsed(law)) {
      const meant = law.equations?.[name] === undefined ? standsFor(law, name) : undefined;
      if (meant?.says !== undefined) seen.set(meant.tex, meant.says);
    }
  return table(
    ['symbol', 'what it is'],
    [...seen].map(([tex, says]) => [`$${tex}$`, says]),
  );
}

/** What one unit of each component holds of what is conserved. */
function contents(values) {
  return table(
    ['component', 'counted in', ...conserved.map((quantity) => quantity.replace('-', ' '))],
    Object.entries(unitOf).map(([component, unit]) => {
      const held = contentOf(component, values);
      return [
        component,
        unit,
        ...conserved.map((quantity) => (held[quantity] === 0 ? '' : digits(held[quantity]))),
      ];
    }),
  );
}

/** The text of packages/core/docs/model.md. */
export function modelDocument() {
  const scenario = readScenario(readFileSync(demo, 'utf8'), { file: 'glasshouse.yaml' });
  const parameters = createParameters(scenario.overrides);
  const rows = processTable(compileModel(scenario, parameters));
  const values = scopeTo(parameters, subject);
  const entriesOf = (process) =>
    rows.find((row) => row.process === process.id)?.entries ?? closeRow(process, values);
  const untold = processes.filter(({ id }) => !Object.values(sections).flat().includes(id));
  if (untold.length > 0) throw new Error(`no section tells of ${untold.map(({ id }) => id).join(', ')}`);
  const section = (ids) =>
    ids
      .map((id) => {
        const process = processes.find((each) => each.id === id);
        return told(process, entriesOf(process), parameters, values);
      })
      .join('\n');
  return withBlocks(readFileSync(document, 'utf8'), {
    components: contents(values),
    symbols: symbols(),
    ...Object.fromEntries(Object.entries(sections).map(([name, ids]) => [name, section(ids)])),
  });
}
