import type { Account } from '../processes/components.js';
import type { Model } from '../model/model.js';
import type { SourceWater } from '../scenario/scenario.js';
import type { Posting, RunEvent } from './run.js';
/** Concentrations of a source water in the order of the water components. */
export declare function concentrationsOf(water: SourceWater): readonly number[];
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
export declare function openLedger(model: Model, y: Float64Array, { postings, events }: {
    readonly postings: Posting[];
    readonly events: RunEvent[];
}): Ledger;
//# sourceMappingURL=ledger.d.ts.map