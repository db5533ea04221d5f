/** The text of `uses.generated.ts` as the source asks for it. */
export declare function generateUses(): string;
/** The module as it stands on disk. */
export declare function generatedUses(): string;
