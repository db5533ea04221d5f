import { median } from 'd3-array';
import { follow, goneOn, likeliest, type ScaledReading, type Spoiling } from './returning.js';

/**
 * Ways to foretell a reading: the model as fitted; the model with its latest distance to the readings, which slowly
 * returns to none; the level of the readings, without a model; the last reading; the median of the last 28 days.
 */
export const guessNames = ['model', 'returning', 'level', 'last', 'month'] as const;

export type GuessName = (typeof guessNames)[number];

/** A value by each way, on the scale of the kit. */
export type Guesses = Readonly<Record<GuessName, number>>;

/** A reading of the past, on the scale of the kit, with what the model has there. */
export interface PastReading extends ScaledReading {
  /** The figure of the reading. */
  readonly value: number;
  readonly model: number;
}

/** What is foretold of a time ahead. */
export interface Guessed {
  readonly guesses: Guesses;
  /** Standard deviation of a reading about it, as the wandering of the level tells. */
  readonly spread: number;
}

/** Middle of a reading; its end where the other is open. */
export const middleOf = ({ low, high }: { low: number; high: number }): number =>
  !Number.isFinite(low) ? high : !Number.isFinite(high) ? low : (low + high) / 2;

const monthLong = 28;

/**
 * Foretells one quantity in one place at some times, by each way, from its readings up to today.
 * @param past in the order of time; at least one
 * @param ahead times with what the model has there
 */
export function guessesAt(
  past: readonly PastReading[],
  ahead: readonly { readonly time: number; readonly model: number }[],
  today: number,
  spoiling: Spoiling,
): readonly Guessed[] {
  const usual = median(past, middleOf) ?? 0;
  const level = likeliest(past, usual, spoiling);
  const followed = follow(past, level, spoiling);
  const apart = past.map(({ time, low, high, model }) => ({ time, low: low - model, high: high - model }));
  const distance = likeliest(apart, 0, spoiling);
  const strayed = follow(apart, distance, spoiling);
  const last = past[past.length - 1].value;
  const lately = past.filter(({ time }) => time > today - monthLong);
  const month = median(lately, ({ value }) => value) ?? last;
  return ahead.map(({ time, model }): Guessed => {
    const there = goneOn(followed.known, time - followed.time, level);
    const stray = goneOn(strayed.known, time - strayed.time, distance);
    return {
      guesses: { model, returning: model + stray.level, level: there.level, last, month },
      spread: Math.sqrt(1 + Math.min(there.variance, stray.variance)),
    };
  });
}
