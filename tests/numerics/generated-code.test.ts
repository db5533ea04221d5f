import { afterEach, describe, expect, it, vi } from 'vitest';
import { readScenario } from '@leat/core';
import { smallSystem } from '../support/small-text.js';

const Born = Function;

/** Texts that were made functions: while the file was read (by the library that checks it), and while it ran. */
interface Made {
  readonly reading: readonly string[];
  readonly running: readonly string[];
}

afterEach(() => {
  vi.unstubAllGlobals();
});

/** Runs a system long enough that code is written out for it, and keeps every text that was made a function. */
async function codeOf(text: string): Promise<Made> {
  // A library that has run nothing yet, and so has written no code.
  vi.resetModules();
  const core = await import('@leat/core');
  const { compileModel, createParameters, simulate } = core;
  const texts: string[] = [];
  const listening = new Proxy(Born, {
    construct(target, args: string[]) {
      texts.push(...args);
      return Reflect.construct(target, args);
    },
    apply(target, self, args: string[]) {
      texts.push(...args);
      return Reflect.apply(target, self, args) as unknown;
    },
  });
  vi.stubGlobal('Function', listening);
  const scenario = core.readScenario(text, { file: 'a.yaml', days: 40 });
  const reading = texts.splice(0);
  for (let again = 0; again < 60 && texts.length === 0; again += 1)
    simulate(compileModel(scenario, createParameters(scenario.overrides)), { tolerance: 1e-8 });
  vi.unstubAllGlobals();
  return { reading, running: texts };
}

describe('code written out for a shape', () => {
  it('holds indices alone, and is the same whatever the file calls its things', async () => {
    const plain = await codeOf(smallSystem);
    expect(plain.running.length).toBeGreaterThan(0);
    for (const text of plain.running) expect(text).toMatch(/^("use strict";)?[\w\s,;=+*/().[\]-]*$/);
    const words = new Set(plain.running.join(' ').match(/[A-Za-z_]\w*/g));
    expect([...words].sort()).toMatchInlineSnapshot(`
      [
        "a",
        "b",
        "strict",
        "use",
        "v",
        "w",
      ]
    `);
    const hostile = smallSystem
      .replace('Small system (invented)', "'\"];process.exit(1)//'")
      .replaceAll('filter', 'alert')
      .replace('kind: bioalert', 'kind: biofilter')
      .replaceAll('tilapia:', 'eval:');
    const named = await codeOf(hostile);
    expect(named.running.length).toBeGreaterThan(0);
    expect([...named.reading, ...named.running].join(' ')).not.toMatch(/alert|eval|process/);
    expect(named.running.every((text) => plain.running.includes(text))).toBe(true);
  });

  it('a tag of YAML makes no code', () => {
    for (const tag of ['!!js/function', '!!js/undefined', '!!python/object', '!eval'])
      expect(() => readScenario(`title: ${tag} "function () { return 1 }"\n`, { file: 'a.yaml' })).toThrow(
        /a\.yaml:1:/,
      );
  });
});
