import { doublingTime } from '../../support/doubling-time.js';
import { leastTan, matureRate, reachedOf, removedOf, shareKept } from '../../support/mature-surface.js';
import { about, between, within } from '../tolerance.js';
import type { PublishedCheck, Topic } from '../published-check.js';

/** Apparent order in TAN between two levels: slope of log rate over log TAN. */
const order = (from: number, to: number, temperature = 25): number =>
  Math.log(matureRate({ temperature, tan: to }) / matureRate({ temperature, tan: from })) /
  Math.log(to / from);

/** Factor a degree between 15 and 25 degC. */
const theta = (tan: number): number =>
  (matureRate({ temperature: 25, tan }) / matureRate({ temperature: 15, tan })) ** 0.1;

/** Areal rates: source, where it stands, range, and at what temperatures and TAN it is looked at. */
interface ArealRange {
  readonly from: Pick<PublishedCheck, 'source' | 'where' | 'mark'>;
  readonly low: number;
  readonly high: number;
  readonly at: readonly (readonly [temperature: number, tan: number, miss?: string])[];
}

const warm =
  'a clean surface by the law of Zhu & Chen does 0.94 at 27 degC and 2 mg/L; filters of the slides do 1-2 g, other sources (SRAC 282, Eding et al.) no more than 1.1';
const arealRanges: readonly ArealRange[] = [
  {
    from: { source: 'miller-slides', where: 'trickling and turning filters, 15-20 degC', mark: 'R' },
    low: 0.2,
    high: 1,
    at: [
      [15, 1],
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
      [28, 4],
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

/** A clean film at 27.2 degC: R = 1.859 (S - 0.07)/(S + 1.93). */
const cleanChecks = [0.5, 1, 2, 4].map((tan): PublishedCheck => ({
  id: `clean-film-${tan}`,
  source: 'areal-rate-law',
  where: 'R = 1.859 (S - 0.07)/(S + 1.93) g/m2/d at 27.2 degC',
  mark: 'R',
  what: `TAN oxidised by a clean surface, 27.2 degC, TAN ${tan} mg/L, oxygen 6.5 mg/L`,
  unit: 'g/(m2 d)',
  ...within(10, (1.859 * (tan - 0.07)) / (tan + 1.93)),
  chosen: 'biofilm.capacity',
  compute: () => matureRate({ temperature: 27.2, tan, oxygen: 6.5 }),
}));

/** The level of that law at which the rate is nothing. */
const leastCheck: PublishedCheck = {
  id: 'clean-film-least-tan',
  source: 'areal-rate-law',
  where: 'R = 1.859 (S - 0.07)/(S + 1.93) g/m2/d at 27.2 degC: S at R = 0',
  mark: 'R',
  what: 'least TAN that ammonia oxidisers live on, 27.2 degC, oxygen 6.5 mg/L',
  unit: 'mg/L',
  ...within(50, 0.07),
  compute: () => leastTan({ temperature: 27.2, oxygen: 6.5 }),
};

/** Rates beside organic matter: share of the clean rate that is kept. */
const organicChecks = (
  [
    ['michaud-2006', 'abstract: 30 % less at C/N 0.5', 'R', 0.5, 0.7, 'heterotroph.cover'],
    ['michaud-2006', 'abstract: 50 % less at higher C/N', 'R', 1, 0.5, 'heterotroph.cover'],
    ['zhu-chen-2001', 'abstract: 70 % less at C/N 1-2', 'R', 1.5, 0.3, undefined],
  ] as const
).map(([source, where, mark, ratio, kept, chosen]): PublishedCheck => ({
  id: `organic-${source}-${ratio}`,
  source,
  where,
  mark,
  what: `rate of a surface beside organic matter over its clean rate, C/N ${ratio} g/g, TAN 2 mg/L, 20 degC`,
  unit: '1',
  ...about(kept, 0.15, 'of the clean rate'),
  ...(chosen === undefined ? {} : { chosen }),
  compute: () => shareKept({ temperature: 20, tan: 2 }, ratio),
}));

/** Rates of filters in use: beside half a gram of carbon for each gram of TAN. */
const inUse = (tan: number): number => {
  const water = { temperature: 25, tan };
  return matureRate(water) * shareKept(water, 0.5);
};

/** Oxygen over TAN, g/g, at which a film answers to a little more of either alike; oxygen 2 mg/L. */
function evenRatio(): number {
  const answer = (by: 'tan' | 'oxygen', tan: number): number => {
    const water = { temperature: 25, tan, oxygen: 2 };
    return Math.log(matureRate({ ...water, [by]: water[by] * 1.05 }) / matureRate(water));
  };
  let [low, high] = [0.3, 10];
  for (let halving = 0; halving < 12; halving++) {
    const tan = Math.sqrt(low * high);
    if (answer('tan', tan) > answer('oxygen', tan)) low = tan;
    else high = tan;
  }
  return 2 / Math.sqrt(low * high);
}

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
    compute: () =>
      volumetric(reachedOf(surface, name === 'moving-bed carrier' ? 0.82 : 0.4), lowest * (i === 0 ? 5 : 10)),
    ...(miss === undefined ? {} : { miss }),
  })),
);

/** Rates of nitrifying surfaces. */
export const nitrifyingSurfaces: Topic = {
  title: 'Rates of nitrifying surfaces',
  kind: 'process',
  note:
    'A surface in so much water that it does not change, at rest, at pH 7.5, 6 mg/L of oxygen and 2 meq/L of alkalinity unless ' +
    'said otherwise. "In use" is beside organic matter, half a gram of carbon for each gram of TAN. An apparent order is held ' +
    'to be the published one where it is nearer to it than to the next half (0.25). Rusten et al. 2006 on moving beds at ' +
    '1 mg/L is too uncertain in its digits [W] and is left out; ' +
    'Harwanto et al. give loads per another volume, so only their proportion is used.',
  checks: [
    ...cleanChecks,
    leastCheck,
    ...organicChecks,
    ...[1, 2].map((tan): PublishedCheck => ({
      id: `areal-eding-2006-25-${tan}`,
      source: 'eding-2006',
      where: 'trickling filters',
      mark: 'M',
      what: `TAN oxidised by a surface in use (C/N 0.5), 25 degC, TAN ${tan} mg/L`,
      unit: 'g/(m2 d)',
      ...between(0.2, 0.6),
      compute: () => inUse(tan),
    })),
    {
      id: 'oxygen-over-tan',
      source: 'biofilm-kinetics-1982',
      where: 'abstract: at low ammonium oxygen limits below 3.4 g/g',
      mark: 'R',
      what: 'oxygen over TAN at which the rate answers to both alike, 25 degC, oxygen 2 mg/L',
      unit: 'g/g',
      ...within(25, 3.4),
      compute: evenRatio,
    },
    {
      id: 'cold-share',
      source: 'hoang-2014',
      where: 'abstract: 18 +- 5 % at 1 degC of 20 degC',
      mark: 'R',
      what: 'rate at rest at 1 degC over that at 20 degC, TAN 5 mg/L, oxygen near saturation',
      unit: '1',
      ...about(0.18, 0.05, 'of the rate at 20 degC'),
      compute: () =>
        matureRate({ temperature: 1, tan: 5, oxygen: 12 }) /
        matureRate({ temperature: 20, tan: 5, oxygen: 8 }),
    },
    ...arealChecks,
    {
      id: 'areal-fao-1',
      ...fao,
      what: 'TAN oxidised by a surface in use (C/N 0.5), 25 degC, TAN 1 mg/L',
      unit: 'g/(m2 d)',
      ...within(25, 0.47),
      compute: () => inUse(1),
    },
    {
      id: 'areal-fao-2',
      ...fao,
      what: 'TAN oxidised by a surface in use (C/N 0.5), 25 degC, TAN 2 mg/L',
      unit: 'g/(m2 d)',
      ...within(25, 0.47),
      compute: () => inUse(2),
    },
    {
      id: 'bead-filter-volumetric',
      source: 'malone-beecher-2000',
      where: 'floating bead filters, grow-out',
      mark: 'M',
      what: 'TAN oxidised per m3 of beads in use (1312 m2/m3, C/N 0.5), 25 degC, TAN 1 mg/L',
      unit: 'kg/(m3 d)',
      ...between(0.3, 0.6),
      compute: () => (inUse(1) * reachedOf(1312, 0.4)) / 1000,
    },
    {
      id: 'fluidised-sand-volumetric',
      source: 'miller-slides',
      where: 'fluidised sand, 15 degC',
      mark: 'R',
      what: 'TAN oxidised per m3 of sand (1968 m2/m3), 15 degC, TAN 2 mg/L',
      unit: 'kg/(m3 d)',
      ...within(25, 0.6),
      compute: () => (matureRate({ temperature: 15, tan: 2 }) * reachedOf(1968, 0.4)) / 1000,
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
      miss: 'a Monod law behind still water levels off slowly: still 0.48 here, 0.25 from 2 mg/L on',
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
      miss: 'what limits a thin film at low TAN is the still water before it, which is of first order, as bead filters are said to be (hit above); half order is that of a film so thick that TAN does not reach its bottom',
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
