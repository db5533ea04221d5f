/** Words that join the parts of a measure or a condition. */
export declare const joints: readonly ["averaged", "from", "to", "above", "below"];
type Joint = (typeof joints)[number];
/** What follows one joining word. */
export interface PhrasePart {
    readonly joint: Joint;
    /** The words up to the next joining word, one space apart. */
    readonly text: string;
}
/** A phrase such as `highest tan@tank averaged 1 d below 2 mg N/L`, cut at its joining words. */
export interface Phrase {
    /** What stands before the first joining word. */
    readonly head: readonly string[];
    readonly parts: readonly PhrasePart[];
}
/** Cuts a phrase at its joining words; `>` and `<` stand for `above` and `below`. */
export declare function phraseOf(text: string): Phrase;
/** The phrase in its plain form, one space between words. */
export declare function phraseText({ head, parts }: Phrase): string;
/** A run that cannot answer for a measure: it broke off, or nobody was there to be measured. */
export declare class NoAnswerError extends Error {
    readonly name = "NoAnswerError";
}
export {};
//# sourceMappingURL=phrase.d.ts.map