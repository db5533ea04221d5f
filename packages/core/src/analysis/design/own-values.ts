// Reads numbers as: errors of own numbers
import type { Parameters } from '../../library/parameters.js';
import { valuesLike } from '../../scenario/file/paths-like.js';
import type { Plain } from '../../scenario/file/tree.js';
import { partsOf } from './value-range.js';

/** A number of the user's own in a system file, how far off it usually is, and what would tell it better. */
export interface OwnValue {
  readonly path: string;
  /** The number as it is written, in `unit`. */
  readonly value: number;
  /** Empty: a bare number. */
  readonly unit: string;
  /** Whether only whole numbers make sense. */
  readonly whole: boolean;
  /** Share of the value. */
  readonly error: number;
  /** Whether the error was stated by the user; else it is a usual one. */
  readonly stated: boolean;
  /** How to measure it better. */
  readonly measure: string;
}

/** An error that a user states of values at a pattern of paths: a share. */
export interface StatedError {
  readonly pattern: string;
  /** Share of the value. */
  readonly error: number;
}

interface Kind {
  readonly id: string;
  readonly patterns: readonly string[];
  readonly measure: string;
  readonly whole?: true;
}

const concentrations = ['ammonia', 'nitrite', 'nitrate', 'alkalinity', 'chloride', 'calcium'];

/** What users write of their own, by how it is known, and what measures it. */
const kinds: readonly Kind[] = [
  { id: 'own-error.feed', patterns: ['fish.*.ration'], measure: 'weigh a day of feed on a kitchen scale' },
  {
    id: 'own-error.fish-number',
    patterns: ['fish.*.number'],
    measure: 'count them when you grade',
    whole: true,
  },
  { id: 'own-error.fish-mass', patterns: ['fish.*.mass'], measure: 'weigh a bucket with twenty fish' },
  {
    id: 'own-error.volume',
    patterns: ['vessels.*.volume'],
    measure: 'tape measure inside at the standpipe, or time a bucket as it fills',
  },
  { id: 'own-error.media', patterns: ['vessels.*.media.volume'], measure: 'tape measure of the filled part' },
  { id: 'own-error.area', patterns: ['vessels.*.area', 'plantings.*.area'], measure: 'tape measure' },
  {
    id: 'own-error.flow',
    patterns: ['flows[*].rate', 'vessels.*.exchange'],
    measure: 'bucket and watch at the outlet',
  },
  {
    id: 'own-error.aeration',
    patterns: ['vessels.*.aeration', 'vessels.*.aeration.rate'],
    measure: 'oxygen meter: how fast clean water fills up',
  },
  {
    id: 'own-error.capture',
    patterns: ['vessels.*.capture'],
    measure: 'dry and weigh what a fortnight leaves in it',
  },
  {
    id: 'own-error.water',
    patterns: concentrations.flatMap((each) => [`waters.*.${each}`, `start.water.${each}`]),
    measure: 'a laboratory, or the mean of five tests',
  },
  { id: 'own-error.dose', patterns: ['dosing[*].mass'], measure: 'kitchen scale' },
];

/** Whether a pattern of paths fits a path; `*` stands for one step. */
function fits(pattern: string, path: string): boolean {
  const steps = (text: string): readonly string[] => text.replace(/\[(\d+|\*)\]/g, '.$1').split('.');
  const [wanted, there] = [steps(pattern), steps(path)];
  return wanted.length === there.length && wanted.every((step, i) => step === '*' || step === there[i]);
}

/**
 * The user's own numbers in a file with how far off they usually are: rations, counts and masses of fish, volumes, media,
 * areas, flows, aeration, waters, doses. What the user states of an error wins. Usual errors are common practice, not
 * published.
 * @param written the file as written (`written` of a resolved file)
 */
export function ownValues(
  written: Plain,
  parameters: Pick<Parameters, 'value'>,
  stated: readonly StatedError[] = [],
): readonly OwnValue[] {
  return kinds.flatMap(({ id, patterns, measure, whole = false }) =>
    patterns
      .flatMap((pattern) => valuesLike(written, pattern))
      .flatMap(({ path, value: text }): OwnValue[] => {
        const parts = partsOf(String(text), path);
        if (!('value' in parts) || parts.value === 0) return [];
        const own = stated.find(({ pattern }) => fits(pattern, path));
        return [
          {
            path,
            ...parts,
            whole,
            error: own?.error ?? parameters.value(id),
            stated: own !== undefined,
            measure,
          },
        ];
      }),
  );
}

/**
 * A value off by a share, as it is written in a file; a whole number of fish moves by one at least.
 * @param share of the value, such as 0.1
 */
export function offBy({ value, unit, whole }: OwnValue, share: number): string {
  const moved = value * (1 + share);
  const rounded = whole
    ? Math.max(
        0,
        share === 0 ? value : value + Math.sign(share) * Math.max(1, Math.round(Math.abs(moved - value))),
      )
    : Number(moved.toPrecision(12));
  return unit === '' ? String(rounded) : `${rounded} ${unit}`;
}
