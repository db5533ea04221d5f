/** The name nearest to one that is not known: what is meant by another word for it, else what is spelled most like it. */
export declare function nearestSubject(name: string, names: readonly string[]): string | undefined;
//# sourceMappingURL=other-names.d.ts.map