import type { Account, Component } from '../processes/components.js';
import { waterComponents } from '../processes/components.js';
import { ownInWater, waterState } from '../model/layout.js';
import type { Model } from '../model/model.js';
import type { SourceWater } from '../scenario/scenario.js';
import type { Posting, RunEvent } from './run.js';

/** Concentrations of a source water in the order of the water components. */
export function concentrationsOf(water: SourceWater): readonly number[] {
  return waterComponents.map((component) => {
    switch (component) {
      case 'solids':
      case 'refractory':
      case 'dissolved':
      case 'organic-nitrogen':
        return 0;
      case 'tan':
        return water.ammonia;
      default:
        return water[component];
    }
  });
}

/** Book of what jumps: every change of a state outside the integrator goes through here. */
export interface Ledger {
  /** Moves an amount of a state from (+) or to (-) an account. */
  post(account: Account, state: number, amount: number): void;
  /** Moves water (m3) from (+) or to (-) an account; volumes are the caller's. */
  postWater(account: Account, vessel: number, amount: number): void;
  /** Tells the log of something that happened; `short` where it is less than was asked for. */
  say(time: number, kind: string, place: string, text: string, short?: true): void;
  /** Takes a share of everything dissolved and suspended in a vessel out to an account. */
  remove(account: Account, vessel: number, share: number): void;
  /** Brings in what a volume of a source water holds. */
  bring(water: SourceWater, vessel: number, volume: number): void;
}

/** Opens the book over the states of a run; what it books is added to the record. */
export function openLedger(
  model: Model,
  y: Float64Array,
  { postings, events }: { readonly postings: Posting[]; readonly events: RunEvent[] },
): Ledger {
  const { states, vessels } = model.layout;
  const own = ownInWater(model.layout);
  const book = (
    account: Account,
    component: Component,
    vessel: number,
    amount: number,
    state: number,
  ): void => {
    if (amount !== 0) postings.push({ account, component, vessel: vessels[vessel], amount, state });
  };
  const post = (account: Account, state: number, amount: number): void => {
    y[state] += amount;
    book(account, states[state].component, states[state].vessel, amount, state);
  };
  return {
    post,
    postWater: (account, vessel, amount) => {
      book(account, 'water', vessel, amount, -1);
    },
    say: (time, kind, place, text, short) => {
      events.push({ time, kind, place, text, ...(short && { short }) });
    },
    remove: (account, vessel, share) => {
      for (const component of waterComponents) {
        const state = waterState(vessel, component);
        post(account, state, -share * y[state]);
      }
      for (const { states } of own) post(account, states[vessel], -share * y[states[vessel]]);
    },
    bring: (water, vessel, volume) => {
      concentrationsOf(water).forEach((concentration, c) => {
        post('source water', waterState(vessel, waterComponents[c]), concentration * volume);
      });
    },
  };
}
