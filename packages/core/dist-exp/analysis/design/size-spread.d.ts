import type { OpenScenario } from '../../scenario/read-scenario.js';
import { type Bands } from '../uncertainty/quantiles.js';
import { type Sampling } from '../uncertainty/sampling.js';
import { type SizeAnswer, type SizeSearch } from './size.js';
/** A search for a size that is repeated for draws of the uncertain numbers. */
export interface SizeDraws extends Omit<SizeSearch, 'judge'> {
    /** Opens the system with one value. */
    readonly open: (value: number) => OpenScenario;
    /** Conditions as text: see `conditionOf`. */
    readonly keep: readonly string[];
    readonly sampling: Sampling;
    /** Value at which the numbers that are used, and so drawn, are found out. */
    readonly about: number;
    /** A size that is judged in each draw as well. */
    readonly chosen?: number;
}
/** The size that one draw needs, `value` in the unit of what is varied. Plain data. */
export interface SizeMember {
    readonly kind: SizeAnswer['kind'];
    readonly value?: number;
    /** Places of the conditions that bind. */
    readonly binding: readonly number[];
    /** Whether the chosen size keeps every condition. */
    readonly survives?: boolean;
    /** Trials that broke off, with why. */
    readonly broke: readonly {
        readonly value: number;
        readonly reason: string;
    }[];
}
/**
 * Opens the search for draws: the size of a member by its number. Each draw keeps its numbers at every value.
 * Throws InputError for a sampling or conditions that cannot be.
 */
export declare function openSizeMembers(draws: SizeDraws): (member: number) => SizeMember;
/** The sizes that many draws (`members`) need, in the unit of what is varied. */
export interface SizeSpread extends Bands {
    readonly members: number;
    /** Draws that no value of the range serves: their size lies beyond it, and counts as infinite (largest: minus). */
    readonly beyond: number;
    /** Draws that the wanted end of the range serves: their size is that end, or would be a better one. */
    readonly atEnd: number;
    /** Draws whose conditions hold, fail and hold again; counted with the first size at which they hold. */
    readonly notMonotone: number;
    /** Draws with at least one run that broke off. */
    readonly broke: number;
    /** Draws in which the chosen size keeps every condition; absent where none was chosen. */
    readonly survive?: number;
    /** How often each condition binds. */
    readonly binds: readonly number[];
}
/**
 * Median and bands of the sizes of draws, and how many a chosen size survives.
 * @param outcomes one for each draw; at least one
 * @param want which end of the range is the wanted one
 * @param conditions how many there are
 */
export declare function sizeSpread(outcomes: readonly SizeMember[], want: 'smallest' | 'largest', conditions: number): SizeSpread;
//# sourceMappingURL=size-spread.d.ts.map