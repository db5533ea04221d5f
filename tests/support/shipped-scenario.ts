import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { Setting } from '../../packages/core/src/scenario/file/set-value.js';
import { readScenario } from '../../packages/core/src/scenario/read-scenario.js';
import type { Action, Scenario } from '../../packages/core/src/scenario/scenario.js';

const folder = fileURLToPath(new URL('../../packages/cli/scenarios/', import.meta.url));
const load = (path: string): string => readFileSync(path, 'utf8');

/** Text of a scenario that ships with the command. */
export function shippedText(name: string): string {
  return load(`${folder}${name}.yaml`);
}

/** A scenario that ships with the command, as it is read: of its own length, or of so many days, with settings laid over it. */
export function shippedScenario(name: string, days?: number, set: readonly Setting[] = []): Scenario {
  const cut = days === undefined ? {} : { days };
  return readScenario(shippedText(name), { file: `${folder}${name}.yaml`, load, set, ...cut });
}

/** The same without every action of some kinds: what a what-if is held against. */
export function without(scenario: Scenario, ...kinds: readonly Action['kind'][]): Scenario {
  return { ...scenario, actions: scenario.actions.filter(({ action }) => !kinds.includes(action.kind)) };
}
