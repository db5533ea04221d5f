import { describe, expect, it } from 'vitest';
import { designFlows } from '../../../../../packages/core/src/analysis/design/audit.js';
import type { Flow, Scenario } from '../../../../../packages/core/src/scenario/scenario.js';
import { smallScenario } from '../../result/small-run.js';

const [tank, sump] = smallScenario.vessels;
const named = (name: string) => ({ ...tank, name });

function network(flows: readonly Flow[], timer?: { on: number; off: number; offset: number }): Scenario {
  return {
    ...smallScenario,
    vessels: [tank, named('a'), named('b'), sump],
    pumps: [{ name: 'pump', inlet: 0.1, restart: 0.2, ...(timer && { timer }) }],
    flows,
  };
}

const lifted: Flow = { kind: 'pumped', from: 'sump', to: 'tank', pump: 'pump', rate: 24 };
const down = (from: string, to: string, share: number): Flow => ({ kind: 'gravity', from, to, share });

describe('designFlows', () => {
  it('splits and joins what comes down', () => {
    const flows = designFlows(
      network([
        lifted,
        down('tank', 'a', 0.25),
        down('tank', 'b', 0.75),
        down('a', 'sump', 1),
        down('b', 'sump', 1),
      ]),
    );
    expect(Object.fromEntries(flows)).toEqual({ tank: 24, a: 6, b: 18, sump: 24 });
  });

  it('runs a pump for its part of the clock', () => {
    const flows = designFlows(network([lifted, down('tank', 'sump', 1)], { on: 0.25, off: 0.75, offset: 0 }));
    expect(flows.get('tank')).toBe(6);
  });

  it('refuses water that runs down in a circle', () => {
    expect(() => designFlows(network([lifted, down('a', 'b', 1), down('b', 'a', 1)]))).toThrow('a > b > a');
  });
});
