// The tables of packages/cli/docs/system-file.md, from the JSON Schema of a system file. `npm run generate` writes them.
import { readFileSync } from 'node:fs';
import { parse } from 'yaml';
import { table, withBlocks } from '../../../.tools/blocks.mjs';
import { exampleQuantities } from '../dist/base/units.js';
import { scenarioJsonSchema } from '../dist/scenario/json-schema.js';

const document = new URL('../../cli/docs/system-file.md', import.meta.url);

const dimensions = [
  ...[
    'length',
    'area',
    'volume',
    'mass',
    'time',
    'temperature',
    'volume-flow',
    'mass-flow',
    'depth-rate',
    'rate',
    'mole-share',
    'share',
  ],
  ...[
    'share-rate',
    'concentration',
    'ammonia',
    'nitrite',
    'nitrate',
    'alkalinity',
    'radiation',
    'light',
    'speed',
  ],
];

/** Forms that have a section of their own, by what tells them. */
const forms = {
  'a value for each day': '[a value for each day](#a-value-for-each-day)',
  'water that follows the air': '[water that follows the air](#water-that-follows-the-air)',
  weather: '[weather](#evapotranspiration-from-weather)',
  light: '[light](#light-on-the-crops)',
  water: 'map of the keys of [`waters`](#waters) and `solids`',
  column: '`{ column: NAME, unit: UNIT }`',
  action: '[one action](#actions)',
};

const same = (a, b) => JSON.stringify(a) === JSON.stringify(b);

/** `what it is; range: ...; default: ...` taken apart. */
function said(description = '') {
  const [, what, range, usual] = /^(.*?)(?:; range: (.*?))?(?:; default: (.*))?$/.exec(description);
  return { what, range, usual };
}

/** The form of a map that is told elsewhere; undefined where its keys are listed where it stands. */
function formOf({ properties = {} }) {
  if ('monthly' in properties) return 'a value for each day';
  if ('follows' in properties) return 'water that follows the air';
  if ('weather' in properties) return 'weather';
  if ('lamps' in properties) return 'light';
  if (same(Object.keys(properties), ['column', 'unit'])) return 'column';
  if ('solids' in properties && 'like' in properties) return 'water';
  if ('harvest-fish' in properties && !('at' in properties)) return 'action';
  return undefined;
}

/** In what a value is written: the words of the second column. */
function writtenAs(schema) {
  const { type, examples, enum: words, anyOf, items } = schema;
  if (anyOf !== undefined) {
    const parts = anyOf.map((each) => writtenAs({ ...each, examples: each.examples ?? undefined }));
    return [...new Set(parts.flatMap((part) => part.split(', or ')))].join(', or ');
  }
  if (words !== undefined) return words.map((word) => `\`${word}\``).join(', ');
  if (schema.const !== undefined) return `\`${schema.const}\``;
  if (Array.isArray(type))
    return examples !== undefined && examples.includes('60 %')
      ? '[share](#quantities)'
      : 'quantity, or number';
  if (type === 'integer') return 'whole number';
  if (type === 'number') return 'number';
  if (type === 'boolean') return '`true` or `false`';
  if (type === 'array')
    return items.properties === undefined ? `list of: ${writtenAs(items)}` : 'list of maps';
  if (type === 'object') return forms[formOf(schema)] ?? 'map';
  const dimension = dimensions.find((each) => same(examples, [...exampleQuantities(each)]));
  if (dimension !== undefined) return `[${dimension.replace('-', ' ')}](#quantities)`;
  if (same(examples, ['80 g/d', '1.5 %/d'])) return '[mass flow](#quantities), or [share rate](#quantities)';
  if (same(examples, ['160 L/d', '1 m3/week'])) return '[volume flow](#quantities) by the day or the week';
  if (examples !== undefined && examples.includes('2026-03-01 14:30')) return '[moment](#moments)';
  if (same(examples, ['2026-03-01'])) return 'date';
  return examples === undefined ? 'text' : 'text such as the example';
}

function rangeOf(schema) {
  const { minimum, maximum } = schema;
  const { range } = said(schema.description);
  if (range !== undefined) return range;
  if (minimum === undefined) return '';
  if (maximum >= Number.MAX_SAFE_INTEGER) return `${minimum} or more`;
  return Math.abs(minimum) >= 1e12 ? 'that of the number' : `${minimum} to ${maximum}`;
}

/** The first value that the examples of the document have at a path of keys; `*` is any name or place in a list. */
function exampleAt(value, path) {
  if (value === undefined || value === null) return undefined;
  if (path.length === 0) return value;
  const [key, ...rest] = path;
  if (typeof value !== 'object') return undefined;
  const next = key === '*' ? Object.values(value) : [value[key]];
  for (const each of next) {
    const found = exampleAt(each, rest);
    if (found !== undefined) return found;
  }
  return undefined;
}

/** A value as one line of YAML. */
function inline(value) {
  if (Array.isArray(value)) return `[${value.map(inline).join(', ')}]`;
  if (typeof value === 'object')
    return `{ ${Object.entries(value)
      .map(([key, each]) => `${key}: ${inline(each)}`)
      .join(', ')} }`;
  return String(value);
}

/** Rows of a table: one a key, maps within maps by `outer.inner`, entries of a list by `list[].key`. */
function rowsOf(schema, path, example, prefix = '') {
  const needed = new Set(schema.required ?? []);
  return Object.entries(schema.properties).flatMap(([key, inner]) => {
    const name = `${prefix}${key}`;
    const at = [...path, key];
    const branches = inner.anyOf ?? [inner];
    const maps = branches.filter(
      (each) => each.type === 'object' && each.properties !== undefined && formOf(each) === undefined,
    );
    const lists = branches.filter(
      (each) => each.type === 'array' && (each.items.properties ?? each.items.anyOf) !== undefined,
    );
    const description =
      inner.description ??
      branches.flatMap((each) => each.anyOf ?? [each]).find((each) => each.description)?.description;
    const { what, usual } = said(description);
    if (!needed.has(key) && usual === undefined) throw new Error(`${at.join('.')}: no default is said`);
    const shown = example(at) ?? inner.examples?.[0];
    if (shown === undefined) throw new Error(`${at.join('.')}: no example in docs/system-file.md`);
    const nested = [
      ...maps.flatMap((map) => rowsOf(map, at, example, `${name}.`)),
      ...lists.flatMap(({ items }) =>
        (items.anyOf ?? [items])
          .filter((each) => each.properties !== undefined)
          .flatMap((each) => rowsOf(each, [...at, '*'], example, `${name}[].`)),
      ),
    ];
    const text = inline(shown);
    const short = text.length > 60 ? 'above' : `\`${text}\``;
    const range = rangeOf({ ...inner, description });
    return [
      [`\`${name}\``, what, writtenAs(inner), range, needed.has(key) ? '**needed**' : usual, short],
      ...nested,
    ];
  });
}

const header = ['key', 'what it is', 'written as', 'range', 'default', 'example'];

/** Keys of `actions` that say when, not what. */
const times = ['at', 'from', 'until', 'for', 'every'];

const pick = (schema, keep) => ({
  ...schema,
  properties: Object.fromEntries(Object.entries(schema.properties).filter(([key]) => keep(key))),
});

/** The blocks of the document by name. */
function blocks(text) {
  const shown = [...text.matchAll(/```yaml\n([\s\S]*?)```/g)].map(([, yaml]) => parse(yaml));
  const example = (path) => {
    for (const each of shown) {
      const found = exampleAt(each, path);
      if (found !== undefined) return found;
    }
    return undefined;
  };
  const { whole } = scenarioJsonSchema().definitions;
  const sections = whole.properties;
  const rows = (schema, path) => table(header, rowsOf(schema, path, example));
  const one = (key) => {
    const { additionalProperties, items, properties } = sections[key];
    if (properties !== undefined) return rows(sections[key], [key]);
    return rows(additionalProperties ?? items, [key, '*']);
  };
  const climate = (key, mark) =>
    sections.climate.properties[key].anyOf.find((each) => each.properties?.[mark]);
  const weather = climate('et0', 'weather');
  const daily = climate('air-temperature', 'monthly');
  const follow = climate('water-temperature', 'follows');
  const light = climate('light', 'lamps');
  const action = sections.actions.items;
  const heads = 'include version title note days every start-date reservoir seed tables'.split(' ');
  const named = [
    'climate',
    'waters',
    'vessels',
    'pumps',
    'flows',
    'top-up',
    'rain-tank',
    'fish',
    'plantings',
    'dosing',
    'control',
    'drain-solids',
    'start',
    'rules',
    'prices',
    'display',
  ];
  const untold = Object.keys(sections).filter(
    (key) => ![...heads, ...named, 'actions', 'parameters'].includes(key),
  );
  if (untold.length > 0) throw new Error(`no section of docs/system-file.md tells of ${untold.join(', ')}`);
  const start = { ...sections.start, properties: { ...sections.start.properties, vessels: undefined } };
  delete start.properties.vessels;
  return {
    head: rows(
      pick(whole, (key) => heads.includes(key)),
      [],
    ),
    ...Object.fromEntries(named.filter((key) => key !== 'start').map((key) => [key, one(key)])),
    start: rows(start, ['start']),
    'start-vessels': rows(sections.start.properties.vessels.additionalProperties, ['start', 'vessels', '*']),
    weather: rows(weather, ['climate', 'et0']),
    daily: rows(daily, ['climate', '*']),
    follow: rows(follow, ['climate', 'water-temperature']),
    light: rows(light, ['climate', 'light']),
    times: rows(
      pick(action, (key) => times.includes(key)),
      ['actions', '*'],
    ),
    verbs: verbs(action, example),
    parameters: rows({ ...sections.parameters.additionalProperties.anyOf.find((each) => each.properties) }, [
      'parameters',
      '*',
    ]),
  };
}

/** The table of verbs: each with what follows it. */
function verbs(action, example) {
  const list = Object.entries(action.properties).filter(([key]) => !times.includes(key));
  return list
    .map(([verb, schema]) => {
      const path = ['actions', '*', verb];
      const shown = example(path);
      if (shown === undefined) throw new Error(`${verb}: no example in docs/system-file.md`);
      const branches = schema.anyOf ?? [schema];
      const map = branches.find((each) => each.properties !== undefined);
      const { what } = said(schema.description ?? map?.description);
      const lines = [
        `#### \`${verb}\``,
        '',
        `${what[0].toUpperCase()}${what.slice(1)}. \`${verb}: ${inline(shown)}\``,
        '',
      ];
      if (map !== undefined) lines.push(table(header, rowsOf(map, path, example)), '');
      return lines.join('\n');
    })
    .join('\n');
}

/** The text of docs/system-file.md. */
export function systemFile() {
  const text = readFileSync(document, 'utf8');
  return withBlocks(text, blocks(text));
}
