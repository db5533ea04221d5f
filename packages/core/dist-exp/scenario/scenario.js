/**
 * Name of one `batch` of a planting of so many `batches`, numbered from 0: the planting's own when it is the only
 * one.
 */
export function batchName(planting, batches, batch) {
    return batches === 1 ? planting : `${planting}#${batch + 1}`;
}
//# sourceMappingURL=scenario.js.map