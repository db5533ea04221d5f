/** What each number holds for, in the order of the tables: the longest of all that is known of it. */
export declare const conditionCells: readonly string[];
//# sourceMappingURL=conditions.generated.d.ts.map