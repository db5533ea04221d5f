import { describe, expect, it } from 'vitest';
import { readScenario, readScenarioFully } from '../../../../../packages/core/src/scenario/read-scenario.js';
import type { Rule, Scenario } from '../../../../../packages/core/src/scenario/scenario.js';
import { edited, smallSystem } from '../../../../product/faults/small-system.js';

function small(...rules: readonly string[]): Scenario {
  const list = rules.map((rule) => `  - ${rule}\n`).join('');
  return readScenario(`${smallSystem}rules:\n${list}`, { file: 'small.yaml' });
}

function ruleOf(text: string): Rule {
  return small(text).rules[0];
}

const halve = 'do: { feed: { cohort: tilapia, factor: 0.5 } }';
const dose = 'do: { dose: { into: sump, product: potassium-bicarbonate, mass: 20 g } }';
const feed = (factor: number) => ({ kind: 'feed', cohort: 'tilapia', factor });

describe('rules as written', () => {
  it('ammonia over 2: feed half until under 1', () => {
    expect(
      ruleOf(`{ when: { read: ammonia, in: tank, above: 2 mg N/L, until: 1 mg N/L }, ${halve} }`),
    ).toEqual({
      read: 'ammonia',
      vessel: 'tank',
      side: 'above',
      level: 2,
      until: 1,
      kit: { every: 1 },
      doing: [feed(0.5)],
      undoing: [feed(1)],
      stands: true,
      wait: 0,
      most: Infinity,
    });
  });

  it('alkalinity under 4 dKH: dose, at most every 3 days and 5 times', () => {
    const rule = ruleOf(
      `{ when: { read: alkalinity, in: sump, below: 4 dKH }, ${dose}, wait: 3 d, most: 5 }`,
    );
    expect(rule.level).toBeCloseTo(40 / 28.0385, 12);
    expect(rule).toMatchObject({ side: 'below', stands: false, wait: 3, most: 5, undoing: [] });
    expect(rule.doing).toEqual([
      { kind: 'dose', vessel: 'sump', product: 'potassium-bicarbonate', mass: 20 },
    ]);
  });

  it.each([
    ['until: 6 dKH', '', true],
    ['until: 6 dKH', ', wait: 3 d', false],
    ['', ', wait: 3 d', false],
    ['', ', most: 3', false],
    ['', ', undo: { plant: lettuce }', true],
  ])('a dose with %s%s: done once and standing is %s', (until, rest, stands) => {
    const when = `when: { read: alkalinity, in: sump, below: 4 dKH, ${until} }`;
    expect(ruleOf(`{ ${when}, ${dose}${rest} }`).stands).toBe(stands);
  });

  it('what is done when the rule lets go may be said', () => {
    const undo = 'undo: { feed: { cohort: tilapia, factor: 0.8 } }';
    const when = 'when: { read: nitrite, in: tank, above: 3 mg/L as NO2 }';
    const rule = ruleOf(`{ ${when}, ${halve}, ${undo} }`);
    expect(rule.undoing).toEqual([feed(0.8)]);
    expect(rule.level).toBeCloseTo((3 * 14.007) / 46.005, 12);
  });
});

describe('test kits', () => {
  const kitOf = (read: string, level: string, kit: string): Rule['kit'] =>
    ruleOf(`{ when: { read: ${read}, in: tank, above: ${level} }, kit: { ${kit} }, ${halve} }`).kit;

  it.each([
    ['ammonia', '2 mg N/L', 'resolution: 0.25 mg N/L, error: 10 %, every: 7 d', 7, 0.25, 'relative', 0.1],
    ['nitrate', '20 mg N/L', 'resolution: 5 mg N/L, error: 2 mg N/L, every: 2 weeks', 14, 5, 'absolute', 2],
    ['pH', '7.5', 'resolution: 0.2, error: 0.1', 1, 0.2, 'absolute', 0.1],
    ['temperature', '28 degC', 'resolution: 1 degC, error: 0.5 K', 1, 1, 'absolute', 0.5],
    ['temperature', '28 degC', 'resolution: 0.9 degF, error: 1.8 degF', 1, 0.5, 'absolute', 1],
    ['temperature', '28 degC', 'resolution: 1e0 degF, error: 1.8e+0 °F', 1, 5 / 9, 'absolute', 1],
    ['volume', '900 L', 'resolution: 50 L, error: 10 L', 1, 0.05, 'absolute', 0.01],
    ['oxygen', '5 mg/L', 'resolution: 0.1 mg/L, error: 3 %', 1, 0.1, 'relative', 0.03],
  ])('of %s above %s: %s', (read, level, kit, every, resolution, kind, deviation) => {
    const found = kitOf(read, level, kit);
    expect(found.every).toBe(every);
    expect(found.resolution).toBeCloseTo(resolution, 12);
    expect(found.error?.kind).toBe(kind);
    expect(found.error?.deviation).toBeCloseTo(deviation, 12);
  });
});

describe('seed and rules of a file', () => {
  it('are 1 and none where not written', () => {
    const scenario = readScenario(smallSystem, { file: 'small.yaml' });
    expect([scenario.seed, scenario.rules]).toEqual([1, []]);
  });

  it('are read as written', () => {
    const text = edited(['days: 30', 'days: 30\nseed: 20260301']);
    expect(readScenario(text, { file: 'small.yaml' }).seed).toBe(20260301);
  });

  it('survive being resolved: the full file says the same rules', () => {
    const text = `${smallSystem}rules:\n  - { when: { read: pH, in: tank, below: 6.5 }, ${dose}, wait: 1 d }\n`;
    const { scenario, resolved } = readScenarioFully(text, { file: 'small.yaml' });
    expect(resolved.values).toContainEqual({ key: 'rules[0].kit.every', value: '1 d', origin: 'default' });
    const again = readScenario(JSON.stringify(resolved.plain), { file: 'full.yaml' });
    expect([again.rules, again.seed]).toEqual([scenario.rules, scenario.seed]);
  });
});
