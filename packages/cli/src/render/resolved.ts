import type { ScenarioReading } from '@leat/core';

/** Where the origins stand, unless a value is longer. */
const column = 60;

/** A scenario as it is understood: one value a line, by its path, and where it came from. */
export function resolvedLines({ values }: ScenarioReading['resolved']): readonly string[] {
  return values.map(({ key, value, origin }) => `${`${key}=${String(value)}`.padEnd(column)}  # ${origin}`);
}
