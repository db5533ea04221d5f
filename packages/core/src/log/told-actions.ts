import { itemsOf, toldAction, type ActedOn, type WordContext } from './action-words.js';
import type { ColumnUse, LogMap } from './log-map.js';
import { saysNothing } from './read-cell.js';
import type { LogAction, Oddity } from './water-log.js';

type Actions = Extract<ColumnUse, { kind: 'actions' }>;

/** What a cell of a column of what was done comes to. */
export interface ToldCell {
  readonly actions: readonly LogAction[];
  readonly oddities: readonly Pick<Oddity, 'problem' | 'done'>[];
}

const contextOf = ({ words, measures, volumes }: LogMap): WordContext => ({ own: words, measures, volumes });

/** Reads a cell of what was done: each item becomes a line of the system file, or is told as what it lacks. */
export function readTold(
  text: string,
  { on, what, unit }: Actions,
  place: { readonly date: string; readonly row: number },
  map: LogMap,
): ToldCell {
  if (saysNothing(text) || /^0(?:[.,]0+)?$/.test(text)) return { actions: [], oddities: [] };
  const actions: LogAction[] = [];
  const oddities: Pick<Oddity, 'problem' | 'done'>[] = [];
  const isBare = /^\d+(?:[.,]\d+)?$/.test(text);
  for (const item of itemsOf(text)) {
    const whole = `${what} ${item}${isBare ? ` ${unit}` : ''}`.trim();
    const told = toldAction(whole, place.date, on, contextOf(map));
    if (told === undefined) {
      oddities.push({
        problem: `"${item}" is no action that is known`,
        done: 'left out; a word of your own stands under words in the map',
      });
      continue;
    }
    if (told.missing.length > 0) {
      oddities.push({
        problem: `does not say ${told.missing.join(', ')}`,
        done: `not acted on; in the scenario: ${told.line}`,
      });
      continue;
    }
    actions.push({ ...place, text: item, line: told.line });
    for (const assumed of told.assumed) oddities.push({ problem: assumed, done: `done: ${told.line}` });
  }
  return { actions, oddities };
}

/** The line of a scenario that a note in words seems to ask for; undefined where it says nothing of the kind. */
export function proposalIn(text: string, date: string, map: LogMap): string | undefined {
  const nowhere: ActedOn = {};
  return toldAction(text, date, nowhere, contextOf(map))?.line;
}
