import type { CauseOfDeath } from '../processes/kernels/hazard.js';
import type { Run } from '../run/run.js';
/** Deaths of one cohort in one day. */
export interface DeathsOfDay {
    /** Day of the run, from 0. */
    readonly day: number;
    /** Fish that died in it. */
    readonly number: number;
    /** What most of them died of. */
    readonly cause: CauseOfDeath;
}
/** Deaths of one cohort over a run. */
export interface CohortDeaths {
    readonly cohort: string;
    readonly species: string;
    /** Fish that were there at the start, were stocked or were graded in since. */
    readonly stocked: number;
    /** Fish that died. */
    readonly number: number;
    /** Fish alive at the end. */
    readonly alive: number;
    /** Deaths by cause, the most first: `number` fish of each. */
    readonly causes: readonly {
        readonly cause: CauseOfDeath;
        readonly number: number;
    }[];
    /** Days in which fish died, in order. */
    readonly days: readonly DeathsOfDay[];
    /** When the last fish died, d, to the output step: fewer than half a fish is left; absent where some live or were taken out. */
    readonly wipedOut?: number;
}
/**
 * What died in a run, cohort by cohort in their order: how many, when, and of what. Numbers are of the integrated deaths;
 * causes are shared by the hazards at the outputs, so that an output step of an hour tells a short fright better than one of
 * a day. Fish that actions took out are not counted.
 */
export declare function deathsOf(run: Run): readonly CohortDeaths[];
/** How much of a cohort died, of what is no natural death. */
export interface ShareDead {
    /** What a fish that was there throughout had as a chance to die. */
    readonly share: number;
    /** d: when that passed a half, to the output step; absent: it did not. */
    readonly halfBy?: number;
}
/**
 * Of each cohort the share that died, natural deaths apart. Each output step counts against the fish that were there in it,
 * so that fish that were sold before or came after do not thin a kill.
 */
export declare function sharesDead(run: Run): readonly ShareDead[];
//# sourceMappingURL=deaths.d.ts.map