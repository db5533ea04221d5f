import { writeFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { explain } from '../../../../packages/cli/src/command-line.js';
import { full } from '../../../support/length.js';
import { mutated, raw } from './mutate.js';
import { targets, type Target } from './targets.js';

/** Cases of all kinds together, a quarter of them in the short form; `npm run fuzz` asks for 100,000 and keeps the table. */
const asked = process.env['FUZZ'];
const cases = asked === undefined ? (full ? 2_000 : 500) : Number(asked);
/** s of processor time, hundreds of times what the slowest takes: only what grows without bound comes here. */
const endless = 60;

/** What was seen of one kind. */
interface Seen {
  cases: number;
  seconds: number;
  slowest: number;
  memory: number;
  readonly codes: Record<string, number>;
}

const rows: string[] = [];

function tried({ read }: Target, text: string, seen: Seen): void {
  const start = process.cpuUsage();
  let code: number;
  let said = '';
  try {
    read(text);
    code = 0;
  } catch (error) {
    const told = explain(error, false);
    code = told.code;
    said = told.text;
  }
  const { user, system } = process.cpuUsage(start);
  const seconds = (user + system) / 1e6;
  seen.cases += 1;
  seen.seconds += seconds;
  seen.slowest = Math.max(seen.slowest, seconds);
  seen.codes[code] = (seen.codes[code] ?? 0) + 1;
  if (seen.cases % 50 === 0) seen.memory = Math.max(seen.memory, process.memoryUsage().heapUsed / 1e6);
  expect([0, 2], said).toContain(code);
  expect(code === 0 || said !== '').toBe(true);
  expect(said).not.toMatch(/^ +at .*:\d+:\d+\)?$/m);
  expect(seconds).toBeLessThan(endless);
}

describe('any input is read or refused by name', () => {
  it.each(targets.map((target) => [target.name, target] as const))('%s', (name, target) => {
    // What other tests of this process hold is not counted.
    const held = process.memoryUsage().heapUsed / 1e6;
    const seen: Seen = { cases: 0, seconds: 0, slowest: 0, memory: 0, codes: {} };
    const text = fc.oneof({ weight: 3, arbitrary: mutated(target.seeds) }, { weight: 1, arbitrary: raw });
    const numRuns = Math.ceil(cases * target.share);
    fc.assert(
      fc.property(text, (given) => {
        tried(target, given, seen);
      }),
      { seed: 20251, numRuns },
    );
    expect(seen.memory - held).toBeLessThan(500);
    const codes = Object.entries(seen.codes).map(([code, count]) => `${count} x ${code}`);
    rows.push(
      `| ${name} | ${seen.cases} | ${seen.seconds.toFixed(1)} | ${(seen.slowest * 1000).toFixed(0)} | ${seen.memory.toFixed(0)} | ${codes.join(', ')} |`,
    );
  });

  it.skipIf(asked === undefined)('keeps what was seen', () => {
    expect(rows.length).toBe(targets.length);
    const head = [
      '# Fuzzing',
      '',
      `Made by \`FUZZ=${asked} npm run fuzz\`: mutations of valid texts (three in four) and raw bytes, read as the commands read them,`,
      'before anything is simulated. Seconds are of processor time. Memory is the heap in use, sampled every 50 cases.',
      '',
      '| input | cases | s | slowest, ms | largest heap, MB | exit codes |',
      '| --- | --- | --- | --- | --- | --- |',
    ];
    writeFileSync(new URL('../FUZZ.md', import.meta.url), `${[...head, ...rows].join('\n')}\n`);
  });
});
