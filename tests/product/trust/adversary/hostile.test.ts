import { readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { edited, type Edit } from '../../faults/corpus/slip.js';
import { folderWith, leat } from '../../../support/leat.js';
import { full } from '../../../support/length.js';
import { smallSystem } from '../../../support/small-text.js';

/** A way to be wrong: what is changed of the small system, what must be said of it, and where. */
type Attack = readonly [name: string, change: readonly Edit[] | string, said: RegExp];

const plus = (text: string): string => `${smallSystem}${text}`;
const act = (line: string): string => plus(`actions:\n  - { ${line} }\n`);
const dose = 'dose: { into: sump, product: sodium-bicarbonate, mass: 30 g }';
const beside = (name: string): readonly Edit[] => [
  ['  sump: {', `  ${name}: { kind: sump, volume: 0.6 m3, area: 0.8 m2 }\n  sump: {`],
];
const flow = (to: string): readonly Edit[] => [['  - { from: bed, to: sump }', to]];

const groups: Readonly<Record<string, readonly Attack[]>> = {
  names: [
    ['a prototype', beside('__proto__'), /14:3: .*cannot be used/],
    ['a prototype of fish', [['  tilapia:', '  __proto__:']], /cannot be used/],
    ['a prototype of a pump', [['{ main:', '{ __proto__:']], /cannot be used/],
    ['that of the whole', beside('system'), /14:3: vessels\.system: a name that is taken; got system/],
    ['that of the whole, of fish', [['  tilapia:', '  system:']], /fish\.system: a name that is taken/],
    [
      'that of the whole, of a crop',
      [['  lettuce:', '  system:']],
      /plantings\.system: a name that is taken/,
    ],
    ['composed letters', beside('caf\u00e9'), /not a name/],
    ['decomposed letters', beside('cafe\u0301'), /not a name/],
    ['a letter of another script', beside('t\u0430nk'), /not a name/],
    ['a space of no width', beside('tank\u200b'), /not a name; got "tank\\u200b"/],
    ['a mark that turns the line', beside('"tank\u202e"'), /not a name; got "tank\\u202e"/],
    ['nothing', beside('""'), /not a name; got ""/],
    ['a number', beside('"1"'), /not a name/],
    ['two words', beside('"my tank"'), /not a name/],
    ['an at sign', beside('"a@b"'), /not a name/],
    ['an arrow', beside('"a > b"'), /not a name/],
    ['a comma', beside('"a,b"'), /not a name/],
    ['a line', beside('"a\\nb"'), /not a name/],
    ['a path', beside('"../x"'), /not a name/],
    ['a formula', beside('"=1+1"'), /not a name/],
    ['seventy letters', beside('a'.repeat(70)), /not a name/],
    ['a truth', [['{ from: tank, to: filter }', '{ from: tank, to: yes }']], /flows\[1\]\.to/],
    ['a species nearly', [['nile-tilapia', 'nile-talapia']], /did you mean nile-tilapia/],
    ['a method of objects as a species', [['nile-tilapia', 'constructor']], /species/],
    ['a method of objects as a crop', [['lettuce-butterhead', 'toString']], /crop/],
    ['a method of objects as a feed', [['grower-32', 'valueOf']], /feed/],
    ['a method of objects as a water', [['from: [mains]', 'from: [hasOwnProperty]']], /hasOwnProperty/],
    ['a method of objects as a vessel', [['to: filter }', 'to: toString }']], /toString/],
    ['a method of objects as a kind', [['kind: raft-bed', 'kind: constructor']], /kind/],
  ],
  dates: [
    ...[
      '2025-04-31',
      '2025-02-29',
      '2025-13-01',
      '2025-00-10',
      '2025-3-1',
      '10000-03-01',
      '2025-03-01T12:00',
      '01/03/2025',
      '"1 March 2025"',
      '2025-W09-6',
    ].map((date): Attack => [`a start on ${date}`, [['2025-03-01', date]], /3:13: start-date: no such date/]),
    ['a start in one number', [['2025-03-01', '20250301']], /start-date: wrong kind of value/],
    ['a length of nothing', [['days: 40', 'days: 0']], /days: out of range/],
    ['a length below nothing', [['days: 40', 'days: -3']], /days: out of range/],
    ['a thousand million days', [['days: 40', 'days: 1e9']], /days: out of range/],
    ['a length with a unit', [['days: 40', 'days: 40 d']], /days: wrong kind/],
    ['a length in words', [['days: 40', 'days: forty']], /days: wrong kind/],
    ...(
      [
        ['-1 d', /negative/],
        ['2025-02-28', /before the start/],
        ['2025-04-31', /no such date/],
        ['2026-02-29', /no such date/],
        ['3', /a number without a unit/],
        ['3 m3', /actions\[0\]\.at/],
        ['noon', /actions\[0\]\.at/],
        ['1e400 d', /actions\[0\]\.at/],
        ['[1 d]', /actions\[0\]\.at/],
      ] as const
    ).map(([at, said]): Attack => [`an action at ${at}`, act(`at: ${at}, ${dose}`), said]),
  ],
  actions: [
    [
      'of two verbs',
      act(`at: 3 d, ${dose}, clean: { vessel: filter, biofilm: 20 % }`),
      /an action does one thing/,
    ],
    ['of no verb', act('at: 3 d'), /actions\[0\]/],
    ['of an unknown verb', act('at: 3 d, doze: { into: sump }'), /did you mean dose/],
    [
      'of more than all',
      act('at: 3 d, harvest-fish: { cohort: tilapia, share: 110 % }'),
      /share: out of range/,
    ],
    [
      'of less than nothing',
      act('at: 3 d, dose: { into: sump, product: sodium-bicarbonate, mass: -30 g }'),
      /mass/,
    ],
    ['of fish that are none', act('at: 3 d, harvest-fish: { cohort: trout, share: 10 % }'), /trout/],
    ['of fish in parts', act('at: 3 d, lose-fish: { cohort: tilapia, number: 2.5 }'), /number/],
    [
      'of a product that is none',
      act('at: 3 d, dose: { into: sump, product: sodium, mass: 3 g }'),
      /product/,
    ],
    [
      'of a product of a prototype',
      act('at: 3 d, dose: { into: sump, product: __proto__, mass: 3 g }'),
      /product/,
    ],
    ['of a pump that is none', act('at: 3 d, pump: { pump: two, running: no }'), /pump/],
    ['in a list of words', plus('actions: [clean]\n'), /actions/],
    ['in a map', plus(`actions: { at: 3 d, ${dose} }\n`), /actions/],
  ],
  YAML: [
    ['a key twice', [['days: 40', 'days: 40\ndays: 50']], /3:1: key written twice; got days/],
    ['a key twice, once in quotes', [['days: 40', 'days: 40\n"days": 50']], /key written twice/],
    ['a section twice', plus('fish: {}\n'), /key written twice; got fish/],
    ['a tab', [['  tank: {', '\ttank: {']], /a tab in the indentation/],
    ['a merge key', [['  bed: {', '  bed: { <<: { volume: 9 m3 },']], /unknown key/],
    ['two documents', plus('---\ndays: 3\n'), /more than one document/],
    ['more behind its end', plus('...\ndays: 3\n'), /more than one document/],
    ['another version of YAML', `%YAML 1.1\n---\n${smallSystem}`, /1:1: /],
    ['a tag', [['days: 40', 'days: !!str 40']], /2:/],
    ['a tag of its own', [['days: 40', 'days: !days 40']], /2:/],
    ['binary', [['days: 40', 'days: !!binary NDA=']], /2:/],
    ['a NUL', [['Small', 'Sm\0all']], /no text|not text/],
    ['lines that end with returns alone', smallSystem.replaceAll('\n', '\r'), /1:/],
    ['nothing at all', '', /./],
    ['a list', '- days: 40\n', /./],
    ['a word', 'days\n', /./],
    ['JSON that is cut short', '{ "days": 40, ', /./],
    ['a billion laughs', `a: &a [x,x]\nb: &b [*a,*a]\nc: &c [*b,*b]\n${smallSystem}`, /./],
    ['nested without end', `title: ${'['.repeat(5000)}\n`, /./],
    ['an unknown key', plus('fishes: {}\n'), /did you mean fish/],
    ['a key of a prototype', plus('__proto__: {}\n'), /cannot be used/],
    ['a key of a constructor', plus('constructor: {}\n'), /unknown key/],
    ['an include of itself', plus('include: small.yaml\n'), /include/],
    ['an include of nothing', plus('include: nowhere.yaml\n'), /no such file/],
    ['an include of a folder', plus('include: .\n'), /include/],
    ['an include of an address', plus('include: https://example.org/a.yaml\n'), /include/],
    ['a map in place of a list', [['from: [mains]', 'from: { mains: 1 }']], /top-up\.from/],
  ],
  water: [
    ['a loop without a pump', flow('  - { from: bed, to: filter }'), /a loop without a pump/],
    [
      'shares of more than all',
      flow('  - { from: bed, to: sump, share: 80 % }\n  - { from: bed, to: sump, share: 80 % }'),
      /flows/,
    ],
    ['a share of nothing', flow('  - { from: bed, to: sump, share: 0 % }'), /do not sum to 1/],
    ['a flow to itself', flow('  - { from: bed, to: bed }'), /flows/],
    ['no way out', flow(''), /no way out|flows/],
    ['a pump that gives nothing', [['rate: 2 m3/h', 'rate: 0 m3/h']], /must be more than zero/],
    ['a pump of gigalitres', [['rate: 2 m3/h', 'rate: 1e12 m3/h']], /flows\[0\]\.rate/],
    ['a tank of no area', [['area: 2 m2, aeration', 'area: 0 m2, aeration']], /must be more than zero/],
    [
      'a bed planted beyond its edge',
      [['butterhead, area: 4 m2', 'butterhead, area: 400 m2']],
      /larger than bed/,
    ],
    [
      'a planting of no area',
      [['butterhead, area: 4 m2', 'butterhead, area: 0 m2']],
      /must be more than zero/,
    ],
    [
      'a restart below the inlet',
      [['inlet: 100 L, restart: 200 L', 'inlet: 200 L, restart: 100 L']],
      /not above the inlet/,
    ],
    ['a restart above the water', [['restart: 200 L', 'restart: 900 L']], /above the water/],
    ['a level above the edge', [['level: 0.55 m3', 'level: 5 m3']], /above the overflow/],
    ['a reservoir that is none', [['reservoir: sump', 'reservoir: pond']], /reservoir/],
    ['acid that no fish stands', [['pH: 7.4', 'pH: 0']], /pH: out of range/],
    ['pH in quotes', [['pH: 7.4', 'pH: "7.4"']], /wrong kind of value/],
    ['pH with a comma', [['pH: 7.4', 'pH: "7,4"']], /wrong kind of value/],
    ['alkalinity as nobody says what', [['alkalinity: 2 meq/L', 'alkalinity: 100 mg/L']], /ambiguous unit/],
    ['nitrate as nobody says what', [['nitrate: 20 mg N/L', 'nitrate: 20 mg/L']], /ambiguous unit/],
    ['megagrams of nitrogen', [['20 mg N/L', '20 Mg N/L']], /unknown unit "Mg N\/L"/],
    ['a unit in capitals', [['120 g', '120 G']], /did you mean g/],
    ['kilograms in capitals', [['120 g', '0.120 KG']], /did you mean kg/],
    ['a mass in litres', [['120 g', '120 L']], /mass/],
    ['a volume in kilograms', [['volume: 2 m3', 'volume: 2 kg']], /volume/],
    ['water of 300 degrees', [['26 degC', '300 degC']], /water-temperature/],
    ['water in Fahrenheit said to be Celsius', [['26 degC', '78 degC']], /water-temperature/],
  ],
};

describe.each(Object.entries(groups))('an attack by %s', (_, attacks) => {
  it.each(attacks.filter((_each, i) => full || i % 2 === 0))(
    '%s is refused in words, with its place',
    async (_name, change, said) => {
      const text = typeof change === 'string' ? change : edited(smallSystem, change);
      const folder = folderWith({ 'small.yaml': text });
      const { code, out, err } = await leat(
        ['run', 'small.yaml', '--csv', 'out.csv', '--save', 'end.json'],
        folder,
      );
      expect({ code, out }, err).toEqual({ code: 2, out: '' });
      expect(err).toMatch(said);
      expect(err).toMatch(/^small\.yaml(?::\d+)?/);
      expect(err).not.toMatch(/^\s+at |TypeError|undefined|\[object/m);
      expect(readdirSync(folder)).toEqual(['small.yaml']);
    },
  );
});

/** What is set by --set and must be refused. */
const settings: readonly (readonly [string, RegExp])[] = [
  ['days', /argument 'days' is invalid. Write it as path=value/],
  ['=3', /argument '=3' is invalid. Write it as path=value/],
  ['days=', /./],
  ['days=1e400', /days/],
  ['days=NaN', /days/],
  ['days=3 d', /days/],
  ['days=\u0663', /days/],
  ['__proto__.days=3', /./],
  ['constructor.prototype.days=3', /./],
  ['vessels.__proto__.volume=3 m3', /./],
  ['include=other.yaml', /include/],
  ['vessels.tank.volume=3', /a number without a unit/],
  ['vessels.tank.volume=3,5 m3', /volume/],
  ['vessels.tank.volum=3 m3', /did you mean volume/],
  ['vessels.tnk.volume=3 m3', /tnk/],
  ['vessels.tank.volume.deep=3 m3', /nothing can stand below/],
  ['flows.9.rate=3 m3/h', /flows/],
  ['flows.-1.rate=3 m3/h', /flows/],
  ['start-date=2025-02-30', /no such date/],
  ['fish.tilapia.number=2.5', /number/],
  ['version=99', /version/],
  ['title=[1', /./],
];

describe('a setting', () => {
  it.each(settings)('%s is refused', async (setting, said) => {
    const folder = folderWith();
    const { code, out, err } = await leat(['run', 'small.yaml', '--set', setting], folder);
    // What is no setting at all is a fault of the command line, with a code of its own.
    expect({ code, out }, err).toEqual({ code: /^[^=]+=/.test(setting) ? 2 : 5, out: '' });
    expect(err).toMatch(said);
    expect(err).not.toMatch(/^\s+at |TypeError|\[object/m);
  });
});

describe('what is asked for and cannot be had', () => {
  it.each([
    ['lose-fish: { cohort: tilapia, number: 600 }', '60 fish, 7278 g; 600 fish were asked for'],
    ['harvest-fish: { cohort: tilapia, number: 600 }', '600 fish were asked for'],
  ])('is told where it is done as far as it goes: %s', async (line, said) => {
    const folder = folderWith({ 'small.yaml': act(`at: 1 d, ${line}`) });
    const { code, out } = await leat(['run', 'small.yaml', '--days', '2'], folder);
    expect(code).toBe(0);
    expect(out).toContain(said);
    // The verdict does not pass over fish that the file says are dead; those that are sold are no loss.
    expect(out.includes('Lost as the file says: all of tilapia from day 1 (2 Mar).')).toBe(
      line.startsWith('lose-fish'),
    );
  });

  it.each(['40 d', '41 d', '9999 d'])(
    'is told by name where it lies past the end of the run: %s',
    async (at) => {
      const folder = folderWith({ 'small.yaml': act(`at: ${at}, ${dose}`) });
      const { code, err } = await leat(['run', 'small.yaml'], folder);
      expect(code).toBe(0);
      expect(err).toMatch(
        new RegExp(
          String.raw`^small\.yaml:\d+: actions\[0\] is left out: day ${at.slice(0, -2)} is past the end of the run, day 40\n$`,
        ),
      );
      const without = folderWith({ 'small.yaml': smallSystem });
      const [left, none] = [folder, without].map((there) => leat(['run', 'small.yaml', '--json'], there));
      const finals = (await Promise.all([left, none])).map(
        ({ out }) => (JSON.parse(out) as { series: unknown }).series,
      );
      expect(finals[0]).toEqual(finals[1]);
    },
  );
});
