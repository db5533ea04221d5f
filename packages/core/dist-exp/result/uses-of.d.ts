/** Something that reads a number of the tables. */
export interface Use {
    /** A process by its id, or another part of this library by its name, such as `limits for fish`. */
    readonly kind: 'process' | 'part';
    readonly name: string;
    /** What the process is; of another part nothing. */
    readonly title?: string;
}
/**
 * What reads a number: processes, and other parts of the library (readers of the file, chemistry, limits, audit ...).
 * None: the model does not use it. Processes are asked; the others were found in the source, and a test finds them anew.
 * @returns the readers of an id
 */
export declare function numberUses(): (id: string) => readonly Use[];
//# sourceMappingURL=uses-of.d.ts.map