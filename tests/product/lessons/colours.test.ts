import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { darkColours, lightColours } from '@leat/view/pictures';

const style = readFileSync(new URL('../../../notebooks/page/lesson.css', import.meta.url), 'utf8');

describe('colours of the lessons', () => {
  it('are those of the report, which are checked for contrast and for grey', () => {
    const given = [...style.matchAll(/--([\w-]+): light-dark\((#\w+), (#\w+)\)/g)].map(
      ([, ...named]) => named,
    );
    expect(given.length).toBeGreaterThan(9);
    for (const [name, light, dark] of given) {
      expect([name, light, dark]).toEqual([
        name,
        (lightColours as Readonly<Record<string, string>>)[name],
        (darkColours as Readonly<Record<string, string>>)[name],
      ]);
    }
  });
});
