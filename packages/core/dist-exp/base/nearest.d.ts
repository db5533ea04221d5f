/**
 * The candidate nearest to a name by Damerau-Levenshtein distance (optimal string alignment: insert,
 * delete, replace, swap neighbours), case ignored; the first of equals. undefined when none is within
 * a third of the longer length (at least 1).
 */
export declare function nearest(name: string, candidates: Iterable<string>): string | undefined;
//# sourceMappingURL=nearest.d.ts.map