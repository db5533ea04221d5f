import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { manifestOf, scenarioHash, version } from '../../../../packages/core/src/result/record.js';
import { smallRun, smallScenario } from './small-run.js';

describe('scenarioHash', () => {
  it('does not depend on the order of keys or on the line where an action stood', () => {
    const turned = Object.fromEntries(
      Object.entries(smallScenario).reverse(),
    ) as unknown as typeof smallScenario;
    const action = { at: 1, action: { kind: 'plant', planting: 'lettuce' } } as const;
    const at = (where: string) => ({ ...smallScenario, actions: [{ ...action, where }] });
    expect(scenarioHash(turned)).toBe(scenarioHash(smallScenario));
    expect(scenarioHash(at('a.yaml:3'))).toBe(scenarioHash(at('b.yaml:9')));
  });

  it('changes with any number, and tells no cap from a cap of nothing', () => {
    const capped = (dailyCap: number) => ({
      ...smallScenario,
      topUp: { level: 1, rate: 1, sources: [{ kind: 'mains' as const, water: 'mains', dailyCap }] },
    });
    expect(scenarioHash({ ...smallScenario, days: 11 })).not.toBe(scenarioHash(smallScenario));
    expect(scenarioHash(capped(Infinity))).not.toBe(scenarioHash(capped(0)));
  });
});

describe('manifestOf', () => {
  it('holds what makes the same bytes again, and no time of day', () => {
    expect(manifestOf(smallRun())).toEqual({
      version,
      scenario: scenarioHash(smallScenario),
      integrator: 'rosenbrock',
      tolerance: 1e-6,
      seed: null,
      given: [],
    });
  });

  it('carries the version of the package', () => {
    const text = readFileSync(new URL('../../../../packages/core/package.json', import.meta.url), 'utf8');
    expect((JSON.parse(text) as { version: string }).version).toBe(version);
  });
});
