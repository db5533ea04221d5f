import {
  csvTable,
  dateAfter,
  readLog,
  readLogMap,
  readScenarioFully,
  type FitSystem,
  type WaterLog,
} from '@leat/core';
import { drawsFrom, simulateUnkind, truthOf, type UnkindDay, type UnkindTruth } from './simulator.js';

const start = '2025-01-01';

/** The system file of the keeper: what she believes of it; the twin is not so. Invented. */
const systemText = (days: number, startUp: boolean, ration: number): string => `
title: Invented twin
days: ${days + 40}
start-date: ${start}
climate:
  water-temperature: { unit: degC, monthly: [23, 23, 23, 23, 23, 23, 23, 23, 23, 23, 23, 23] }
  et0: { unit: mm/d, monthly: [3, 3, 3, 3, 3, 3, 3, 3, 3, 3, 3, 3] }
  light: 20 mol/m2/d
waters:
  mains: { nitrate: 1 mg N/L, alkalinity: 120 mg/L as CaCO3, pH: 7.6, chloride: 30 mg/L }
vessels:
  tank: { kind: fish-tank, volume: 1 m3, area: 1.2 m2, aeration: 8 1/h }
  filter:
    { kind: biofilter, volume: 200 L, area: 0.4 m2, media: { type: moving-bed-carrier, volume: 0.1 m3 }, aeration: 4 1/h }
reservoir: tank
pumps: { main: { inlet: 80 L, restart: 120 L } }
flows:
  - { from: tank, to: filter, pump: main, rate: 1 m3/h }
  - { from: filter, to: tank }
top-up: { level: 950 L, rate: 10 L/min, from: [{ water: mains }] }
fish:
  tilapia: { in: tank, species: nile-tilapia, number: 30, mass: 150 g, feed: grower-32, ration: ${ration} g/d }
dosing:
  - { into: tank, product: sodium-bicarbonate, mass: 30 g, every: 7 d }
start:
  biofilm: ${startUp ? 'uncycled' : 'cycled'}
  water:
    { like: mains, ammonia: 0.3 mg N/L, nitrite: 0.1 mg N/L, nitrate: 20 mg N/L, alkalinity: 90 mg/L as CaCO3, pH: 7.3 }
`;

const cards = {
  ammonia: [0, 0.25, 0.5, 1, 2, 4, 8],
  nitrite: [0, 0.1, 0.25, 0.5, 1, 2, 5],
  nitrate: [0, 5, 10, 20, 40, 80, 160],
} as const;

const nearestStep = (steps: readonly number[], value: number): string =>
  String(steps.reduce((near, step) => (Math.abs(step - value) < Math.abs(near - value) ? step : near)));

/** How one quantity is read by this keeper. */
interface Kit {
  readonly relative: number;
  readonly absolute: number;
  /** Standard deviation and memory (d) of the tester's own slow error, as a share. */
  readonly slow: number;
  readonly memory: number;
  readonly often: number;
  readonly show: (value: number) => string;
}

/** A log as such a keeper writes it, and its map. */
function written(
  seed: number,
  truth: UnkindTruth,
  course: readonly UnkindDay[],
): { csv: string; map: string } {
  const { uniform, normal, chance } = drawsFrom(seed * 15485863 + 29);
  const byCard = chance(0.6);
  const daily = chance(0.3);
  const second = chance(0.4) ? Math.round(truth.days * uniform(0.35, 0.65)) : Infinity;
  const bias = {
    ammonia: uniform(0.75, 1.3),
    nitrite: uniform(0.75, 1.3),
    nitrate: uniform(0.7, 1.35),
    pH: uniform(-0.3, 0.3),
  };
  const gap = chance(0.5)
    ? { from: Math.round(uniform(40, truth.days - 40)), long: Math.round(uniform(10, 30)) }
    : undefined;
  const keepers = chance(0.35);
  const kit = (steps: readonly number[], absolute: number, often: number, places: number): Kit => ({
    ...{ relative: uniform(0.06, 0.16), absolute, often: often * (daily ? 1.6 : 1) },
    ...{ slow: chance(0.5) ? uniform(0.05, 0.25) : 0, memory: uniform(5, 40) },
    show: (value) => (byCard ? nearestStep(steps, value) : Math.max(0, value).toFixed(places)),
  });
  const kits = {
    ammonia: kit(cards.ammonia, 0.06, uniform(0.15, 0.4), 2),
    nitrite: kit(cards.nitrite, 0.02, uniform(0.15, 0.4), 2),
    nitrate: kit(cards.nitrate, 0.8, uniform(0.1, 0.35), 0),
  };
  const names = ['ammonia', 'nitrite', 'nitrate'] as const;
  const slow = { ammonia: 0, nitrite: 0, nitrate: 0, pH: 0 };
  const slowPH = chance(0.5) ? uniform(0.03, 0.12) : 0;
  const rows = course.map((today, day): string => {
    const missing = gap !== undefined && day >= gap.from && day < gap.from + gap.long;
    const other = keepers && day % 7 >= 5;
    const cells = names.map((name) => {
      const { relative, absolute, slow: size, memory, often, show } = kits[name];
      const kept = Math.exp(-1 / memory);
      slow[name] = kept * slow[name] + size * Math.sqrt(1 - kept * kept) * normal();
      const factor = (1 + slow[name]) * (day >= second ? bias[name] : 1) * (other ? 1.12 : 1);
      const value = today[name] * factor * (1 + relative * normal()) + absolute * normal();
      const spoilt = chance(0.03) ? uniform(0.2, 4) : 1;
      return chance(often) && !missing ? show(value * spoilt) : '';
    });
    slow.pH = 0.93 * slow.pH + slowPH * Math.sqrt(1 - 0.93 * 0.93) * normal();
    const pH = today.pH + slow.pH + (day >= second ? bias.pH : 0) + 0.08 * normal();
    const shownPH = chance(daily ? 0.9 : 0.5) && !missing ? (Math.round(pH * 5) / 5).toFixed(1) : '';
    const feed = missing && chance(0.6) ? '' : String(Math.round(today.feed));
    const warm = missing ? '' : today.temperature.toFixed(1);
    return [dateAfter(start, day), ...cells, shownPH, feed, warm].join(',');
  });
  const steps = (name: keyof typeof cards): string => (byCard ? `, steps: [${cards[name].join(', ')}]` : '');
  const map = [
    'date: { column: Date }',
    'columns:',
    ...names.map((name) => `  ${name}: { reads: ${name}, in: tank, unit: mg N/L${steps(name)} }`),
    '  pH: { reads: pH, in: tank, resolution: 0.2 }',
    '  Feed: { feed: all, unit: g }',
    '  Temp: { reads: temperature, in: tank, unit: degC }',
    '',
  ].join('\n');
  return { csv: `${['Date,ammonia,nitrite,nitrate,pH,Feed,Temp', ...rows].join('\n')}\n`, map };
}

/** An invented log of an invented system that is not what its file says, by a simulator that is not Leat's. */
export interface UnkindTwin {
  readonly seed: number;
  readonly truth: UnkindTruth;
  readonly system: FitSystem;
  readonly log: WaterLog;
  readonly csv: string;
  readonly map: string;
}

/** The twin of a seed: the same for the same seed. */
export function unkindTwin(seed: number): UnkindTwin {
  const truth = truthOf(seed);
  const course = simulateUnkind(seed, truth);
  const { csv, map } = written(seed, truth, course);
  const first = course.slice(0, 14).reduce((sum, { feed }) => sum + feed / 14, 0);
  const text = systemText(truth.days, truth.startUp, Math.max(5, Math.round(first)));
  const table = csvTable(csv, 'log.csv');
  return {
    ...{ seed, truth, csv, map },
    system: {
      read: (set, days) =>
        readScenarioFully(text, { file: 'twin.yaml', set, ...(days === undefined ? {} : { days }) }),
    },
    log: readLog(table, readLogMap(map, 'log.map', table)),
  };
}
