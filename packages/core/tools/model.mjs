// The equations and stoichiometry of docs/model.md, from the processes and their laws. `npm run generate` writes them.
import { readFileSync } from 'node:fs';
import { table, withBlocks } from '../../../.tools/blocks.mjs';
import { compileModel, createParameters, processTable, readScenario } from '../dist/index.js';
import { parseLaw, texOf } from './expression.mjs';
import { laws, namesUsed, standsFor } from './laws.mjs';
import { scopeTo } from '../dist/model/scope.js';
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
  fish: ['feeding', 'uneaten-feed', 'upkeep', 'mortality', 'mortality-count'],
  nitrifiers: [
    ...['ammonia-oxidation', 'ammonia-oxidation-idle', 'nitrite-oxidation', 'nitrite-oxidation-idle'],
    ...['aob-decay', 'nob-decay', 'acclimating'],
  ],
  solids: ['solids-mineralisation', 'sludge-mineralisation', 'denitrification', 'settling', 'capture'],
  crops: ['crop-growing', 'nitrate-uptake', 'tan-uptake', 'calcium-uptake'],
  gas: ['oxygen-exchange', 'carbon-dioxide-exchange', 'ammonia-loss'],
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
  a_a: 'a_A',
  a_n: 'a_N',
  w: 'w',
  N_c: 'N_c',
  G: 'G',
  h: 'h',
  D: 'D',
  K_g: 'K_g',
  n_b: 'n',
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
        .replace(/^lime\.area$/, `lime.${subject.lime}.area`)
        .replace(/^crop\.(?=.)/, (found) => (parameters.has(row) ? found : `crop.${subject.crop}.`));
      const { unit: rowUnit } = parameters.row(full);
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
  const entriesOf = (id) => rows.find(({ process }) => process === id)?.entries ?? [];
  const untold = processes.filter(({ id }) => !Object.values(sections).flat().includes(id));
  if (untold.length > 0) throw new Error(`no section tells of ${untold.map(({ id }) => id).join(', ')}`);
  const section = (ids) =>
    ids
      .map((id) =>
        told(
          processes.find((each) => each.id === id),
          entriesOf(id),
          parameters,
          values,
        ),
      )
      .join('\n');
  return withBlocks(readFileSync(document, 'utf8'), {
    components: contents(values),
    symbols: symbols(),
    ...Object.fromEntries(Object.entries(sections).map(([name, ids]) => [name, section(ids)])),
  });
}
