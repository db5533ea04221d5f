import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { visible, oneLine } from '@leat/view/text';
import { folderWith, leat, shell } from '../../support/leat.js';
import { smallSystem } from '../../support/small-text.js';

const scenarios = fileURLToPath(new URL('../../../packages/cli/scenarios/', import.meta.url));
const shipped = (name: string): string => readFileSync(join(scenarios, name), 'utf8');

/** What takes a terminal over: colours, the title of the window, C1, a turn of direction, an overwritten and a forged line. */
const nasty =
  '\u001b[31mred\u001b]0;mine\u0007\u009b2J\u202eesrever\u2066\u200f\rover\nFORGED 0 limits passed';
const quoted = JSON.stringify(nasty);
const unsafe = /(?![\n\t])[\p{Cc}\p{Cf}\p{Zl}\p{Zp}\p{Cs}]/u;
const highest = 'highest tan@tank averaged 1 d';
const few = ['--days', '2', '--members', '2', '--workers', '1'];

const nastyName = `\u001b[31m\u202e.yaml`;
const folder = folderWith({
  'nasty.yaml': smallSystem.replace(/^title:.*$/m, `title: ${quoted}\nnote: ${quoted}`),
  [nastyName]: smallSystem.replace('days: 40', 'dais: 40'),
  'log.csv': `Date,"${nasty} ammonia","Note\u202e",pH\n2026-03-01,"0.5\u001b[2J","${nasty}",7\n`,
  'log.map': `date: { column: Date }\ncolumns:\n  ${JSON.stringify(`${nasty} ammonia`)}: { reads: ammonia, in: tank, unit: mg N/L }\n  "Note\\u202e": notes\n`,
  'backyard.yaml': shipped('backyard.yaml').replace(/^title:.*$/m, `title: ${quoted}`),
  'backyard.csv': shipped('backyard.csv'),
  'backyard.map': shipped('backyard.map'),
});
const logged = ['--log', 'backyard.csv', '--map', 'backyard.map'];

/** Commands whose files, options or file names are hostile, with how much of them must come through. */
const calls: readonly (readonly [string, readonly string[]])[] = [
  ['run', ['run', 'nasty.yaml', '--days', '2']],
  ['run --plot', ['run', 'nasty.yaml', '--days', '2', '--plot', 'tan@tank']],
  ['run --json', ['run', 'nasty.yaml', '--days', '2', '--json']],
  ['check', ['check', 'nasty.yaml']],
  ['check --resolved', ['check', 'nasty.yaml', '--resolved']],
  ['compare', ['compare', 'nasty.yaml', 'nasty.yaml', '--days', '2']],
  ['why', ['why', 'nasty.yaml', '--of', 'tan@tank', '--from', '0d', '--days', '2']],
  ['steady', ['steady', 'nasty.yaml', '--hold', 'nitrate', '--hold', 'chloride']],
  [
    'sweep',
    ['sweep', 'nasty.yaml', '--days', '1', '--vary', 'vessels.filter.surface=5 m2:9 m2:2', '--of', highest],
  ],
  ['ensemble', ['ensemble', 'nasty.yaml', ...few]],
  [
    'sensitivity',
    [
      'sensitivity',
      'nasty.yaml',
      '--days',
      '1',
      '--of',
      highest,
      '--method',
      'local',
      '--only',
      'aob.growth',
    ],
  ],
  ['a guess at a log', ['log', 'log.csv']],
  ['a log', ['log', 'log.csv', '--map', 'log.map']],
  ['a log as JSON', ['log', 'log.csv', '--map', 'log.map', '--json']],
  [
    'fit',
    ['fit', 'backyard.yaml', ...logged, '--until', '2026-03-20', '--starts', '1', '--free', 'start.nitrate'],
  ],
  ['a faulty file with a nasty name', ['check', nastyName]],
  ['a file that is not there', ['check', `${nasty}.yaml`]],
  ['an unknown option', ['run', 'small.yaml', `--${nasty}`]],
  ['an unknown command', [nasty]],
  ['an option that is wrong', ['run', 'small.yaml', '--days', nasty]],
  ['a setting', ['run', 'small.yaml', '--set', `days=${nasty}`]],
  ['a measure', ['ensemble', 'small.yaml', ...few, '--of', nasty]],
  ['a series', ['plot', 'small.yaml', '--of', nasty, '--out', 'x.svg']],
  ['a number', ['show', nasty]],
  ['an output', ['run', 'small.yaml', '--csv', `no/${nasty}`]],
  ['a scenario', ['new', nasty]],
];

describe('what a terminal is given', () => {
  it.each(calls)('holds nothing unseen and no forged line: %s', async (name, args) => {
    const { out, err } = await leat(args, folder);
    const all = out + err;
    expect(all.length).toBeGreaterThan(0);
    expect(unsafe.exec(all)?.[0]).toBeUndefined();
    // The parser of the command line says its own lines; every other forged line would be ours.
    if (!/option|command/.test(name)) expect(all).not.toMatch(/^FORGED/m);
  });

  it('says what was unseen, and JSON says the same as ever', async () => {
    const run = await leat(['run', 'nasty.yaml', '--days', '2'], folder);
    expect(run.out.split('\n')[0]).toContain('\\u001b[31mred\\u001b]0;mine\\u0007\\u009b2J\\u202eesrever');
    const { out } = await leat(['run', 'nasty.yaml', '--days', '2', '--json'], folder);
    expect((JSON.parse(out) as { title: string }).title).toBe(nasty);
  });

  it('holds in a process of its own too', () => {
    const { out, err } = shell(
      '$LEAT run nasty.yaml --days 2; $LEAT check $(printf "\\033[31m\\xe2\\x80\\xae.yaml")',
      folder,
    );
    expect(out).toContain('esrever');
    expect(err).toContain('\\u001b[31m\\u202e.yaml');
    expect(unsafe.exec(out + err)?.[0]).toBeUndefined();
  });
});

describe('a CSV file', () => {
  it('holds nothing unseen either', async () => {
    const vary = ['--vary', 'vessels.filter.surface=5 m2:9 m2:2', '--of', `highest tan@tank averaged 1 d`];
    await leat(['sweep', 'nasty.yaml', '--days', '1', ...vary, '--csv', 'sweep.csv'], folder);
    expect(unsafe.exec(readFileSync(join(folder, 'sweep.csv'), 'utf8'))?.[0]).toBeUndefined();
  });
});

describe('text with what is unseen written out', () => {
  it('is the text itself where all is seen', () => {
    const text = 'Möhre, 魚, 👩‍🌾, می‌خواهم\tand\nlines';
    expect(visible(text)).toBe(text);
    expect(oneLine('a\tb\nc')).toBe('a\\u0009b\\u000ac');
  });

  it('is the same JSON', () => {
    const value = { [nasty]: [nasty, '\u{e0041}\ud800\u007f\u2028'] };
    expect(JSON.parse(visible(JSON.stringify(value)))).toEqual(value);
    expect(unsafe.exec(visible(JSON.stringify(value)))).toBeNull();
  });
});
