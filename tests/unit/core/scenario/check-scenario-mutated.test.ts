import { readdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { InputError } from '../../../../packages/core/src/base/faults.js';
import { createParameters } from '../../../../packages/core/src/library/parameters.js';
import { compileModel } from '../../../../packages/core/src/model/compile.js';
import { checkScenario } from '../../../../packages/core/src/scenario/check-scenario.js';
import type { Scenario } from '../../../../packages/core/src/scenario/scenario.js';
import { shippedScenario } from '../../../support/shipped-scenario.js';

const folder = fileURLToPath(new URL('../../../../packages/cli/scenarios/', import.meta.url));
const shipped = readdirSync(folder)
  .filter((file) => file.endsWith('.yaml'))
  .map((file) => file.replace(/\.yaml$/, ''));

type Path = readonly string[];

/** Text that is for people, names that anything may be called by, and numbers of which any is right. */
const free: readonly RegExp[] = [
  /^(title|note)$/,
  /\.where$/,
  /^actions\.\d+\.action\.to\.name$/,
  /^overrides\./,
  /^(waters|fish|plantings)\.\d+\.name$/,
];
/** Numbers that may be below zero. */
const signed: readonly RegExp[] = [/^air\./, /\.timer\.offset$/];

const isOneOf = (path: Path, patterns: readonly RegExp[]): boolean =>
  patterns.some((pattern) => pattern.test(path.join('.')));

/** Every value of a scenario; of a long list of numbers the first and the last. */
function leavesOf(value: unknown, path: Path = []): Path[] {
  if (typeof value !== 'object' || value === null) return [path];
  const keys = Object.keys(value);
  const long = Array.isArray(value) && typeof value[0] === 'number' && keys.length > 2;
  const seen = long ? [keys[0], keys[keys.length - 1]] : keys;
  return seen.flatMap((key) => leavesOf((value as Record<string, unknown>)[key], [...path, key]));
}

function at(value: unknown, path: Path): unknown {
  return path.reduce<unknown>((inner, key) => (inner as Record<string, unknown>)[key], value);
}

/** A copy with another value at a path, alike elsewhere; undefined takes it away. */
function changed<T>(holder: T, [key, ...rest]: Path, value: unknown): T {
  const copy = (Array.isArray(holder) ? [...(holder as unknown[])] : { ...holder }) as Record<
    string,
    unknown
  >;
  if (rest.length > 0) copy[key] = changed(copy[key], rest, value);
  else if (value === undefined) Reflect.deleteProperty(copy, key);
  else copy[key] = value;
  return copy as T;
}

/** How a scenario is answered: refused with faults, taken, or what else was thrown. */
function answerOf(work: () => unknown): string {
  try {
    work();
    return 'taken';
  } catch (error) {
    if (
      error instanceof InputError &&
      error.faults.every(({ key, problem }) => key !== undefined && problem !== '')
    )
      return 'refused';
    return String(error);
  }
}

const parameters = createParameters();
const compiled = (scenario: Scenario): string =>
  answerOf(() => compileModel(scenario, parameters, { closureDraws: 0 }));

/** Three weeks of all but one: the actions of a year are much alike. */
const systemOf = (name: string): Scenario => shippedScenario(name, name === 'all-at-once' ? undefined : 21);

describe.each(shipped)('%s as it was read', (name) => {
  const scenario = systemOf(name);
  const leaves = leavesOf(scenario);

  it('passes', () => {
    expect(
      answerOf(() => {
        checkScenario(scenario);
      }),
    ).toBe('taken');
  });

  it('with any one name that is unknown is refused', () => {
    const names = leaves.filter((path) => typeof at(scenario, path) === 'string' && !isOneOf(path, free));
    expect(names.length).toBeGreaterThan(20);
    for (const path of names)
      expect(compiled(changed(scenario, path, 'no-such-name')), path.join('.')).toBe('refused');
  });

  it('with any one number that is none, or below zero, is refused', () => {
    const numbers = leaves.filter((path) => typeof at(scenario, path) === 'number' && !isOneOf(path, free));
    expect(numbers.length).toBeGreaterThan(50);
    for (const path of numbers) {
      expect(compiled(changed(scenario, path, Number.NaN)), path.join('.')).toBe('refused');
      if (!isOneOf(path, signed))
        expect(compiled(changed(scenario, path, -1)), path.join('.')).toBe('refused');
    }
  });
});

describe.each(['all-at-once', 'backyard'])('%s as it was read', (name) => {
  const scenario = systemOf(name);
  const leaves = leavesOf(scenario);

  it('with any one value taken away, or of another kind, is refused or taken, and never crashes', () => {
    for (const path of leaves) {
      for (const value of [undefined, null, 'word', {}, []]) {
        const answer = answerOf(() => {
          checkScenario(changed(scenario, path, value), parameters);
        });
        expect(['refused', 'taken'], `${path.join('.')} as ${JSON.stringify(value)}`).toContain(answer);
      }
    }
  });

  it('with any one entry or object taken away is refused or taken, and never crashes', () => {
    const inner = [
      ...new Set(leaves.flatMap((path) => path.map((_, i) => JSON.stringify(path.slice(0, i + 1))))),
    ];
    for (const text of inner) {
      const path = JSON.parse(text) as Path;
      for (const value of [undefined, null, 7]) {
        const answer = answerOf(() => {
          checkScenario(changed(scenario, path, value), parameters);
        });
        expect(['refused', 'taken'], `${path.join('.')} as ${String(value)}`).toContain(answer);
      }
    }
  });
});
