import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { colourNames, darkColours, lightColours } from '@leat/view/pictures';

const style = readFileSync(new URL('../../../notebooks/page/lesson.css', import.meta.url), 'utf8');

describe('colours of the lessons', () => {
  it('are those of the report, which are checked for contrast and for grey', () => {
    const given = [...style.matchAll(/--([\w-]+): light-dark\((#\w+), (#\w+)\)/g)].map(
      ([, ...named]) => named,
    );
    // All of them: a picture whose colour has no value there lacks its lines.
    expect(given.map(([name]) => name).sort()).toEqual([...colourNames].sort());
    for (const [name, light, dark] of given) {
      expect([name, light, dark]).toEqual([
        name,
        (lightColours as Readonly<Record<string, string>>)[name],
        (darkColours as Readonly<Record<string, string>>)[name],
      ]);
    }
  });
});
