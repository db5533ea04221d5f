import { originOf } from '../library/origins.js';
import type { Mark } from '../library/table-row.js';
import type { Parameters } from '../library/parameters.js';
import type { SampledRun } from '../run/run.js';
import { type Series, valuesByName } from './series.js';
import type { Direction } from './judge.js';

/**
 * What it means to pass a limit, the worst first: `domain` the laws of the model were measured on this side of it alone, so
 * that what follows is no forecast; `lethal` fish die of it within days, `harmful` it hurts them,
 * `uncomfortable` they eat and grow less or are ill at ease; `crop` advice for a crop, `design` a guide of design,
 * `release` a criterion for water that is let out.
 */
export const harms = /* @__PURE__ */ Object.freeze([
  'domain',
  'lethal',
  'harmful',
  'uncomfortable',
  'crop',
  'design',
  'release',
] as const);

/** What it means to pass a limit: one of `harms`. */
export type Harm = (typeof harms)[number];

/** A published bound on a quantity. */
export interface Limit {
  /** Of the row it comes from. */
  readonly id: string;
  readonly quantity: string;
  readonly unit: string;
  readonly direction: Direction;
  readonly harm: Harm;
  /** In `unit`. */
  readonly value: number;
  /** Time over which the mean is taken before it is compared, d; 0: the value itself. */
  readonly averaging: number;
  /** Species, crop or water that it is for. */
  readonly whom: string;
  /** Key of the source, place in it, and how it came here. */
  readonly source: string;
  readonly page: string;
  readonly mark: Mark;
}

/** A limit at the vessel, or `system`, that is held against it: all there is to say of it before a run has been judged. */
export interface PlacedLimit extends Limit {
  readonly place: string;
}

/** A limit with the course to hold against it. */
export interface LimitCheck {
  readonly limit: Limit;
  readonly place: string;
  readonly values: ArrayLike<number>;
  /** Whether those it is for were there at an output time. */
  readonly matters: (index: number) => boolean;
}

/** What the checks of one run read: its series by name and the tables. */
export interface LimitReader {
  readonly run: SampledRun;
  readonly parameters: Parameters;
  /** Values of a series; throws RangeError when there is none. */
  values(name: string): Float64Array;
}

/**
 * A reader of a run and its series.
 * @param all every series, where they are at hand; absent: those that are read are worked out, and no other
 */
export function limitReader(run: SampledRun, all?: readonly Series[]): LimitReader {
  const series = new Map(all?.map(({ name, values }) => [name, values]));
  const valuesAt = all === undefined ? valuesByName(run) : (name: string) => series.get(name);
  return {
    run,
    parameters: run.model.parameters,
    values(name) {
      const found = valuesAt(name);
      if (found === undefined) throw new RangeError(`no series ${name}`);
      return found;
    },
  };
}

/** A limit from a row of the tables, with the averaging time of another (absent: none). */
export function limitFrom(
  parameters: Parameters,
  what: Pick<Limit, 'quantity' | 'unit' | 'direction' | 'harm' | 'whom'> & {
    readonly id: string;
    readonly averaging?: string;
  },
): Limit {
  const { source, page, mark } = originOf(parameters.number(what.id));
  return {
    ...what,
    value: parameters.value(what.id),
    averaging: what.averaging === undefined ? 0 : parameters.value(what.averaging),
    source,
    page,
    mark,
  };
}
