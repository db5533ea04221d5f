import { readFileSync } from 'node:fs';
import { budgetsOf, compileModel, createParameters, readScenario, simulate, worstResidual } from '@leat/core';
import { describe, expect, it } from 'vitest';

const readme = readFileSync(new URL('../../../README.md', import.meta.url), 'utf8');
const blocks = [...readme.matchAll(/```yaml\n([\s\S]*?)```/g)].map(([, block]) => block);

describe('the README', () => {
  it('opens with the job in one paragraph', () => {
    expect(readme).toMatch(
      /^# Leat\n\nLeat tells a person who runs and teaches a recirculating fish-and-plant system/,
    );
  });

  it('shows a first system that runs as written and balances', () => {
    expect(blocks.length).toBeGreaterThan(0);
    const run = simulate(compileModel(readScenario(blocks[0], { file: 'README.md' }), createParameters()));
    expect(run.outcome.kind).toBe('done');
    expect(worstResidual(budgetsOf(run)).share).toBeLessThan(1e-9);
  });
});
