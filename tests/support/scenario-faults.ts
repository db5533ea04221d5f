import { checkScenario } from '../../packages/core/src/scenario/check-scenario.js';
import type { Scenario } from '../../packages/core/src/scenario/scenario.js';
import { messageOf } from './message-of.js';
import { teachingSystem } from './teaching-system.js';

/** The same, with everything in it free to be changed. */
export type Free<T> = T extends object ? { -readonly [Key in keyof T]: Free<T[Key]> } : T;

/** A sound system with a bit of everything, 30 days long. */
export const sound = teachingSystem({ days: 30 });

/** What is said of the teaching system with a change. */
export function saidOf(change: (scenario: Free<Scenario>) => void): string {
  const copy = structuredClone(sound) as Free<Scenario>;
  change(copy);
  return messageOf(() => {
    checkScenario(copy);
  });
}
