import type { AcidBaseConstants } from '../chemistry/acid-base.js';
import type { Kernel, Sites } from '../processes/kernels/kernel.js';
import { sums } from '../solve/loops.js';
import {
  type Bound,
  type Floats,
  type Given,
  Layout,
  type LoopsBy,
  type Module,
  Place,
} from '../solve/room.js';
import { carry, carryPartials, factorsOf, look, openChemistry, scale } from './rate-loops.js';

/** The loops by the names under which the module exports them. */
const loops = { carry, carryPartials, factorsOf, look, openChemistry, scale, sums };

type Loops = typeof loops;

/** Kernels of a model, one after another. */
export interface Kernels {
  readonly rates: Bound<unknown>;
  readonly partials: Bound<unknown>;
}

/** Acid-base constants of each vessel, as a list that is laid out. */
export interface ConstantsList {
  readonly place: Place<readonly AcidBaseConstants[]>;
  /** Brings what has changed to where the module reads it. */
  readonly renew?: () => void;
}

/** A module that has kernels too. */
export interface RateModule extends Module {
  /** Those of the groups that it has the kernels of, in one call, and the others. */
  readonly walk: (
    room: RateRoom,
    groups: readonly Group[],
    v: Floats,
    r: Floats,
  ) => { readonly inside: Kernels; readonly outside: readonly Group[] };
  readonly constants: (
    room: RateRoom,
    vessels: number,
    constants: readonly AcidBaseConstants[],
  ) => ConstantsList;
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

/** Room for the tables of a model, in which its rates are worked out. */
export class RateRoom extends Layout {
  private readonly rates: RateModule | undefined;

  /** @param by who is to run the loops; where the module was not asked for or cannot be made, JavaScript does */
  constructor(by: LoopsBy) {
    const rates = by === 'module' ? rateModule : undefined;
    super(rates);
    this.rates = rates;
  }

  /** A loop on tables of this room. */
  bind<Name extends keyof Loops>(name: Name, ...args: Given<Parameters<Loops[Name]>>): Bound<unknown> {
    return this.bound(name, loops[name], args);
  }

  /** Constants that change, one record a vessel. */
  constants(vessels: number, constants: readonly AcidBaseConstants[]): ConstantsList {
    return this.rates?.constants(this, vessels, constants) ?? { place: new Place(this, 0, () => constants) };
  }

  /** The kernels of groups: those that the module has in one call, the others, of a user's own, as JavaScript. */
  walk(groups: readonly Group[], v: Floats, r: Floats): Kernels {
    const { inside, outside } = this.rates?.walk(this, groups, v, r) ?? { outside: groups };
    return {
      rates: {
        run: () => {
          inside?.rates.run();
          for (const { kernel, sites } of outside) kernel.rates(sites.array, v.array, r.array);
        },
      },
      partials: {
        run: () => {
          inside?.partials.run();
          for (const { kernel, sites } of outside) kernel.partials(sites.array, v.array);
        },
      },
    };
  }
}
