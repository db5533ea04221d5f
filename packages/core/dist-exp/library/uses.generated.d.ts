/** Who reads, and the ids that it reads; `*` stands for any species, crop, feed, medium, product or water. */
export declare const partUses: readonly (readonly [part: string, ids: string])[];
//# sourceMappingURL=uses.generated.d.ts.map