import { readdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { describe, expect, it } from 'vitest';
import { folderWith, leat, leatProcess, type Call } from '../../support/leat.js';
import { full } from '../../support/length.js';

const scenarios = fileURLToPath(new URL('../../../packages/cli/scenarios/', import.meta.url));
const of = (name: string): string => join(scenarios, name);

const highest = 'highest tan@tank averaged 1 d';
const short = ['--days', '3'];

/** Loaded before anything else in every thread: each ends of itself when it should give its third answer of a job, whatever it did before. */
const deadly = join(folderWith(), 'deadly.mjs');
writeFileSync(
  deadly,
  `import { isMainThread, parentPort } from 'node:worker_threads';
  if (!isMainThread) {
    let module = '';
    let tasks = 0;
    const hear = parentPort.addEventListener.bind(parentPort);
    parentPort.addEventListener = (name, take) => hear(name, (event) => {
      module = event.data?.shared?.module ?? module;
      take(event);
    });
    const post = parentPort.postMessage.bind(parentPort);
    parentPort.postMessage = (told) =>
      told.leat === 'done' && module.endsWith(process.env.DEADLY) && ++tasks === 3 ? process.exit(9) : post(told);
  }`,
);

const withDeadly = (args: readonly string[], folder: string, job: string): Call =>
  leatProcess(args, folder, { NODE_OPTIONS: `--import=${pathToFileURL(deadly).href}`, DEADLY: job });

/** Commands that work on workers, each with the module of its job and the file that it keeps. */
const commands: readonly (readonly [string, string, readonly string[], RegExp])[] = [
  [
    'ensemble',
    'ensemble/job.js',
    ['ensemble', 'small.yaml', ...short, '--members', '6', '--workers', '1'],
    /2 of 6 members are kept in (\S+\.ensemble): the same command with --resume \1 goes on/,
  ],
  [
    'size',
    'size/job.js',
    [
      ...[
        'size',
        'small.yaml',
        ...short,
        '--vary',
        'vessels.filter.surface',
        '--from',
        '5 m2',
        '--to',
        '200 m2',
      ],
      ...['--keep', `${highest} below 0.35 mg N/L`, '--members', '6', '--workers', '1'],
    ],
    /2 of 6 draws are kept in (\S+\.size): the same command with --resume \1 goes on/,
  ],
  [
    'sensitivity',
    'sensitivity/job.js',
    [
      ...['sensitivity', 'small.yaml', ...short, '--of', highest, '--method', 'local', '--only', 'aob.*'],
      ...['--workers', '1'],
    ],
    /\d+ runs are kept in (\S+\.sensitivity): the same command with --resume \1 goes on/,
  ],
];

// All three keep and go on by the same code: the short form ends a worker of the first only.
describe.each(full ? commands : commands.slice(0, 1))(
  'leat %s, when a worker dies',
  (name, job, args, kept) => {
    it('says so and what is kept, and goes on from there to the same answer', async () => {
      const folder = folderWith();
      const whole = await leat(args, folder);
      expect({ name, code: whole.code }).toEqual({ name, code: 0 });
      const died = withDeadly(args, folder, job);
      expect(died.code).toBe(70);
      expect(died.err).toMatch(/leat: a worker died while it did job 3 of \d+: it ended with code 9\n/);
      expect(died.err).not.toContain('    at ');
      expect(died.out).toBe('');
      const [, file] = kept.exec(died.err) ?? [];
      expect(readdirSync(folder)).toContain(file);
      const again = await leat([...args, '--resume', file], folder);
      expect([again.code, again.out]).toEqual([0, whole.out]);
    });
  },
);

describe('leat sweep, when a worker dies', () => {
  it('says so and writes nothing', () => {
    const folder = folderWith();
    const vary = ['--vary', 'vessels.filter.surface=5 m2:50 m2:5'];
    const asked = ['sweep', 'small.yaml', ...short, ...vary, '--of', highest, '--workers', '1'];
    const { code, out, err } = withDeadly([...asked, '--csv', 'out.csv'], folder, 'sweep/job.js');
    expect([code, out]).toEqual([70, '']);
    expect(err).toContain('a worker died while it did job 3 of 5: it ended with code 9');
    expect(readdirSync(folder)).toEqual(['small.yaml']);
  });
});

describe('leat fit, when a worker dies', () => {
  it('says so and writes nothing', () => {
    const folder = folderWith();
    const logged = [of('backyard.yaml'), '--log', of('backyard.csv'), '--map', of('backyard.map')];
    const asked = ['fit', ...logged, '--starts', '1', '--free', 'start.nitrate', '--out', 'found.json'];
    const { code, out, err } = withDeadly(asked, folder, 'fit/job.js');
    expect([code, out]).toEqual([70, '']);
    expect(err).toContain('a worker died: it ended with code 9');
    expect(readdirSync(folder)).toEqual(['small.yaml']);
  });
});
