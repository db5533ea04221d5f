import { numberColumns } from './numbers.generated.js';

/**
 * Ids of the tables in their order: `.growth` goes on from the words of the one before it, and words with a dot alone
 * (`fish.common-carp.`) have all names that the words before them had.
 */
function idsOf(short: readonly string[]): readonly string[] {
  let words = '';
  let names: string[] = [];
  return short.flatMap((id) => {
    const end = id.lastIndexOf('.');
    if (end > 0) words = id.slice(0, end);
    if (id.endsWith('.')) return names.map((name) => words + name);
    if (end > 0) names = [];
    names.push(id.slice(end));
    return words + id.slice(end);
  });
}

/**
 * Every number of the science by its id, in its internal unit, in the order of the tables. It stands apart from what else is
 * known of a number (`tableRows`, `originOf`, `conditionsOf`), so that a program that only runs is not sent that.
 */
export const tableValues: ReadonlyMap<string, number> = /* @__PURE__ */ new Map(
  idsOf(numberColumns.id).map((id, index) => [id, numberColumns.value[index]]),
);
