import { correlationCells } from './tables.generated.js';
/**
 * Numbers of the tables that vary together, because one publication gives both or one measurement holds both: drawn apart
 * they make films that nobody has seen. They hold where both are drawn and neither is named by a correlation of the user.
 */
export const tableCorrelations = correlationCells.map(([a, b, rank, conditions, source, page, mark]) => ({ a, b, rank, conditions, source, page, mark }));
/** What is asked for, and beside it the correlations of the tables between numbers that it does not name. */
export function withTableCorrelations(asked) {
    const named = new Set(asked.flatMap(({ a, b }) => [a, b]));
    const ours = tableCorrelations.filter(({ a, b }) => !named.has(a) && !named.has(b));
    return [...asked, ...ours.map(({ a, b, rank }) => ({ a, b, rank, whereDrawn: true }))];
}
//# sourceMappingURL=correlations.js.map