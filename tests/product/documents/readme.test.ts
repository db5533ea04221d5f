import { spawnSync } from 'node:child_process';
import { mkdirSync, symlinkSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { budgetsOf, compileModel, createParameters, readScenario, simulate, worstResidual } from '@leat/core';
import { beforeAll, describe, expect, it } from 'vitest';
import { type Call, folderWith, leat } from '../../support/leat.js';
import { root } from '../packages/packed.js';
import { at, callsOf, words } from './documents.js';

const readme = at('README.md');
/** The README with its lines joined: a number may stand on another line than what it is of. */
const flat = readme.replace(/\s+/g, ' ');

/** Blocks of code of a language, in their order. */
const blocks = (language: string): readonly string[] =>
  [...readme.matchAll(new RegExp(`\`\`\`${language}\\n([\\s\\S]*?)\`\`\``, 'g'))].map(([, block]) => block);

/** What the groups of a pattern hold; throws where the text does not say so, so that no check passes by silence. */
function found(text: string, pattern: RegExp): readonly string[] {
  const match = pattern.exec(text);
  if (match === null) throw new Error(`nothing like ${pattern.source}`);
  return match.slice(1);
}

const [first, double] = blocks('yaml');
const folder = folderWith({ 'my-system.yaml': first, 'double.yaml': double });

describe('the README', () => {
  it('opens with the job in one paragraph', () => {
    expect(readme).toMatch(
      /^# Leat\n\nLeat tells a person who runs and teaches a recirculating fish-and-plant system/,
    );
  });

  it('shows a first system that runs as written and balances', () => {
    const run = simulate(compileModel(readScenario(first, { file: 'README.md' }), createParameters()));
    expect(run.outcome.kind).toBe('done');
    expect(worstResidual(budgetsOf(run)).share).toBeLessThan(1e-9);
  });

  it('shows what the run of it prints', async () => {
    expect((await leat(['check', 'my-system.yaml'], folder)).code).toBe(0);
    const { code, out } = await leat(['run', 'my-system.yaml'], folder);
    expect(code).toBe(0);
    const printed = out.split('\n').map((line) => line.trimEnd());
    const [shown] = blocks('text');
    const lines = shown.trimEnd().split('\n');
    expect(lines.length).toBeGreaterThan(15);
    expect(lines.filter((line) => line !== '...' && !printed.includes(line))).toEqual([]);
  });

  it('shows a program that prints what it says', () => {
    const [program] = blocks('js');
    const [logged] = found(program, /console\.log\(.*\); \/\/ (.*)\n/);
    mkdirSync(join(folder, 'node_modules/@leat'), { recursive: true });
    symlinkSync(join(root, 'packages/core'), join(folder, 'node_modules/@leat/core'));
    writeFileSync(join(folder, 'program.mjs'), program);
    const { stdout, stderr } = spawnSync(process.execPath, ['program.mjs'], {
      cwd: folder,
      encoding: 'utf8',
    });
    expect([stdout, stderr]).toEqual([`${logged}\n`, '']);
  });

  it('counts hits and misses as the table of published values does', () => {
    const table = at('tests/published/VALIDATION.md');
    const shown = found(
      flat,
      /(\d+) values of formulas that Leat has built \((\d+) hit, (\d+) miss\), (\d+) of processes, which come out \((\d+) hit, (\d+) miss\), and (\d+) that a number/,
    );
    const formulas = found(table, /\*Formulas\*, .*?: (\d+): (\d+) hit, (\d+) miss/);
    const processes = found(table, /\*Processes\*, .*?: (\d+): (\d+) hit, (\d+) miss/);
    const chosen = found(table, /that a number of the tables was chosen for, .*?: (\d+):/);
    expect(shown).toEqual([...formulas, ...processes, ...chosen]);
    const [systems, quantities, hit, miss, vague, failing] = found(
      flat,
      /(\d+) whole systems run .*? Of (\d+) quantities (\d+) hit and (\d+) miss; (\d+) are vague .*?, and (\d+) (?:are of systems that fail|is of a system that fails)/,
    );
    expect([quantities, systems, hit, vague, failing, miss]).toEqual(
      found(table, /(\d+) quantities of (\d+) systems: hit (\d+), vague (\d+), failing (\d+), miss (\d+)/),
    );
  });
});

describe('the examples of the README, word for word and in their order', () => {
  const calls = callsOf(readme);
  const given = new Map<string, Call>();

  beforeAll(async () => {
    for (const call of calls) given.set(call, await leat([...words(call)], folder));
  });

  const answerOf = (command: string): string => {
    const call = calls.find((each) => each.startsWith(`${command} `)) ?? '';
    return given.get(call)?.out ?? '';
  };

  it.each(calls)('leat %s', (call) => {
    expect(given.get(call)?.code, given.get(call)?.err).toBe(0);
  });

  it('are of every question', () => {
    expect(calls.length).toBeGreaterThan(15);
  });

  it('give the size that the text tells, and what draws make of it', () => {
    const told = found(
      flat,
      /the answer was (\d+) L, the median of (\d+) draws (\d+) L(?: or less)?, and (\d+) L survived (\d+) of the (\d+)/,
    );
    const out = answerOf('size');
    const [answer] = found(out, /^answer: ([\d.]+) L/m);
    const [draws] = found(out, /over (\d+) draws/);
    const [median] = found(out, /median (?:at most )?([\d.]+) L/);
    const chosen = found(out, /- ([\d.]+) L keeps every condition in (\d+) of (\d+)/);
    const rounded = [answer, draws, median, ...chosen].map((text) => String(Math.round(Number(text))));
    expect(told).toEqual(rounded);
  });

  it('tell what the forecast of the backtest was worth', () => {
    const out = answerOf('backtest');
    expect(found(flat, /forecast's error is ([\d.]+) of that of the better of two simple guesses/)).toEqual(
      found(out, /its error is ([\d.]+) of that of the better simple guess/),
    );
    expect(found(flat, /it is best in (\d+ of \d+) cells/)).toEqual(
      found(out, /the forecast is best in (\d+ of \d+)/),
    );
  });
});
