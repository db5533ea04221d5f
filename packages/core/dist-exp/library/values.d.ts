/** Reads a number of the tables by its id; `species.*` stands for the species of the place. */
export interface Values {
    /** The number, in internal units. Throws RangeError where there is none. */
    value(id: string): number;
}
//# sourceMappingURL=values.d.ts.map