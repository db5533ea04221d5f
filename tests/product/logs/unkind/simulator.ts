import { createRandom } from '@leat/core';
import { normalQuantile } from '../../../../packages/core/src/base/normal.js';

/**
 * What happened in an invented system, by a simulator that is not Leat's: one stirred volume, nitrifiers as two
 * stocks that grow by what they turn over beyond an upkeep, with half-order uptake (a film's), a steady sink, pH by a leaky titration. Coarse on purpose: its structure, its
 * numbers and its kinetics are not those of the model that is fitted to it. All numbers are invented.
 */
export interface UnkindDay {
  readonly ammonia: number;
  readonly nitrite: number;
  readonly nitrate: number;
  readonly pH: number;
  readonly alkalinity: number;
  readonly temperature: number;
  /** What was truly fed, g. */
  readonly feed: number;
}

/** How an unkind twin differs from its system file, and how its log was kept; drawn from the seed. */
export interface UnkindTruth {
  readonly days: number;
  /** True volume over that of the file. */
  readonly volume: number;
  /** True weight of the feed over what is written. */
  readonly feedWeight: number;
  /** Whether it starts without nitrifiers. */
  readonly startUp: boolean;
  /** Water changes that nobody wrote down: day and share. */
  readonly changes: readonly { readonly day: number; readonly share: number }[];
  /** Steady discharge that the file does not have, a day. */
  readonly discharge: number;
  /** Nitrogen lost as gas, share of nitrate a day. */
  readonly sink: number;
}

export interface Draws {
  readonly uniform: (low: number, high: number) => number;
  readonly normal: () => number;
  readonly chance: (share: number) => boolean;
}

export function drawsFrom(seed: number): Draws {
  const random = createRandom(seed);
  return {
    uniform: (low, high) => low + (high - low) * random(),
    normal: () => normalQuantile(Math.min(Math.max(random(), 1e-9), 1 - 1e-9)),
    chance: (share) => random() < share,
  };
}

/** Numbers of an invented system, drawn. */
export function truthOf(seed: number): UnkindTruth {
  const { uniform, chance } = drawsFrom(seed * 7919 + 3);
  const days = Math.round(uniform(120, 200));
  const changing = chance(0.6);
  const count = changing ? Math.round(uniform(1, 6)) : 0;
  const discharging = chance(0.5);
  return {
    days,
    volume: chance(0.5) ? uniform(0.6, 1.7) : uniform(0.92, 1.08),
    feedWeight: chance(0.4) ? uniform(0.6, 1.5) : uniform(0.95, 1.05),
    startUp: chance(0.25),
    changes: Array.from({ length: count }, () => ({
      day: Math.round(uniform(20, days - 10)),
      share: uniform(0.2, 0.7),
    })).sort((a, b) => a.day - b.day),
    discharge: discharging ? uniform(0.005, 0.04) : 0,
    sink: chance(0.5) ? uniform(0.004, 0.03) : uniform(0, 0.004),
  };
}

/** Uptake per day at the reference temperature, a film's half-order in what it takes. */
const uptake = (stock: number, held: number, half: number): number =>
  held <= 0 ? 0 : (stock * Math.sqrt(held)) / (Math.sqrt(half) + Math.sqrt(held));

/** The course of an invented system, day by day: mornings. */
export function simulateUnkind(seed: number, truth: UnkindTruth): readonly UnkindDay[] {
  const { uniform, normal, chance } = drawsFrom(seed * 104729 + 11);
  const volume = 1.15 * truth.volume;
  const ration = uniform(25, 60) * Math.min(1.5, truth.volume);
  const growth = { aob: uniform(0.2, 0.5), nob: uniform(0.18, 0.45) };
  const idle = { aob: uniform(0.25, 0.5), nob: uniform(0.2, 0.45) };
  const load = (ration * 0.32 * 0.16 * 0.6) / volume;
  let [aob, nob] = truth.startUp ? [0.01 * load, 0.004 * load] : [load / idle.aob, load / idle.nob];
  let [ammonia, nitrite, nitrate, alkalinity] = truth.startUp
    ? [0.4, 0.05, uniform(2, 8), uniform(1.5, 2.4)]
    : [uniform(0.1, 0.6), uniform(0.02, 0.2), uniform(8, 60), uniform(1, 2.4)];
  // A filter that clogs and is washed, and meals that were too large: nobody writes them down.
  const halves = { aob: uniform(0.4, 2.5), nob: uniform(0.3, 2) };
  const washing = chance(0.5) ? Math.round(uniform(18, 50)) : Infinity;
  let [binge, clogged] = [1, 1];
  let appetite = 0;
  let warm = 0;
  let acid = 0;
  const days: UnkindDay[] = [];
  for (let day = 0; day < truth.days; day++) {
    appetite = 0.9 * appetite + 0.12 * normal();
    warm = 0.85 * warm + 0.35 * normal();
    acid = 0.95 * acid + 0.03 * normal();
    const temperature = 23 + 2 * Math.sin((day + seed * 37) / 58) + warm;
    binge = chance(0.02) ? uniform(1.3, 2.5) : 1 + 0.75 * (binge - 1);
    clogged = Math.max(0.35, 0.985 * clogged);
    if (day % washing === washing - 1) {
      [aob, nob, clogged] = [aob * uniform(0.5, 0.95), nob * uniform(0.4, 0.95), 1];
    }
    const fasting = (day + seed) % 7 === 6 && seed % 3 === 0;
    const feed = fasting ? 0 : ration * (1 + day / 500) * Math.max(0.3, 1 + appetite);
    const change = truth.changes.find((each) => each.day === day)?.share ?? 0;
    if (change > 0) {
      ammonia *= 1 - change;
      nitrite *= 1 - change;
      nitrate = nitrate * (1 - change) + change;
      alkalinity = alkalinity * (1 - change) + 2.4 * change;
    }
    if (day % 7 === 3 && alkalinity < 1.8) alkalinity += uniform(1.1, 1.7) * load;
    days.push({
      ...{ ammonia, nitrite, nitrate, alkalinity, temperature, feed },
      pH: 7.25 + 0.55 * Math.log10(Math.max(alkalinity, 0.05) / 1.5) + acid,
    });
    const pieces = 24;
    const heat = Math.pow(1.07, temperature - 23);
    const excreted = (feed * binge * truth.feedWeight * 0.32 * 0.16 * 0.6) / volume;
    for (let piece = 0; piece < pieces; piece++) {
      const h = 1 / pieces;
      const slow = alkalinity < 0.15 ? alkalinity / 0.15 : 1;
      const first = Math.min(
        heat * slow * (0.8 + 0.2 * clogged) * uptake(aob, ammonia, halves.aob),
        ammonia / h,
      );
      const second = Math.min(
        heat * slow * (0.8 + 0.2 * clogged) * uptake(nob, nitrite, halves.nob),
        nitrite / h,
      );
      aob += h * growth.aob * (first - idle.aob * aob);
      nob += h * growth.nob * (second - idle.nob * nob);
      // Fish excrete by day.
      const now = excreted * (1 + 0.8 * Math.sin(2 * Math.PI * (piece / pieces - 0.25)));
      ammonia += h * (now - first - truth.discharge * ammonia);
      nitrite += h * (first - second - truth.discharge * nitrite);
      nitrate += h * (second - (truth.discharge + truth.sink) * nitrate + truth.discharge);
      alkalinity +=
        h * ((0.8 * (truth.sink * nitrate)) / 14 - (first * 2) / 14 + truth.discharge * (2.4 - alkalinity));
      alkalinity = Math.max(alkalinity, 0.05);
    }
  }
  return days;
}
