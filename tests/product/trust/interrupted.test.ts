import { spawn } from 'node:child_process';
import { readdirSync } from 'node:fs';
import { constants } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { folderWith, leat, leatPath } from '../../support/leat.js';

const scenarios = fileURLToPath(new URL('../../../packages/cli/scenarios/', import.meta.url));
const of = (name: string): string => join(scenarios, name);
const highest = 'highest tan@tank averaged 1 d';
const tan = `${highest} below 0.35 mg N/L`;
const range = ['--vary', 'vessels.filter.surface', '--from', '5 m2', '--to', '200 m2'];
const long = ['--days', '20000', '--every', '20d'];
const logged = [of('backyard.yaml'), '--log', of('backyard.csv'), '--map', of('backyard.map')];

/** A fit for forecasts to start from. */
const fitted = join(folderWith(), 'fit.json');
await leat(['fit', ...logged, '--starts', '1', '--free', 'start.nitrate', '--out', fitted], folderWith());

/** Starts the command, signals it when it has been at work for a while, and waits for its end. */
function signalled(
  args: readonly string[],
  folder: string,
  signal: 'SIGINT' | 'SIGTERM',
  after: number,
): Promise<{ code: number; took: number; err: string; out: string }> {
  return new Promise((resolve, reject) => {
    const child = spawn(process.execPath, [leatPath, ...args], { cwd: folder });
    let [err, out] = ['', ''];
    child.stderr.on('data', (data: Buffer) => (err += data.toString()));
    child.stdout.on('data', (data: Buffer) => (out += data.toString()));
    let sent = 0;
    setTimeout(() => {
      sent = performance.now();
      child.kill(signal);
    }, after);
    child.on('error', reject);
    child.on('exit', (code, by) => {
      if (sent === 0) {
        reject(new Error(`ended by itself before the signal: ${String(code)} ${err}`));
        return;
      }
      // What a shell says of a process that a signal ended: 128 and its number.
      resolve({
        code: by === null ? (code ?? -1) : 128 + constants.signals[by],
        took: performance.now() - sent,
        err,
        out,
      });
    });
  });
}

/** Every command that can take long, with work for much longer than the test. */
const commands: readonly (readonly [string, readonly string[]])[] = [
  ['run', ['run', of('glasshouse.yaml'), ...long, '--csv', 'out.csv', '--save', 'end.json', '--json']],
  ['compare', ['compare', of('glasshouse.yaml'), of('power-cut.yaml'), ...long]],
  ['report', ['report', of('glasshouse.yaml'), ...long, '--out', 'page.html']],
  ['plot', ['plot', of('glasshouse.yaml'), ...long, '--of', 'nitrate@sump', '--out', 'page.svg']],
  ['size', ['size', 'small.yaml', ...long, ...range, '--keep', tan]],
  ['size --members', ['size', 'small.yaml', '--days', '60', ...range, '--keep', tan, '--members', '500']],
  [
    'sweep',
    [
      'sweep',
      'small.yaml',
      ...long,
      '--vary',
      'vessels.filter.surface=5 m2:50 m2:9',
      '--of',
      highest,
      '--csv',
      'out.csv',
    ],
  ],
  ['ensemble', ['ensemble', 'small.yaml', '--members', '5000', '--out', 'kept.ensemble', '--csv', 'out.csv']],
  // Its system run once with the numbers as they stand: no member is done, nothing is kept.
  [
    'ensemble, before its first member',
    ['ensemble', of('glasshouse.yaml'), ...long, '--members', '9', '--out', 'kept.ensemble'],
  ],
  ['sensitivity', ['sensitivity', 'small.yaml', ...long, '--of', highest]],
  ['fit', ['fit', ...logged, '--starts', '50', '--out', 'found.json']],
  ['forecast', ['forecast', ...logged, '--fit', fitted, '--members', '2000', '--days', '365']],
  ['steady', ['steady', of('glasshouse.yaml'), '--json']],
  ['backtest', ['backtest', ...logged, '--step', '1', '--members', '500']],
];

/** When the signal comes: the command is at work by then, its workers too, and far from its end. ms */
const AFTER = 2500;
const AFTER_WORKERS = 6000;
/** The same of a steady state, which takes a second in all. */
const AFTER_SHORT = 500;

describe.each(commands)('leat %s', (name, args) => {
  it('ends within a second of Ctrl-C, with 130 and no half of a file', async () => {
    const folder = folderWith();
    const { code, took, err, out } = await signalled(
      args,
      folder,
      'SIGINT',
      name === 'ensemble' ? AFTER_WORKERS : name === 'steady' ? AFTER_SHORT : AFTER,
    );
    expect({ code, err: err.includes('    at ') }).toEqual({ code: 130, err: false });
    expect(took).toBeLessThan(1000);
    const left = readdirSync(folder).filter((file) => file !== 'small.yaml');
    // What a sensitivity or a size has done by then is kept whole, in a file that the message names.
    const kept = /^small-[0-9a-f]{8}\.(?:sensitivity|size)$/;
    for (const file of left.filter((each) => kept.test(each))) expect(err).toContain(`--resume ${file}`);
    expect(left.filter((file) => !kept.test(file))).toEqual(name === 'ensemble' ? ['kept.ensemble'] : []);
    if (/^(?:run|steady|forecast)$/.test(name)) expect(out).toBe('');
  });
});

describe('a polite kill', () => {
  it('of an ensemble keeps what is done, says how to go on, and leaves with 143', async () => {
    const folder = folderWith();
    const args = ['ensemble', 'small.yaml', '--members', '5000', '--out', 'kept.ensemble'];
    const { code, err } = await signalled(args, folder, 'SIGTERM', AFTER_WORKERS);
    expect(code).toBe(143);
    expect(err).toMatch(/of 5000 members are kept in kept\.ensemble: the same command with --resume/);
    expect(readdirSync(folder).sort()).toEqual(['kept.ensemble', 'small.yaml']);
  });

  it('of a run is the end of it, with 143', async () => {
    const folder = folderWith();
    const { code } = await signalled(['run', of('glasshouse.yaml'), ...long], folder, 'SIGTERM', AFTER);
    expect(code).toBe(143);
    expect(readdirSync(folder)).toEqual(['small.yaml']);
  });
});
