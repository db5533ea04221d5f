/** What a cell says of a quantity, in the unit of its column or in one of its own. */
export interface CellValue {
    readonly low: number;
    readonly high: number;
    /** Decimals of a plain number; undefined for a range. */
    readonly decimals?: number;
    /** Unit written in the cell; '' where none. */
    readonly unit: string;
    /** What is worth telling about how it was written. */
    readonly odd?: string;
}
/** Why a cell cannot be read. */
export interface CellFault {
    readonly problem: string;
}
/** Whether a cell writes a number with a comma in it. */
export declare const hasComma: (text: string) => boolean;
/** Whether a cell says that there is no reading. */
export declare function saysNothing(text: string): boolean;
/**
 * Reads a cell of a hand-kept log: `0.25`, `0,25`, `~0.5`, `78 F`, `<0.25`, `0-0.25`, `>160`, `trace`, `nil`.
 * A bound leaves the other side open; `trace` lies between nothing and `least`, the smallest that the kit shows.
 * @param least undefined where the kit's smallest step is not known: then `trace` cannot be read
 * @param commas whether other numbers of the log have a comma: then `1.000` may be a thousand
 */
export declare function readCell(text: string, least: number | undefined, commas?: boolean): CellValue | CellFault;
//# sourceMappingURL=read-cell.d.ts.map