import type { Scenario } from './scenario.js';

/** Scenarios that were read from files, each by itself: a copy with changes is another. It decides no result. */
const fromFiles = new WeakSet<Scenario>();

/** Remembers that a scenario was read from a file without a fault. */
export function rememberRead(scenario: Scenario): void {
  fromFiles.add(scenario);
}

/** Whether this very scenario was read from a file, and so checked before. */
export function wasRead(scenario: Scenario): boolean {
  return fromFiles.has(scenario);
}
