import { doublingTime } from '../../support/doubling-time.js';
import { matureRate, removedOf } from '../../support/mature-surface.js';
import { about, between, within } from '../tolerance.js';
import type { PublishedCheck, Topic } from '../published-check.js';

/** Apparent order in TAN between two levels: slope of log rate over log TAN. */
const order = (from: number, to: number, temperature = 25): number =>
  Math.log(matureRate({ temperature, tan: to }) / matureRate({ temperature, tan: from })) /
  Math.log(to / from);

/** Factor a degree between 15 and 25 degC. */
const theta = (tan: number): number =>
  (matureRate({ temperature: 25, tan }) / matureRate({ temperature: 15, tan })) ** 0.1;

const capacity =
  'biofilm.capacity is put where a surface at 25 degC oxidises about 0.6 g/m2/d at most, inside 0.2-2.0 of all sources taken together; ';

/** Areal rates: source, where it stands, range, and at what temperatures and TAN it is looked at. */
interface ArealRange {
  readonly from: Pick<PublishedCheck, 'source' | 'where' | 'mark'>;
  readonly low: number;
  readonly high: number;
  readonly at: readonly (readonly [temperature: number, tan: number, miss?: string])[];
}

const cool = `${capacity}at 15 degC and 1 mg/L that is 0.16; the range does not say its TAN`;
const warm = `${capacity}filters of the slides do 1-2 g, other sources (SRAC 282, Eding et al.) no more than 1.1`;
const arealRanges: readonly ArealRange[] = [
  {
    from: { source: 'miller-slides', where: 'trickling and turning filters, 15-20 degC', mark: 'R' },
    low: 0.2,
    high: 1,
    at: [
      [15, 1, cool],
      [15, 2],
      [15, 4],
      [20, 1],
      [20, 2],
      [20, 4],
    ],
  },
  {
    from: { source: 'miller-slides', where: 'trickling and turning filters, above 25 degC', mark: 'R' },
    low: 1,
    high: 2,
    at: [
      [26, 2, warm],
      [28, 4, warm],
    ],
  },
  {
    from: { source: 'srac-282', where: 'biofilters of tilapia, 0.02-0.10 g/ft2/d', mark: 'R' },
    low: 0.22,
    high: 1.08,
    at: [
      [26, 1],
      [28, 1],
      [28, 2],
    ],
  },
  {
    from: { source: 'eding-2006', where: 'trickling filters', mark: 'M' },
    low: 0.2,
    high: 0.6,
    at: [
      [25, 1],
      [25, 2],
    ],
  },
];

const arealChecks = arealRanges.flatMap(({ from, low, high, at }) =>
  at.map(([temperature, tan, miss]): PublishedCheck => ({
    id: `areal-${from.source}-${temperature}-${tan}`,
    ...from,
    what: `TAN oxidised by a grown-in surface, ${temperature} degC, TAN ${tan} mg/L`,
    unit: 'g/(m2 d)',
    ...between(low, high),
    compute: () => matureRate({ temperature, tan }),
    ...(miss === undefined ? {} : { miss }),
  })),
);

const fao = { source: 'fao-589', where: 'App. 4: 0.57 g NH3/m2/d is 0.47 g N', mark: 'M' } as const;

/** Media of Harwanto et al.: surface, removal at the lowest load, and at 5 and 10 times that load. */
const media: readonly (readonly [
  name: string,
  surface: number,
  lowest: number,
  removed: readonly [number, number],
  miss?: string,
])[] = [
  [
    'sand',
    7836,
    39.3,
    [168.6, 322.7],
    'led five and ten times the lowest removal, that much surface leaves nothing; the sand left a sixth and a fifth',
  ],
  ['microbead', 3287, 35, [157.4, 310.5]],
  ['moving-bed carrier', 500, 32.1, [142.5, 288.1]],
];

/** g m-3 d-1 at so many times the lowest load; beyond what the surface can do: what it does at 8 mg/L. */
function volumetric(surface: number, load: number): number {
  const most = matureRate({ temperature: 25, tan: 8 }) * surface;
  if (load > most) return most;
  return removedOf({ load: load / surface, flow: 1 / surface, temperature: 25 }) * surface;
}

const mediaChecks = media.flatMap(([name, surface, lowest, removed, miss]) =>
  removed.map((published, i): PublishedCheck => ({
    id: `volumetric-${surface}-${i === 0 ? 5 : 10}`,
    source: 'harwanto-2011',
    where: `abstract: ${lowest} / ${removed.join(' / ')} g/m3/d at loads as 5 : 25 : 50`,
    mark: 'R',
    what: `TAN removed by ${name} (${surface} m2/m3) led ${i === 0 ? 'five' : 'ten'} times the lowest, 25 degC assumed`,
    unit: 'g/(m3 d)',
    ...within(15, published),
    compute: () => volumetric(surface, lowest * (i === 0 ? 5 : 10)),
    ...(miss === undefined ? {} : { miss }),
  })),
);

/** Rates of nitrifying surfaces. */
export const nitrifyingSurfaces: Topic = {
  title: 'Rates of nitrifying surfaces',
  kind: 'process',
  note:
    'A cell with a surface, led through for 300 days until it rests at the said TAN, at pH 7.5, 6 mg/L of oxygen and 2 meq/L ' +
    'of alkalinity unless said otherwise. An apparent order is held to be the published one where it is nearer to it than to ' +
    'the next half (0.25). Rusten et al. 2006 on moving beds at 1 mg/L is too uncertain in its digits [W] and is left out; ' +
    'Harwanto et al. give loads per another volume, so only their proportion is used.',
  checks: [
    ...arealChecks,
    {
      id: 'areal-fao-1',
      ...fao,
      what: 'TAN oxidised by a grown-in surface, 25 degC, TAN 1 mg/L',
      unit: 'g/(m2 d)',
      ...within(25, 0.47),
      compute: () => matureRate({ temperature: 25, tan: 1 }),
    },
    {
      id: 'areal-fao-2',
      ...fao,
      what: 'TAN oxidised by a grown-in surface, 25 degC, TAN 2 mg/L',
      unit: 'g/(m2 d)',
      ...within(25, 0.47),
      compute: () => matureRate({ temperature: 25, tan: 2 }),
    },
    {
      id: 'bead-filter-volumetric',
      source: 'malone-beecher-2000',
      where: 'floating bead filters, grow-out',
      mark: 'M',
      what: 'TAN oxidised per m3 of beads (1312 m2/m3), 25 degC, TAN 1 mg/L',
      unit: 'kg/(m3 d)',
      ...between(0.3, 0.6),
      compute: () => (matureRate({ temperature: 25, tan: 1 }) * 1312) / 1000,
    },
    {
      id: 'fluidised-sand-volumetric',
      source: 'miller-slides',
      where: 'fluidised sand, 15 degC',
      mark: 'R',
      what: 'TAN oxidised per m3 of sand (1968 m2/m3), 15 degC, TAN 2 mg/L',
      unit: 'kg/(m3 d)',
      ...within(25, 0.6),
      miss: 'on the coarsest sand of the source (600 ft2/ft3), the surface is not stated with the rate; finer sand of 3500 m2/m3 would make it',
      compute: () => (matureRate({ temperature: 15, tan: 2 }) * 1968) / 1000,
    },
    ...mediaChecks,
    {
      id: 'bead-order-low',
      source: 'ebeling-wheaton-2006',
      where: 'abstract: first order below 1 mg NH4-N/L',
      mark: 'R',
      what: 'apparent order in TAN, 0.3 to 1 mg/L, 25 degC',
      unit: '1',
      ...about(1, 0.25, 'orders'),
      compute: () => order(0.3, 1),
    },
    {
      id: 'bead-order-high',
      source: 'ebeling-wheaton-2006',
      where: 'abstract: zero order above 1 mg NH4-N/L',
      mark: 'R',
      what: 'apparent order in TAN, 1 to 4 mg/L, 25 degC',
      unit: '1',
      ...about(0, 0.25, 'orders'),
      miss: 'a Monod law with its half at 0.7 mg/L levels off slowly: still 0.36 here, 0.2 from 2 mg/L on',
      compute: () => order(1, 4),
    },
    {
      id: 'bead-linear-low',
      source: 'malone-pfeiffer-2006',
      where: 'abstract: linear in TAN below 1 g/m3',
      mark: 'R',
      what: 'apparent order in TAN, 0.3 to 1 mg/L, 20 degC',
      unit: '1',
      ...about(1, 0.25, 'orders'),
      compute: () => order(0.3, 1, 20),
    },
    {
      id: 'trickling-order-low',
      source: 'eding-2006',
      where: 'half order below about 2 mg/L',
      mark: 'M',
      what: 'apparent order in TAN, 0.5 to 2 mg/L, 25 degC',
      unit: '1',
      ...about(0.5, 0.25, 'orders'),
      compute: () => order(0.5, 2),
    },
    {
      id: 'trickling-order-high',
      source: 'eding-2006',
      where: 'zero order above about 2 mg/L',
      mark: 'M',
      what: 'apparent order in TAN, 2 to 8 mg/L, 25 degC',
      unit: '1',
      ...about(0, 0.25, 'orders'),
      compute: () => order(2, 8),
    },
    ...[2, 8].map((tan): PublishedCheck => ({
      id: `areal-theta-${tan}`,
      source: 'zhu-chen-2002',
      where: 'areal rate, 10-25 degC, not limited by diffusion',
      mark: 'M',
      what: `factor a degree of the areal rate, 15 to 25 degC, TAN ${tan} mg/L`,
      unit: '1',
      ...between(1.07, 1.1),
      compute: () => theta(tan),
    })),
    {
      id: 'doubling-ammonia-oxidisers',
      source: 'nitrifier-doubling',
      where: 'Nitrosomonas',
      mark: 'M',
      what: 'doubling time of ammonia oxidisers with ample ammonia, 25 degC, pH 7.8',
      unit: 'h',
      ...between(8, 36),
      compute: () => doublingTime('aob'),
    },
    {
      id: 'doubling-nitrite-oxidisers',
      source: 'nitrifier-doubling',
      where: 'Nitrobacter',
      mark: 'M',
      what: 'doubling time of nitrite oxidisers with ample nitrite, 25 degC, pH 7.8',
      unit: 'h',
      ...between(12, 60),
      compute: () => doublingTime('nob'),
    },
  ],
};
