import { numberColumns } from './numbers.generated.js';

/** Ids of the tables in their order: `.growth` goes on from the words of the one before it. */
function idsOf(short: readonly string[]): readonly string[] {
  let words = '';
  return short.map((id) => {
    if (id.startsWith('.')) return words + id;
    words = id.slice(0, Math.max(0, id.lastIndexOf('.')));
    return id;
  });
}

/**
 * Every number of the science by its id, in its internal unit, in the order of the tables. It stands apart from what else is
 * known of a number (`tableRows`, `originOf`, `conditionsOf`), so that a program that only runs is not sent that.
 */
export const tableValues: ReadonlyMap<string, number> = /* @__PURE__ */ new Map(
  idsOf(numberColumns.id).map((id, index) => [id, numberColumns.value[index]]),
);
