/**
 * The candidate nearest to a name by Damerau-Levenshtein distance (optimal string alignment: insert,
 * delete, replace, swap neighbours), case ignored; the first of equals. undefined when none is within
 * a third of the longer length (at least 1).
 */
export function nearest(name, candidates) {
    const wanted = name.toLowerCase();
    let best;
    let least = Infinity;
    for (const candidate of candidates) {
        const limit = Math.max(1, Math.floor(Math.max(name.length, candidate.length) / 3));
        if (Math.abs(name.length - candidate.length) > Math.min(limit, least - 1))
            continue;
        const found = distance(wanted, candidate.toLowerCase());
        if (found <= limit && found < least) {
            best = candidate;
            least = found;
        }
    }
    return best;
}
function distance(a, b) {
    let before = [];
    let above = Array.from({ length: b.length + 1 }, (_, j) => j);
    for (let i = 1; i <= a.length; i++) {
        const row = [i];
        for (let j = 1; j <= b.length; j++) {
            const same = a[i - 1] === b[j - 1];
            let cost = Math.min(above[j] + 1, row[j - 1] + 1, above[j - 1] + (same ? 0 : 1));
            const swapped = i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1];
            if (swapped)
                cost = Math.min(cost, before[j - 2] + 1);
            row.push(cost);
        }
        before = above;
        above = row;
    }
    return above[b.length];
}
//# sourceMappingURL=nearest.js.map