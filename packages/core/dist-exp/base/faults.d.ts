/** One thing wrong with what a person gave us, said so that it can be mended. */
export interface Fault {
    readonly file?: string;
    /** 1-based. */
    readonly line?: number;
    /** 1-based, in characters. */
    readonly column?: number;
    /** Path of the key, such as `vessels.tank-1.volume`. */
    readonly key?: string;
    /** What came. */
    readonly got?: string;
    /** What is wrong, one clause, no full stop. */
    readonly problem: string;
    /** What was expected. */
    readonly expected?: string;
    /** Nearest right name. */
    readonly nearest?: string;
}
/** Bad input: carries every fault found, never only the first; the message says the first 500. */
export declare class InputError extends Error {
    readonly name = "InputError";
    readonly faults: readonly Fault[];
    constructor(faults: readonly Fault[]);
}
/** One line: `file:line:column: key: problem; got ...; expected ...; did you mean ...?` */
export declare function describeFault(fault: Fault): string;
//# sourceMappingURL=faults.d.ts.map