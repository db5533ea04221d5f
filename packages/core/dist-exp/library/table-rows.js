import { tableColumns } from './tables.generated.js';
function rowAt(id, index) {
    const { table, value, unit, low, high, distribution, source, page, mark } = tableColumns;
    return {
        table: table[index],
        id,
        value: value[index],
        unit: unit[index],
        low: low[index],
        high: high[index],
        distribution: distribution[index],
        source: source[index],
        page: page[index],
        mark: mark[index],
    };
}
/** Ids of the tables in their order: `.growth` goes on from the words of the one before it. */
function idsOf(short) {
    let words = '';
    return short.map((id) => {
        if (id.startsWith('.'))
            return words + id;
        words = id.slice(0, Math.max(0, id.lastIndexOf('.')));
        return id;
    });
}
/** Every number of the science by its id, in the order of the tables. */
export const tableRows = /* @__PURE__ */ new Map(
/* @__PURE__ */ idsOf(tableColumns.id).map((id, index) => [id, rowAt(id, index)]));
//# sourceMappingURL=table-rows.js.map