import { describe, expect, it } from 'vitest';
import { program } from '../../../packages/cli/src/program.js';
import { allSeries, compileModel, createParameters, readScenario, simulate } from '@leat/core';
import { at, callsOf, forUsers, words } from './documents.js';

const silent = { result: () => undefined, note: () => undefined };
const calls = forUsers.flatMap((path) => callsOf(at(path)).map((call) => [path, call] as const));

describe('calls of the command that documents show', () => {
  it('are many', () => {
    expect(calls.length).toBeGreaterThan(60);
  });

  it.each(calls)('%s: leat %s', async (_path, call) => {
    const tree = program(silent, () => undefined);
    const called: string[] = [];
    for (const command of tree.commands)
      command.action(() => {
        called.push(command.name());
      });
    await tree.parseAsync([...words(call.replace(/\$i\b/g, '3').replace(/\$n\b/g, '8'))], { from: 'user' });
    expect(called).toEqual([call.split(' ')[0]]);
  });
});

it('the reference of the commands names every series that there is', () => {
  const text = at('packages/cli/docs/commands.md');
  const [told] = /A \*\*series\*\* is ([\s\S]*?)TAN is/.exec(text) ?? [''];
  const named = new Set([...told.matchAll(/`([a-zA-Z-]+)`/g)].map(([, name]) => name));
  const [whole] = [...at('packages/cli/docs/system-file.md').matchAll(/```yaml\n([\s\S]*?)```/g)].map(
    ([, yaml]) => yaml,
  );
  const scenario = readScenario(whole, { file: 'whole.yaml', days: 1 });
  const run = simulate(compileModel(scenario, createParameters(scenario.overrides)));
  const quantities = new Set(allSeries(run).map(({ name }) => name.split('@')[0]));
  expect([...named].sort()).toEqual([...quantities].sort());
});
