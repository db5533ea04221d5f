import { originColumns } from './origins.generated.js';
import type { NumberInUse } from './own-row.js';
import type { Origin } from './table-row.js';
import { tableValues } from './table-values.js';

/** Where our numbers came from, by their id. */
function originsOf(): ReadonlyMap<string, Origin> {
  const { source, page, mark } = originColumns;
  const origins = new Map<string, Origin>();
  let before: Origin = { source: '', page: '', mark: 'U' };
  let index = 0;
  for (const id of tableValues.keys()) {
    before = {
      source: source[index] || before.source,
      page: page[index] || before.page,
      mark: mark[index] || before.mark,
    };
    origins.set(id, before);
    index += 1;
  }
  return origins;
}

const ours: ReadonlyMap<string, Origin> = /* @__PURE__ */ originsOf();

/** Where a number came from: as the user said it, else as our tables do. */
export function originOf({ id, given }: NumberInUse): Origin {
  const last = given.at(-1);
  const found =
    last === undefined
      ? ours.get(id)
      : 'table' in last
        ? last
        : (last.row ?? { source: 'scenario', page: '-', mark: 'U' as const });
  if (found === undefined) throw new RangeError(`no number "${id}" in the tables`);
  const { source, page, mark } = found;
  return { source, page, mark };
}
