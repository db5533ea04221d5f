import { createRandom } from '@leat/core';
import { describe, expect, it } from 'vitest';
import { normalQuantile } from '../../../../packages/core/src/base/normal.js';
import {
  combined,
  type Rehearsed,
  shareWithin,
  weightsBy,
  widthsBy,
} from '../../../../packages/core/src/calibration/combination.js';
import { countingOf } from '../../../../packages/core/src/calibration/correlated.js';
import { kitScale } from '../../../../packages/core/src/log/kit-scale.js';
import type { Observation } from '../../../../packages/core/src/calibration/readings.js';
import { follow, goneOn, likeliest } from '../../../../packages/core/src/calibration/returning.js';
import {
  guessesAt,
  memoriesOf,
  type PastReading,
} from '../../../../packages/core/src/calibration/guesses.js';
import { halfStepAt, shownByKit } from '../../../../packages/core/src/calibration/shown-by-kit.js';

const guesses = { habit: 1, half: 1.2, model: 9 };
const even = { habit: 1 / 3, half: 1 / 3, model: 1 / 3 };
const silent = { habit: 0, half: 0, model: 0 };
const rehearsed = (errors: Rehearsed['errors'], count: number, deviation = 1): readonly Rehearsed[] =>
  Array.from({ length: count }, (_, i) => ({
    ...{ time: 90 + i / 10, horizon: 0, ahead: 3, errors, combined: errors.habit, deviation },
  }));
const spoiling = { share: 0.04, spread: 8 };

describe('the scale of a kit', () => {
  const scale = kitScale({ deviation: (value) => Math.hypot(0.08, 0.15 * value) });

  it('has an error of 1 everywhere, and goes back', () => {
    for (const value of [0, 0.1, 0.5, 2, 40]) {
      const error = Math.hypot(0.08, 0.15 * value);
      expect(scale.to(value + error / 1000) - scale.to(value)).toBeCloseTo(1e-3, 5);
      expect(scale.from(scale.to(value))).toBeCloseTo(value, 10);
    }
    expect(scale.to(-Infinity)).toBe(-Infinity);
    expect(scale.to(-0.3)).toBeCloseTo(-scale.to(0.3), 12);
  });
});

describe('a level that returns', () => {
  const by = { middle: 2, memory: 10, spread: 3 };

  it('falls to 1/e of its distance in its memory, and its variance to that far apart', () => {
    const gone = goneOn({ level: 12, variance: 0 }, 10, by);
    expect(gone.level).toBeCloseTo(2 + 10 / Math.E, 10);
    expect(gone.variance).toBeCloseTo(9 * (1 - Math.exp(-2)), 10);
  });

  it('takes a reading as the weighted mean that normals have, and a spoilt one hardly', () => {
    const exact = follow([{ time: 0, low: 5, high: 5 }], by, { share: 0, spread: 8 });
    expect(exact.known.level).toBeCloseTo(2 + (9 / 10) * 3, 3);
    expect(exact.known.variance).toBeCloseTo(9 / 10, 3);
    const steady = Array.from({ length: 20 }, (_, i) => ({ time: i, low: 2, high: 2 }));
    const spoilt = follow([...steady, { time: 20, low: 40, high: 40 }], { ...by, spread: 1 }, spoiling);
    expect(spoilt.sound[20]).toBeLessThan(0.01);
    expect(spoilt.known.level).toBeLessThan(3);
  });

  it('an open reading that says what is expected moves it little', () => {
    const { known } = follow([{ time: 0, low: -Infinity, high: 9 }], by, spoiling);
    expect(Math.abs(known.level - 2)).toBeLessThan(0.3);
  });

  it('short and long memories are told apart by readings', () => {
    const random = createRandom(5);
    const noise = (): number => normalQuantile(0.0005 + 0.999 * random());
    let level = 0;
    const slow = Array.from({ length: 100 }, (_, time) => {
      level = level * Math.exp(-1 / 80) + 4 * Math.sqrt(1 - Math.exp(-2 / 80)) * noise();
      const shown = level + noise();
      return { time, low: shown, high: shown };
    });
    expect(likeliest(slow, 0, spoiling).memory).toBeGreaterThan(15);
    const fast = Array.from({ length: 100 }, (_, time) => {
      const shown = 4 * noise();
      return { time, low: shown, high: shown };
    });
    expect(likeliest(fast, 0, spoiling).memory).toBe(5);
  });
});

describe('a level that may jump', () => {
  const by = { middle: 0, memory: 400, spread: 4 };
  const exact = (level: number, from: number, count: number) =>
    Array.from({ length: count }, (_, i) => ({ time: from + 3 * i, low: level, high: level }));
  const jumps = { rate: 0.01, most: 0.2, size: 8 };

  it('is followed after two readings, where one that may not takes them for spoilt', () => {
    const log = [...exact(20, 0, 20), ...exact(0, 60, 2)];
    const free = follow(log, by, spoiling, { jumps });
    const stiff = follow(log, { ...by, middle: 20, spread: 1 }, spoiling);
    expect(Math.abs(free.known.level)).toBeLessThan(2);
    expect(stiff.known.level).toBeGreaterThan(10);
  });

  it('after one reading far off doubts both, and is back where the next says that it was spoilt', () => {
    const once = follow([...exact(20, 0, 20), ...exact(0, 60, 1)], by, spoiling, { jumps });
    expect(once.known.variance).toBeGreaterThan(9);
    const back = follow([...exact(20, 0, 20), ...exact(0, 60, 1), ...exact(20, 63, 2)], by, spoiling, {
      jumps,
    });
    expect(back.known.level).toBeGreaterThan(18);
  });

  it('returns to what its middle was then', () => {
    const log = exact(5, 0, 4);
    const { known } = follow(
      log,
      { ...by, memory: 1, spread: 0.5 },
      { share: 0, spread: 8 },
      { middles: [5, 5, 5, 5] },
    );
    expect(known.level).toBeCloseTo(5, 6);
  });
});

describe('the ways to foretell', () => {
  const random = createRandom(12);
  const noise = (): number => normalQuantile(0.0005 + 0.999 * random());
  const swing = (time: number): number => 12 * Math.sin(time / 9);
  const past = (of: (time: number) => number): readonly PastReading[] =>
    Array.from({ length: 40 }, (_, i) => {
      const value = of(2 * i) + noise();
      return { time: 2 * i, low: value, high: value, value, model: swing(2 * i) };
    });
  const ahead = [{ time: 92, model: swing(92) }];

  it('a model whose changes come true is believed by them, whatever its level', () => {
    const {
      evidence,
      ahead: [told],
    } = guessesAt(
      past((time) => 30 + swing(time)),
      ahead,
      spoiling,
      memoriesOf('ammonia'),
    );
    expect(evidence.model - evidence.habit).toBeGreaterThan(20);
    expect(Math.abs(told.guesses.model - 30 - swing(92))).toBeLessThan(1.5);
    expect(told.deviations.model).toBeLessThan(told.deviations.habit);
  });

  it('a model whose changes do not come is not, and the level stays', () => {
    const {
      evidence,
      ahead: [told],
    } = guessesAt(
      past(() => 30),
      ahead,
      spoiling,
      memoriesOf('ammonia'),
    );
    expect(evidence.habit - evidence.model).toBeGreaterThan(20);
    expect(Math.abs(told.guesses.habit - 30)).toBeLessThan(1);
  });

  it('open readings that the model agrees with do not bend it', () => {
    const open = Array.from({ length: 12 }, (_, i) => ({
      ...{ time: 3 * i, low: 24, high: Infinity, value: 26, model: 36 },
    }));
    const {
      ahead: [told],
    } = guessesAt(open, [{ time: 40, model: 36 }], spoiling, memoriesOf('nitrite'));
    // Without that, half of each distance of 12 to the open bounds would come in.
    expect(Math.abs(told.guesses.model - 36)).toBeLessThan(3);
  });

  it('nitrate, which gathers, does not return within weeks as ammonia may', () => {
    expect(Math.min(...memoriesOf('nitrate'))).toBeGreaterThan(28);
    expect(Math.min(...memoriesOf('ammonia'))).toBeLessThan(7);
  });
});

describe('the combination', () => {
  it('follows the ways that agree', () => {
    const middle = combined({ guesses, deviations: { habit: 1, half: 1, model: 1 } }, even);
    expect(middle).toBeGreaterThan(1);
    expect(middle).toBeLessThan(2);
  });

  it('trusts the model less than habit until it has shown that it can', () => {
    const none = weightsBy(silent, [], 0, 100);
    expect(none.model).toBeLessThan(none.half);
    expect(none.half).toBeLessThan(none.habit);
    expect(Object.values(none).reduce((sum, each) => sum + each, 0)).toBeCloseTo(1, 12);
    const shown = weightsBy(silent, rehearsed({ model: 0.1, half: 1.5, habit: 3 }, 40), 0, 100);
    expect(shown.model).toBeGreaterThan(0.9);
    const followed = weightsBy({ habit: 0, half: 6, model: 12 }, [], 0, 100);
    expect(followed.model).toBeGreaterThan(0.4);
  });

  it('rehearsed forecasts outweigh how readings went from one to the next', () => {
    const failed = weightsBy(
      { habit: 0, half: 6, model: 12 },
      rehearsed({ model: 9, half: 4, habit: 1 }, 40),
      0,
      100,
    );
    expect(failed.habit).toBeGreaterThan(0.9);
  });

  it('bands are the quantiles of past errors over what was expected once many are known', () => {
    const random = createRandom(9);
    const errors = Array.from({ length: 2000 }, () => 3 * normalQuantile(0.0005 + 0.999 * random()));
    const past = errors.map((error) => rehearsed({ model: 0, half: 0, habit: error }, 1)[0]);
    const { of50, of90 } = widthsBy(past, 100)(3, 1, 0);
    expect(of90).toBeGreaterThan(3 * 1.5);
    expect(of90).toBeLessThan(3 * 1.8);
    expect(of50).toBeGreaterThan(3 * 0.6);
    expect(of50).toBeLessThan(3 * 0.75);
    // Twice as unsure, twice as wide.
    expect(widthsBy(past, 100)(3, 2, 0).of90).toBeCloseTo(2 * of90, 12);
  });

  it('bands widen with the days ahead where past errors did, and never narrow', () => {
    const random = createRandom(4);
    const past = (wide: (ahead: number) => number): readonly Rehearsed[] =>
      Array.from({ length: 1200 }, (_, i) => {
        const ahead = i % 28;
        const error = wide(ahead) * normalQuantile(0.0005 + 0.999 * random());
        return { ...rehearsed({ model: 0, half: 0, habit: error }, 1)[0], ahead };
      });
    const days = [0, 2, 5, 9, 14, 20, 27];
    const of90 = (all: readonly Rehearsed[]): readonly number[] =>
      days.map((ahead) => widthsBy(all, 100)(ahead, 1, 0).of90);
    const grown = of90(past((ahead) => Math.sqrt(1 + ahead)));
    expect(grown[0]).toBeLessThan(0.6 * grown[3]);
    expect(grown[6]).toBeGreaterThan(1.2 * grown[3]);
    const [still, shrunk] = [of90(past(() => 1)), of90(past((ahead) => 2 - ahead / 28))];
    expect(still[6] / still[0]).toBeLessThan(1.15);
    for (const widths of [grown, still, shrunk])
      widths.forEach((width, i) => expect(width).toBeGreaterThanOrEqual((widths[i - 1] ?? 0) - 1e-12));
    expect(of90([])).toEqual(days.map(() => of90([])[0]));
  });

  it('a band of what a kit shows is no narrower than the step of the kit', () => {
    expect(widthsBy([], 100)(3, 1, 7).of90).toBe(7);
    const card = [
      { low: 7.5, high: 15, value: 10 },
      { low: 15, high: Infinity, value: 20 },
    ];
    expect(halfStepAt(card, 14)).toBe(3.75);
    expect(halfStepAt(card, 16)).toBe(0);
  });

  it('a reading lies in a band by as much of it as does: right forecasts hold 90 % however coarse the steps', () => {
    expect(shareWithin(-1, 1, 0, 2, 1.645)).toBe(1);
    expect(shareWithin(5, 7, 0, 2, 1.645)).toBe(0);
    // Steps of 3 errors: the shares, weighed by how often each step is shown, come to 90 %.
    const cells = Array.from({ length: 21 }, (_, i) => 3 * (i - 10) - 1);
    const random = createRandom(2);
    let sum = 0;
    for (let i = 0; i < 20000; i++) {
      const value = normalQuantile(1e-6 + (1 - 2e-6) * random());
      const low = Math.max(...cells.filter((cell) => cell <= value));
      sum += shareWithin(low, low + 3, 0, 1.6448536, 1.6448536);
    }
    expect(sum / 20000).toBeCloseTo(0.9, 2);
  });

  it('a card that has 10 and 20 shows no 14', () => {
    const card = [
      { low: 7.5, high: 15, value: 10 },
      { low: 15, high: 30, value: 20 },
    ];
    expect(shownByKit(card, 14)).toBe(10);
    expect(shownByKit(card, 16)).toBe(20);
    expect(shownByKit(card, 90)).toBe(90);
  });
});

describe('readings whose errors go on', () => {
  const reading = (time: number): Observation => ({
    time,
    vessel: 0,
    reading: {
      ...{ date: '2026-01-01', hour: 0, row: 1, column: 'pH', reads: 'pH', vessel: 'tank' },
      ...{ low: 7, high: 7.2, value: 7.1, text: '7.1' },
    },
  });
  const kit = { deviation: () => 0.12, outlierShare: 0.04, outlierSpread: 8 };

  it('count fully alone, and all together hardly more than one where they are close', () => {
    const [alone] = countingOf([reading(0)], () => kit);
    expect(alone.weight).toBe(1);
    const close = countingOf(
      Array.from({ length: 50 }, (_, i) => reading(i / 10)),
      () => kit,
    );
    const information = close.reduce((sum, { weight, wider }) => sum + weight / (wider * wider), 0);
    // Of 50 with a common error as large as the kit's, and errors of their own: 1 / (1 + 1/50), a little more with time.
    expect(information).toBeGreaterThan(0.9);
    expect(information).toBeLessThan(1.3);
  });
});
