import type { LogTable } from './log-table.js';
/** What a column seems to be. */
export interface ColumnGuess {
    readonly column: string;
    /** One clause: `ammonia in tank-1, mg N/L`. */
    readonly guess: string;
    /** What to look at before it is trusted; '' where the header says it all. */
    readonly doubt: string;
}
/** A guessed map as the text of a file, to be looked over and kept. */
export interface MapGuess {
    readonly text: string;
    readonly columns: readonly ColumnGuess[];
    /** What is to be looked at in the file as a whole, one clause each. */
    readonly doubts: readonly string[];
}
/** What a guess needs to know of the system that the log is of. */
export interface System {
    /** Names of vessels, the fish tanks first; what is tested is in the first unless the header names another. */
    readonly vessels: readonly string[];
    readonly cohorts: readonly string[];
}
/**
 * Guesses from the header (and the size of the numbers) what the columns of a log hold, as the text of a map
 * file that a person looks over before it is used. Nothing is read by it unseen.
 */
export declare function guessLogMap(table: LogTable, system: System): MapGuess;
//# sourceMappingURL=guess-map.d.ts.map