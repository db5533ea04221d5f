import { conditionCells } from './conditions.generated.js';
import type { NumberInUse } from './own-row.js';
import { tableValues } from './table-values.js';

const ours: ReadonlyMap<string, string> = /* @__PURE__ */ new Map(
  Array.from(tableValues.keys(), (id, index) => [id, conditionCells[index]]),
);

/** What a number holds for, in words: as the user said it, else as our tables do. */
export function conditionsOf({ id, given }: NumberInUse): string {
  const last = given.at(-1);
  if (last === undefined) return ours.get(id) ?? '';
  if ('table' in last) return last.conditions;
  return last.row?.conditions ?? 'given by the scenario';
}
