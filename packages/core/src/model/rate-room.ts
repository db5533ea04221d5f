import type { Kernel, Sites } from '../processes/kernels/kernel.js';
import { sums } from '../solve/loops.js';
import {
  type Bound,
  type Floats,
  type Given,
  Layout,
  type LoopsBy,
  type Module,
  type Place,
} from '../solve/room.js';
import { carry, carryPartials, factorsOf, look, openChemistry, scale } from './rate-loops.js';

/** The loops by the names under which the module exports them. */
const loops = { carry, carryPartials, factorsOf, look, openChemistry, scale, sums };

type Loops = typeof loops;

/** A module that has kernels too, by name: the rates of the i-th are the 2 i-th of its table, the partials come after them. */
export interface RateModule extends Module {
  readonly kernels: readonly string[];
}

/** The module of the rates, where a program has asked for it in this thread. No byte of a result depends on it. */
let rateModule: RateModule | undefined;

/** Has the module work out the rates of what is opened from now on in this thread. */
export function useForRates(module: RateModule): void {
  rateModule = module;
}

/** Processes whose rates are worked out by one kernel. */
export interface Group {
  readonly kernel: Kernel;
  readonly sites: Place<readonly Sites[]>;
}

/** Kernels of a model, one after another. */
interface Kernels {
  readonly rates: () => void;
  readonly partials: () => void;
}

/** Room for the tables of a model, in which its rates are worked out. */
export class RateRoom extends Layout {
  private readonly kernels: readonly string[];

  /** @param by who is to run the loops; where the module was not asked for or cannot be made, JavaScript does */
  constructor(by: LoopsBy) {
    const module = by === 'module' ? rateModule : undefined;
    super(module);
    this.kernels = module?.kernels ?? [];
  }

  /** A loop on tables of this room. */
  bind<Name extends keyof Loops>(name: Name, ...args: Given<Parameters<Loops[Name]>>): Bound<void> {
    return this.bound(name, loops[name], args);
  }

  /** The kernels of groups: those that the module has in one call, the others, of a user's own, as JavaScript. */
  walk(groups: readonly Group[], v: Floats, r: Floats): Kernels {
    const placeOf = ({ kernel: { name } }: Group): number =>
      name === undefined ? -1 : this.kernels.indexOf(name);
    const inside = groups.filter((group) => placeOf(group) >= 0);
    const outside = groups.filter((group) => placeOf(group) < 0);
    const rates = (some: readonly Group[]): void => {
      for (const { kernel, sites } of some) kernel.rates(sites.array, v.array, r.array);
    };
    const partials = (some: readonly Group[]): void => {
      for (const { kernel, sites } of some) kernel.partials(sites.array, v.array);
    };
    const program = this.ints(
      Int32Array.from(inside.flatMap((group) => [2 * placeOf(group), group.sites.from])),
    );
    const count = inside.length;
    const allRates = this.bound(
      'rates',
      () => {
        rates(inside);
      },
      [program, count, v, r],
    );
    const allPartials = this.bound(
      'partials',
      () => {
        partials(inside);
      },
      [program, count, v],
    );
    return {
      rates: () => {
        if (count > 0) allRates.run();
        rates(outside);
      },
      partials: () => {
        if (count > 0) allPartials.run();
        partials(outside);
      },
    };
  }
}
