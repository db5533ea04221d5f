import { conditionCells } from './conditions.generated.js';
import { tableRows } from './table-rows.js';
const ours = /* @__PURE__ */ new Map(Array.from(tableRows.keys(), (id, index) => [id, conditionCells[index]]));
/**
 * What a number holds for, in words: as the user said it, else as our tables do. It stands apart from its row, so that a
 * program that shows no sources is not sent it.
 */
export function conditionsOf({ id, conditions }) {
    return conditions ?? ours.get(id) ?? '';
}
/** A row with all that is known of it, for who writes it down. */
export function wholeRow(row) {
    const { table, id, value, unit, low, high, distribution, source, page, mark, given } = row;
    return {
        ...{ table, id, value, unit, low, high, distribution, conditions: conditionsOf(row) },
        ...{ source, page, mark, ...(given !== undefined && { given }) },
    };
}
//# sourceMappingURL=conditions.js.map