/**
 * The cases of `outputs.mjs`: calls of the command line that together go through every command, each in every form
 * of its output. A case is a name and the commands that run one after another in its folder, so that a later one may
 * take what an earlier one wrote; `> FILE` at the end of a command keeps its stdout. Longest first, as they run so.
 */
import { readFileSync, readdirSync } from 'node:fs';

const scenarios = 'packages/cli/scenarios';

/** Files that are made from the command and lie in the tree; tests hold them against it, here against the kept. */
export const generated = ['packages/cli/schema/leat.schema.json', 'packages/cli/man/leat.1'];

const shipped = readdirSync(new URL(`../${scenarios}`, import.meta.url))
  .filter((file) => file.endsWith('.yaml'))
  .sort();

const table = (...rows) =>
  ['id value unit low high distribution conditions source page mark', ...rows]
    .map((row, index) => row.split(index === 0 ? ' ' : '|').join('\t'))
    .join('\n');

/** Weather by the day, in place of the climate of the backyard. */
const climate = `climate:
  et0: { weather: days.csv, latitude: -34.5, altitude: 300 m, columns: { high: { column: Tmax, unit: degC }, low: { column: Tmin, unit: degC }, wind: { column: Wind, unit: m/s } } }
  water-temperature: { follows: air, lag: 2 d }
`;

const days = Array.from({ length: 120 }, (_, day) => day);

/** Files of the tree that every case has a copy of. */
export const copied = [
  ...readdirSync(new URL(`../${scenarios}`, import.meta.url)).map((file) => `${scenarios}/${file}`),
  'tests/product/logs/messy.csv',
  'tests/product/logs/messy.map.yaml',
];

/** Small files beside the shipped ones: overlays, tables, and faults of every sort. Invented. */
export const files = {
  'more.yaml': 'fish: { tilapia: { ration: 150 g/d } }\n',
  'own.tsv': table('aob.growth|0.5|1/d|0.4|0.6|triangular|measured|Own log book, 2025|-|U'),
  'own.yaml': 'include: backyard.yaml\ntables: own.tsv\nparameters: { nob.growth: 0.8 }\ndays: 10\n',
  'bad.tsv': table('aob.growth|0.5|1/d|0.4|0.6|triangel|measured|Own log book, 2025|-|U'),
  'days.csv': ['Date,Tmax,Tmin,Wind', ...days.map((day) => weatherOf(day))].join('\n'),
  'weather.yaml': readFileSync(new URL(`../${scenarios}/backyard.yaml`, import.meta.url), 'utf8').replace(
    /climate:\n(?: {2}.*\n)+/,
    climate,
  ),
  'rules.yaml': `include: backyard.yaml
days: 30
fish: { tilapia: { ration: 250 g/d } }
rules:
  - when: { read: ammonia, in: tank, above: 2 mg N/L, until: 1 mg N/L }
    kit: { resolution: 0.25 mg N/L, error: 10 %, every: 3 d }
    do: { feed: { cohort: tilapia, factor: 0.5 } }
  - when: { read: alkalinity, in: sump, below: 4 dKH }
    do: { dose: { into: sump, product: potassium-bicarbonate, mass: 20 g } }
    wait: 3 d
    most: 4
`,
  'deeds.yaml': `include: backyard.yaml
days: 24
every: 12 h
actions:
  - { at: 1 d, stock: { cohort: tilapia, number: 5, mass: 100 g } }
  - { at: 2 d, lose-fish: { cohort: tilapia, number: 2 } }
  - { at: 3 d, harvest-fish: { cohort: tilapia, number: 3 } }
  - { at: 4 d, feed: { cohort: tilapia, ration: 90 g/d } }
  - { at: 5 d, change-water: { vessel: tank, share: 20 %, water: mains } }
  - { at: 6 d, dose: { into: sump, product: potassium-bicarbonate, mass: 20 g } }
  - { at: 7 d, medicate: { vessel: bed, kills: 40 % } }
  - { at: 11 d, pump-off: main }
  - { at: 11.1 d, pump-on: main }
  - { at: 12 d, air-off: tank }
  - { at: 12.1 d, air-on: tank }
  - { at: 13 d, power-cut: all }
  - { at: 13.1 d, pump-on: main }
  - { at: 13.1 d, air-on: tank }
  - { at: 14 d, clean: { vessel: bed, biofilm: 30 %, solids: 90 % } }
  - { at: 15 d, harvest-crop: { planting: basil } }
  - { at: 16 d, leave-empty: basil }
  - { at: 18 d, plant: basil }
  - { at: 20 d, top-up: stopped }
  - { at: 21 d, top-up: restored }
  - { at: 22 d, cart-water: { volume: 50 L, into: reservoir, water: mains } }
`,
  'saved.yaml': 'include: backyard.yaml\nstart: { saved: end.json }\ndays: 10\n',
  'breaks.yaml': 'include: backyard.yaml\nparameters: { oxygen.saturation.a: 1000 }\n',
  'unknown-key.yaml': 'include: backyard.yaml\ncolour: blue\nvessels: { tank: { volum: 1 m3 } }\n',
  'wrong-unit.yaml': 'include: backyard.yaml\nvessels: { tank: { volume: 2 m2, area: 1.2 } }\n',
  'unknown-vessel.yaml':
    'include: backyard.yaml\nflows:\n  - { from: sump, to: tnak, pump: main, rate: 1 m3/h }\n',
  'bare-mg.yaml': 'include: backyard.yaml\nwaters: { mains: { nitrate: 1 mg/L } }\n',
  'no-include.yaml': 'include: nowhere.yaml\n',
  'circle.yaml': 'include: circle.yaml\n',
  'outside.yaml': 'include: ../elsewhere.yaml\n',
  'no.yaml': 'days: [1, 2\n  - x: }\n',
  'empty.yaml': '',
  'list.yaml': '- 1\n- 2\n',
  'cut.json': '{',
  'no-fit.json': '{"schema":"leat-state"}',
  'later.json': '{"schema":"leat-fit","version":2}',
  'cut.ens': 'leat',
  'bad.map': 'date: { column: Day }\ncolumns:\n  pH tank: { reads: acidity, in: tank }\n',
};

/** A row of weather, with gaps. */
function weatherOf(day) {
  const date = new Date(Date.UTC(2026, 2, 1 + day)).toISOString().slice(0, 10);
  return [date, 28 - (day % 7), 14 + (day % 5), day % 9 === 4 ? '' : 1 + (day % 3)].join(',');
}

/** The same command as words and as one document. */
const both = (line) => [line, `${line} --json`];

const backyard = 'backyard.yaml --log backyard.csv --map backyard.map';
const free = '--free biofilm.capacity --free start.nitrate';
const filter = '--vary vessels.biofilter.media.volume --from "20 L" --to "2 m3"';
const low = '--keep "highest tan@tank-1 below 2 mg N/L"';
const members = 'ensemble backyard.yaml --members 5 --days 6';
const commands =
  'run check compare why report plot steady size sweep ensemble merge sensitivity log fit forecast backtest show new completion'.split(
    ' ',
  );
const tables = 'fish crops media feeds dosing waters limits constants parameters weather log'.split(' ');
const shown =
  'sources aob.growth nob.decay fish.nile-tilapia.limit-nitrite fish.rainbow-trout.mortality fish.nile-tilapia.temperature-optimum-low nile-tilapia lettuce-butterhead pumice moving-bed-carrier grower-32 potassium-bicarbonate rain epa.acute oxygen emerson-1975 biofilm.capacity fish aob'.split(
    ' ',
  );

/** @type {Readonly<Record<string, readonly string[]>>} */
export const cases = {
  'size among draws': [
    `size double-stock.yaml ${filter} ${low} --days 5 --members 4 --within 20% --out s.size`,
    `size double-stock.yaml ${filter} ${low} --days 5 --members 4 --within 20% --resume s.size --json`,
    `size double-stock.yaml ${filter} ${low} --days 5 --members 4 --within 20% --workers 1 --chosen "100 L"`,
    `size double-stock.yaml ${filter} ${low} --days 6 --members 4 --within 20% --resume s.size`,
    'merge s.size',
  ],
  fit: [
    `fit ${backyard} ${free} --starts 1 --until 2026-04-20 --out fit.json`,
    `fit ${backyard} ${free} --starts 2 --until 2026-04-10 --unlogged-feed mean --json`,
    `fit ${backyard} --free "vessels.sump.volume=0.4..0.6 m3" --starts 1 --until 2026-03-25`,
    ...both(`forecast ${backyard} --fit fit.json --members 5 --days 7 --until 2026-04-20`),
    `forecast ${backyard} --fit fit.json --members 4 --days 5 --overlay more.yaml --set "fish.tilapia.number=20"`,
    'run backyard.yaml --fit fit.json --days 10',
    'run backyard.yaml --fit fit.json --days 10 --json',
    'check backyard.yaml --fit fit.json --resolved',
    'show biofilm.capacity --in backyard.yaml --fit fit.json',
    'ensemble backyard.yaml --fit fit.json --members 4 --days 4',
    'run glasshouse.yaml --fit fit.json --days 2',
    `merge fit.json`,
  ],
  'fit of the usual set': [`fit ${backyard} --starts 1 --until 2026-03-20`],
  backtest: both(`backtest ${backyard} --free biofilm.capacity --fits 1 --step 40`),
  sensitivity: [
    ...both('sensitivity backyard.yaml --of "highest tan@tank" --days 4 --method local --only "aob.*"'),
    'sensitivity backyard.yaml --of "highest tan@tank averaged 1 d" --days 4 --only "aob.*" --members 8 --out s.sens',
    'sensitivity backyard.yaml --of "highest tan@tank averaged 1 d" --days 4 --only "aob.*" --members 8 --resume s.sens --json',
    'sensitivity backyard.yaml --of "last fish-mass@tilapia" --days 3 --only "*.growth" --members 4 --method all --workers 1',
    'sensitivity backyard.yaml --of "highest tan@tank" --days 3 --only "*.growth" --members 4 --method morris --seed 3 --json',
    'sensitivity backyard.yaml --of "highest tan@tank" --days 3 --only "*.growth" --members 4 --method sobol',
    'sensitivity backyard.yaml --of "highest tan@tank" --days 5 --only "aob.*" --resume s.sens',
    'ensemble backyard.yaml --resume s.sens',
    'sensitivity backyard.yaml --of "highest tan@tank" --only "zzz*"',
  ],
  'sensitivity to all': ['sensitivity backyard.yaml --of "highest tan@tank" --days 2 --method local --json'],
  ensemble: [
    `${members} --of "highest tan@tank" --keep "keeps limits" --out a.ens --csv a.csv`,
    `${members} --of "highest tan@tank" --keep "keeps limits" --workers 1 --json --out b.ens`,
    `${members} --of "highest tan@tank" --keep "keeps limits" --workers 2 --json --resume a.ens`,
    `${members} --resume a.ens`,
    `${members} --resume own.tsv`,
    `${members} --sampling sobol --seed 3 --tolerance 1e-4 --correlate "aob.growth nob.growth 0.6" --json`,
    `${members} --correlate "aob.growth nob.growht 0.6"`,
    'report backyard.yaml --days 6 --ensemble a.ens --out bands.html',
    'report backyard.yaml --days 7 --ensemble a.ens --out other.html',
    'ensemble breaks.yaml --members 2 --days 3',
  ],
  shards: [
    `${members} --shard 1/2 --out 1.ens`,
    `${members} --shard 2/2 --out 2.ens`,
    'merge 2.ens 1.ens --out whole.ens --csv whole.csv',
    'merge 1.ens 2.ens --json > whole.json',
    'merge 1.ens',
    'merge 1.ens 1.ens',
    `${members} --seed 2 --shard 2/2 --out other.ens`,
    'merge 1.ens other.ens',
    'merge cut.ens',
    'report backyard.yaml --days 6 --ensemble whole.json --out bands.html',
    `${members} --shard 3/2`,
  ],
  size: [
    ...both(`size double-stock.yaml ${filter} ${low} --days 8`),
    `size double-stock.yaml ${filter} --keep "keeps limits" --days 4`,
    'size backyard.yaml --vary fish.tilapia.ration --from "20 g/d" --to "400 g/d" --keep "highest tan@tank below 1 mg N/L" --largest --days 6 --within 5%',
    'size backyard.yaml --vary fish.tilapia.ration --from "20 g/d" --to "400 L" --keep "keeps limits"',
    'size backyard.yaml --vary fish.tilapia.ration --from "20 g/d" --to "400 g/d" --keep "highest tna@tank below 1 mg N/L"',
  ],
  sweep: [
    'sweep backyard.yaml --days 6 --vary "fish.tilapia.ration=50 g/d:200 g/d:4" --of "highest tan@tank" --csv s.csv --svg s.svg',
    'sweep backyard.yaml --days 6 --vary "fish.tilapia.ration=50 g/d:200 g/d:3" --of "last nitrate@sump" --keep "keeps limits" --json --workers 1',
  ],
  'sweep over two': [
    'sweep backyard.yaml --days 4 --vary "fish.tilapia.ration=50 g/d:200 g/d:3" --vary "vessels.tank.volume=0.8 m3:1.2 m3:3" --of "highest tan@tank" --of "lowest pH@tank" --keep "highest tan@tank below 1 mg N/L" --csv map.csv --svg map.svg',
    'sweep backyard.yaml --days 4 --vary "fish.tilapia.ration=50 g/d:200 g/d:2" --vary "vessels.tank.volume=0.8 m3:1.2 m3:2" --of "highest tan@tank" --json',
    'sweep backyard.yaml --days 4 --vary "fish.tilapia.ration=50 g/d:200 L:2" --of "highest tan@tank"',
  ],
  plot: [
    'plot glasshouse.yaml --of tan@tank-1 nitrite@tank-1 --limits --days 30 --out peak.png',
    'plot glasshouse.yaml --of tan@tank-1 nitrite@tank-1 --limits --days 30 --out peak.svg',
    'plot glasshouse.yaml --of nitrate@sump --on dark --title "Nitrate of the sump" --days 30 --out dark.svg',
    'plot glasshouse.yaml --of pH@sump oxygen@tank-1 --days 10 --every 6h --out two.svg',
    'run backyard.yaml --days 20 --json > kept.json',
    'plot kept.json --of tan@tank --limits --out kept.svg',
    'plot backyard.yaml --of tna@tank --days 2 --out no.svg',
    'plot backyard.yaml --of tan@tank --days 2 --out no.gif',
  ],
  report: [
    'report glasshouse.yaml --days 60',
    'report glasshouse.yaml double-stock.yaml bare-beds.yaml --days 40 --out three.html',
    'run backyard.yaml --days 20 --json > kept.json',
    'report kept.json backyard.yaml --days 20 --out kept.html',
    'report rules.yaml weather.yaml --days 20 --out pair.html',
    'report deeds.yaml --out deeds.html',
    'report breaks.yaml --out broken.html',
    'report cut.json',
  ],
  compare: [
    ...both('compare double-stock.yaml double-stock-steps.yaml'),
    'compare bare-beds.yaml bare-beds-dosed.yaml glasshouse.yaml --days 60 --apart 5',
    'run backyard.yaml --days 20 --json > kept.json',
    ...both('compare kept.json rules.yaml'),
    'compare backyard.yaml weather.yaml deeds.yaml --days 20',
    'compare backyard.yaml breaks.yaml --days 5',
    'compare backyard.yaml',
  ],
  why: [
    ...both('why glasshouse.yaml bare-beds.yaml --of nitrate@sump --at 60d --days 61'),
    ...both('why double-stock.yaml --of tan@tank-1 --from 1d --to 3d --days 4 --around place'),
    'why backyard.yaml --of oxygen@tank --from 2d --to 20d --days 20',
    'why backyard.yaml --of pH@tank --from 2d --to 20d --days 20',
    'why backyard.yaml weather.yaml --of alkalinity@sump --days 20 --every 12h',
    'why backyard.yaml backyard.yaml --of nitrate@sump --at 5d --days 5',
    'why backyard.yaml --of nitrat@sump --days 2 --from 1d --to 2d',
    'why backyard.yaml breaks.yaml --of nitrate@sump --at 9d',
  ],
  steady: [
    ...both('steady glasshouse.yaml --hold nitrate --hold alkalinity --hold chloride'),
    ...both('steady backyard.yaml --on 90d --crops as-at-start'),
    'steady double-stock.yaml',
    'steady fishless.yaml',
    'steady backyard.yaml --on 2026-07-01 --set "fish.tilapia.ration=40 g/d"',
    'steady backyard.yaml --hold nitrat',
  ],
  ...Object.fromEntries(
    shipped.map((file) => [
      `run ${file}`,
      [
        `run ${file} --csv series.csv --save end.json`,
        `run ${file} --json`,
        `run ${file} --days 6 --integrator odex --tolerance 1e-6 --plot --sources`,
        `check ${file}`,
        `check ${file} --table`,
        `check ${file} --resolved`,
      ],
    ]),
  ),
  'run in other forms': [
    'run backyard.yaml --days 12 --every 6h --set "fish.tilapia.ration=60 g/d" --plot nitrate@sump --save end.json',
    'run saved.yaml',
    'run saved.yaml --json',
    'run own.yaml --sources',
    'run own.yaml --json --tables own.tsv',
    'run weather.yaml --days 30',
    'run weather.yaml --days 30 --json',
    ...both('run deeds.yaml'),
    'run rules.yaml',
    'run rules.yaml --json',
    'run backyard.yaml --quiet --days 2 --csv only.csv',
    'run breaks.yaml',
    'run breaks.yaml --json',
  ],
  log: [
    ...both('log backyard.csv --map backyard.map'),
    ...both('log backyard.csv --map backyard.map --system backyard.yaml'),
    'log backyard.csv --write-map guess.map',
    ...both('log messy.csv --system glasshouse.yaml'),
    ...both('log messy.csv --map messy.map.yaml --system glasshouse.yaml'),
    'log backyard.csv --map bad.map',
    'log messy.csv --map backyard.map',
    'log cut.json',
  ],
  'show tables': tables.flatMap((name) => both(`show ${name}`)),
  show: ['show', 'show --json', ...shown.map((what) => `show ${what}`), 'show sources --json'],
  'show otherwise': [
    ...both('show aob.growth --in own.yaml'),
    'show nob.growth --in own.yaml --set parameters.nob.growth=0.9',
    'show parameters --tables own.tsv --json',
    'show aob.growht',
    'show zzzzzzzzzz',
    'show fish --set days=3',
    'show fish --tables bad.tsv',
  ],
  new: [
    'new --list',
    'new',
    'new double-stock --out mine.yaml',
    'new backyard --out yard.yaml',
    'new double-stock',
    'new double-stok',
  ],
  completion: ['bash', 'zsh', 'fish', 'tcsh'].map((shell) => `completion ${shell}`),
  help: ['--help', '--version', '', 'rnu', ...commands.map((name) => `${name} --help`)],
  'faulty files': [
    ...'unknown-key wrong-unit unknown-vessel bare-mg no-include circle outside no empty list none'
      .split(' ')
      .flatMap((name) => [`check ${name}.yaml`]),
    'run unknown-key.yaml',
    'run backyard.yaml --fit no-fit.json',
    'run backyard.yaml --fit cut.json',
    'run backyard.yaml --fit later.json',
    'run backyard.yaml --tables bad.tsv',
    'run backyard.csv',
    `fit backyard.yaml --log none.csv --map backyard.map`,
    `fit backyard.yaml --log messy.csv --map messy.map.yaml`,
    `forecast ${backyard} --fit no-fit.json`,
  ],
  'faulty options': [
    'run',
    'run backyard.yaml --dayz 3',
    'run backyard.yaml --days -3',
    'run backyard.yaml --days ten',
    'run backyard.yaml --every "1 kg"',
    'run backyard.yaml --integrator euler',
    'run backyard.yaml --tolerance 0',
    'run backyard.yaml --set days',
    'run backyard.yaml --set vessels.tnak.volume=2',
    'run backyard.yaml --set "vessels.tank.volume=2 kg" --set fish.tilapia.species=nile-tilapa',
    'run backyard.yaml another.yaml',
    'run backyard.yaml --quiet --days 1 --csv no/where.csv',
    'ensemble backyard.yaml --members 0',
    'ensemble backyard.yaml --of "hihgest tan@tank"',
    'sweep backyard.yaml --vary vessels.tank.volume=1:2',
    'steady backyard.yaml --crops never',
  ],
};
