import { createRandom } from '@leat/core';
import { describe, expect, it } from 'vitest';
import { normalQuantile } from '../../../../packages/core/src/base/normal.js';
import {
  combined,
  halfWidths,
  type Rehearsed,
  shareWithin,
  weightsBy,
} from '../../../../packages/core/src/calibration/combination.js';
import { countingOf } from '../../../../packages/core/src/calibration/correlated.js';
import { kitScale } from '../../../../packages/core/src/calibration/kit-scale.js';
import type { Observation } from '../../../../packages/core/src/calibration/readings.js';
import { follow, goneOn, likeliest } from '../../../../packages/core/src/calibration/returning.js';
import { shownByKit } from '../../../../packages/core/src/calibration/shown-by-kit.js';

const guesses = { model: 9, returning: 1, level: 1.1, last: 1.2, month: 0.9 };
const even = { model: 0.2, returning: 0.2, level: 0.2, last: 0.2, month: 0.2 };
const rehearsed = (errors: Rehearsed['errors'], count: number): readonly Rehearsed[] =>
  Array.from({ length: count }, (_, i) => ({ time: 90 + i / 10, horizon: 0, errors, combined: errors.last }));
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

describe('the combination', () => {
  it('follows the ways that agree', () => {
    const middle = combined(guesses, even, 0.3);
    expect(middle).toBeGreaterThan(1);
    expect(middle).toBeLessThan(1.4);
  });

  it('trusts the model alone only after it has shown that it can', () => {
    const none = weightsBy({ rehearsed: [], tried: [] }, 0, 100);
    expect(none.model).toBeLessThan(0.02);
    const good = { model: 0.1, returning: 1, level: 2, last: 2, month: 2 };
    const shown = weightsBy({ rehearsed: rehearsed(good, 40), tried: [] }, 0, 100);
    expect(shown.model).toBeGreaterThan(0.9);
    expect(Object.values(shown).reduce((sum, each) => sum + each, 0)).toBeCloseTo(1, 12);
  });

  it('bands are the quantiles of past errors once many are known', () => {
    const random = createRandom(9);
    const errors = Array.from({ length: 2000 }, () => 3 * normalQuantile(0.0005 + 0.999 * random()));
    const past = errors.map(
      (error) => rehearsed({ model: 0, returning: 0, level: 0, last: error, month: 0 }, 1)[0],
    );
    const { of50, of90 } = halfWidths({ rehearsed: past, tried: [] }, even, 0, 100, 1);
    expect(of90).toBeGreaterThan(3 * 1.5);
    expect(of90).toBeLessThan(3 * 1.8);
    expect(of50).toBeGreaterThan(3 * 0.6);
    expect(of50).toBeLessThan(3 * 0.75);
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
