import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { folderWith, leat, leatSignalled } from '../../support/leat.js';

const scenarios = fileURLToPath(new URL('../../../packages/cli/scenarios/', import.meta.url));
const of = (name: string): string => join(scenarios, name);
const highest = 'highest tan@tank averaged 1 d';
const tan = `${highest} below 0.35 mg N/L`;
const range = ['--vary', 'vessels.filter.surface', '--from', '5 m2', '--to', '200 m2'];
const short = ['--days', '4'];
const logged = [of('backyard.yaml'), '--log', of('backyard.csv'), '--map', of('backyard.map')];

/** A fit for forecasts to start from. */
const fitted = join(folderWith(), 'fit.json');
await leat(
  ['fit', ...logged, '--until', '2026-03-20', '--starts', '1', '--free', 'start.nitrate', '--out', fitted],
  folderWith(),
);

/** In the midst of a simulation in the main thread: twenty days of the glasshouse call its modules 10,000 times. */
const simulating = 'rates 3000';
/** Workers have had an outline and four members: two at least are done. */
const afterTwo = 'tasks 5';

/** Every command that can take long, with the state in which it is interrupted. */
const commands: readonly (readonly [string, string, readonly string[]])[] = [
  [
    'run',
    simulating,
    ['run', of('glasshouse.yaml'), '--days', '20', '--csv', 'out.csv', '--save', 'end.json', '--json'],
  ],
  ['compare', simulating, ['compare', of('glasshouse.yaml'), of('power-cut.yaml'), '--days', '20']],
  ['report', simulating, ['report', of('glasshouse.yaml'), '--days', '20', '--out', 'page.html']],
  [
    'plot',
    simulating,
    ['plot', of('glasshouse.yaml'), '--days', '20', '--of', 'nitrate@sump', '--out', 'a.svg'],
  ],
  ['size', simulating, ['size', 'small.yaml', ...short, ...range, '--keep', tan]],
  [
    'size --members',
    'tasks 3',
    ['size', 'small.yaml', ...short, ...range, '--keep', tan, '--members', '200'],
  ],
  [
    'sweep',
    'tasks 3',
    [
      ...['sweep', 'small.yaml', ...short, '--vary', 'vessels.filter.surface=5 m2:50 m2:99'],
      ...['--of', highest, '--csv', 'out.csv'],
    ],
  ],
  [
    'ensemble',
    afterTwo,
    ['ensemble', 'small.yaml', ...short, '--members', '500', '--out', 'kept.ensemble', '--csv', 'out.csv'],
  ],
  // Its system run once with the numbers as they stand: no member is done, nothing is kept.
  [
    'ensemble, before its first member',
    'tasks 1',
    ['ensemble', of('glasshouse.yaml'), '--days', '2000', '--members', '9', '--out', 'kept.ensemble'],
  ],
  ['sensitivity', 'tasks 4', ['sensitivity', 'small.yaml', ...short, '--of', highest]],
  ['fit', simulating, ['fit', ...logged, '--starts', '2', '--out', 'found.json']],
  [
    'forecast',
    simulating,
    ['forecast', ...logged, '--until', '2026-03-20', '--fit', fitted, '--members', '9', '--days', '9'],
  ],
  ['steady', simulating, ['steady', of('glasshouse.yaml'), '--json']],
  ['backtest', simulating, ['backtest', ...logged, '--step', '40', '--fits', '1']],
];

/** How many of much work a message says are done: few, when no more is begun after a signal. */
const told = (err: string): number =>
  Number(/(\d+) (?:of \d+ )?(?:members|draws|runs) are kept/.exec(err)?.[1] ?? 0);

describe.each(commands)('leat %s', (name, state, args) => {
  it('ends at Ctrl-C in the midst of its work, with 130 and no half of a file', () => {
    const folder = folderWith();
    const { code, err, out } = leatSignalled(args, folder, 'SIGINT', state);
    expect({ code, err: err.includes('    at ') }).toEqual({ code: 130, err: false });
    expect(told(err)).toBeLessThan(30);
    const left = readdirSync(folder).filter((file) => file !== 'small.yaml');
    // What a sensitivity or a size has done by then is kept whole, in a file that the message names.
    const kept = /^small-[0-9a-f]{8}\.(?:sensitivity|size)$/;
    for (const file of left.filter((each) => kept.test(each))) expect(err).toContain(`--resume ${file}`);
    expect(left.filter((file) => !kept.test(file))).toEqual(name === 'ensemble' ? ['kept.ensemble'] : []);
    if (/^(?:run|steady|forecast)$/.test(name)) expect(out).toBe('');
  });
});

describe('a polite kill', () => {
  it('of an ensemble keeps what is done, says how to go on, and leaves with 143', () => {
    const folder = folderWith();
    const args = ['ensemble', 'small.yaml', ...short, '--members', '500', '--out', 'kept.ensemble'];
    const { code, err } = leatSignalled(args, folder, 'SIGTERM', afterTwo);
    expect(code).toBe(143);
    expect(err).toMatch(/of 500 members are kept in kept\.ensemble: the same command with --resume/);
    expect(told(err)).toBeLessThan(30);
    expect(readdirSync(folder).sort()).toEqual(['kept.ensemble', 'small.yaml']);
  });

  it('of a run is the end of it, with 143', () => {
    const folder = folderWith();
    const args = ['run', of('glasshouse.yaml'), '--days', '20', '--csv', 'out.csv'];
    expect(leatSignalled(args, folder, 'SIGTERM', simulating).code).toBe(143);
    expect(readdirSync(folder)).toEqual(['small.yaml']);
  });
});
