import {
  chmodSync,
  existsSync,
  lstatSync,
  readdirSync,
  readFileSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { folderWith, leat, shell } from '../../support/leat.js';
import { full } from '../../support/length.js';

const folder = folderWith();
const noTrace = /^\s+at |node:internal|Error:/m;
const highest = 'highest tan@tank averaged 1 d';

/** Commands with much to say, by each of the ways out: a summary, a document, a table, help. The short form leaves out the rest. */
const talkers: readonly (readonly [string, string])[] = [
  ['run', 'run small.yaml'],
  ['show', 'show'],
  ['help', '--help'],
  ...(full
    ? ([
        ['run --json', 'run small.yaml --json'],
        ['check', 'check small.yaml'],
        ['compare', 'compare small.yaml small.yaml'],
        ['steady', 'steady small.yaml'],
      ] as const)
    : []),
];

describe('a pipe that its reader closes', () => {
  it.each(talkers)('ends leat %s without a word', (_name, words) => {
    for (const reader of ['head -1', 'true']) {
      const { code, err } = shell(
        `set -o pipefail; $LEAT ${words} 2>err.txt | ${reader} >/dev/null; exit \${PIPESTATUS[0]}`,
        folder,
      );
      expect({ code: code === 0 || code === 3, err }).toEqual({ code: true, err: '' });
      expect(readFileSync(join(folder, 'err.txt'), 'utf8')).not.toMatch(noTrace);
    }
  });
});

describe.runIf(existsSync('/dev/full'))('a full disk', () => {
  it.each(talkers)('is said in a line by leat %s, which leaves with 2', (_name, words) => {
    const { code, err } = shell(`$LEAT ${words} >/dev/full`, folder);
    expect(code).toBe(2);
    expect(err).toContain('the result cannot be written: the disk is full');
    expect(err).not.toMatch(noTrace);
  });

  it.each([
    ['run --csv', ['run', 'small.yaml', '--csv', '/dev/full']],
    ['run --save', ['run', 'small.yaml', '--save', '/dev/full']],
    ['plot', ['plot', 'small.yaml', '--of', 'nitrate@sump', '--out', 'full.svg']],
    ['report', ['report', 'small.yaml', '--out', 'full.svg']],
    [
      'sweep',
      [
        'sweep',
        'small.yaml',
        '--days',
        '2',
        '--vary',
        'vessels.filter.surface=5 m2:50 m2:2',
        '--of',
        highest,
        '--csv',
        '/dev/full',
      ],
    ],
  ])('is named with its file by leat %s', async (_name, args) => {
    const there = folderWith();
    symlinkSync('/dev/full', join(there, 'full.svg'));
    const { code, err } = await leat(args, there);
    expect(code).toBe(2);
    expect(err).toMatch(/full(\.svg)?: cannot be written: the disk is full/);
    expect(err).not.toMatch(noTrace);
    expect(readdirSync(there).sort()).toEqual(['full.svg', 'small.yaml']);
    expect(statSync('/dev/full').isCharacterDevice()).toBe(true);
  });
});

describe('a file that is written', () => {
  it('may be a device or a pipe, which is written to and stays what it is', async () => {
    const { code, out } = shell('$LEAT run small.yaml --quiet --csv /dev/stdout | head -1', folder);
    expect(code).toBe(0);
    expect(out).toMatch(/^time/);
    expect((await leat(['run', 'small.yaml', '--quiet', '--csv', '/dev/null'], folder)).code).toBe(0);
    expect(statSync('/dev/null').isCharacterDevice()).toBe(true);
  });

  it('may be a link, which stays a link: what it leads to is written', async () => {
    const there = folderWith({ 'real.csv': 'time [d],old\n' });
    symlinkSync('real.csv', join(there, 'link.csv'));
    expect((await leat(['run', 'small.yaml', '--quiet', '--csv', 'link.csv'], there)).code).toBe(0);
    expect(lstatSync(join(there, 'link.csv')).isSymbolicLink()).toBe(true);
    expect(readFileSync(join(there, 'real.csv'), 'utf8')).not.toContain('old');
  });

  it('may not be a folder', async () => {
    const there = folderWith();
    writeFileSync(join(there, 'out.csv'), 'old');
    const { code, err } = await leat(['run', 'small.yaml', '--quiet', '--csv', '.'], there);
    expect(code).toBe(2);
    expect(err).toMatch(/^\.: cannot be written: /);
    expect(readdirSync(there).sort()).toEqual(['out.csv', 'small.yaml']);
  });
});

describe('standard output that is a pipe', () => {
  it('is asked about in a way that leaves the packages findable which a command loads later', () => {
    const { code, err } = shell(
      '$LEAT report small.yaml --out piped.html | cat; exit ${PIPESTATUS[0]}',
      folder,
    );
    expect(err).not.toMatch(/Cannot find package/);
    expect({ code, made: existsSync(join(folder, 'piped.html')) }).toEqual({ code: 0, made: true });
  });
});

describe('standard output that is closed', () => {
  it.each(talkers)('is an error to leat %s, which says so where that can be seen', (_name, words) => {
    const { code, err } = shell(`$LEAT ${words} >&-`, folder);
    expect({ code, err }).toEqual({
      code: 2,
      err: 'the result cannot be written: standard output is closed (where no output is wanted: > /dev/null)\n',
    });
    expect(shell(`$LEAT ${words} >&- 2>&-`, folder).code).toBe(2);
  });

  it('is none where nothing is to be written there, or where nobody wants it', () => {
    const there = folderWith();
    expect(shell('$LEAT run small.yaml --quiet --csv out.csv >&-', there)).toMatchObject({
      code: 0,
      err: '',
    });
    expect(readFileSync(join(there, 'out.csv'), 'utf8')).toMatch(/^time/);
    expect(shell('$LEAT run small.yaml >/dev/null', there).code).toBe(0);
  });
});

describe('a file that may not grow so large', () => {
  it('is named, and the old one stays', () => {
    const there = folderWith({ 'out.csv': 'time [d],old\n' });
    const { code, err } = shell('ulimit -f 4; $LEAT run small.yaml --quiet --csv out.csv --force', there);
    expect({ code, err }).toEqual({
      code: 2,
      err: 'out.csv: cannot be written: it would be larger than files may be here\n',
    });
    expect(readFileSync(join(there, 'out.csv'), 'utf8')).toBe('time [d],old\n');
    expect(readdirSync(there).sort()).toEqual(['out.csv', 'small.yaml']);
  });

  it('may be that of the result', () => {
    const { code, err } = shell('ulimit -f 4; $LEAT run small.yaml --json > big.json', folderWith());
    expect(code).toBe(2);
    expect(err).toContain('the result cannot be written: it would be larger than files may be here');
  });
});

describe('names of files that no disk has', () => {
  const long = 'a'.repeat(300);

  it('are said to be too long', async () => {
    const written = await leat(['run', 'small.yaml', '--quiet', '--csv', `${long}.csv`], folder);
    expect(written).toMatchObject({ code: 2, err: `${long}.csv: cannot be written: the name is too long\n` });
    const deep = `${'a/'.repeat(3000)}x.yaml`;
    expect(await leat(['run', deep], folder)).toMatchObject({
      code: 2,
      err: `${deep}: cannot be read: the name is too long\n`,
    });
  });

  it('are said to hold a NUL, and where in the file', async () => {
    const there = folderWith({ 'nul.yaml': 'include: "a\\0b.yaml"\n' });
    const { code, err } = await leat(['check', 'nul.yaml'], there);
    expect(code).toBe(2);
    expect(err).toBe(
      'nul.yaml:1:10: include: cannot be read: the name holds a NUL, which no name of a file can; got "a\\u0000b.yaml"\n',
    );
  });
});

/** Folders in which nobody, or not this user, may write. */
describe('a folder in which nothing may be written', () => {
  const asNobody = process.getuid?.() === 0 ? 'setpriv --reuid=65534 --regid=65534 --clear-groups ' : '';

  it.runIf(existsSync('/sys/kernel'))('is named, the file system being of the kernel', async () => {
    const { code, err } = await leat(
      ['run', 'small.yaml', '--quiet', '--csv', '/sys/kernel/leat.csv'],
      folder,
    );
    expect(code).toBe(2);
    expect(err).toMatch(
      /^\/sys\/kernel\/leat\.csv: cannot be written: (?:no permission|the disk is read-only)\n$/,
    );
  });

  it('is named, the folder being read-only to who runs it', (context) => {
    const there = folderWith({ 'shut/small.yaml': readFileSync(join(folder, 'small.yaml')) });
    chmodSync(there, 0o755);
    chmodSync(join(there, 'shut'), 0o555);
    // Another user must be able to read the command at all.
    const able = shell(`${asNobody}$LEAT --version`, there);
    if (able.code !== 0) context.skip(`nobody else can run the command here: ${able.err.split('\n')[0]}`);
    for (const option of ['--csv out.csv', '--save end.json', '--parquet out.parquet']) {
      const { code, err } = shell(`cd shut && ${asNobody}$LEAT run small.yaml --quiet ${option}`, there);
      expect({ code, err }).toEqual({
        code: 2,
        err: `${option.split(' ')[1]}: cannot be written: no permission\n`,
      });
    }
    expect(readdirSync(join(there, 'shut'))).toEqual(['small.yaml']);
    chmodSync(join(there, 'shut'), 0o755);
  });
});

describe('a terminal', () => {
  const inTerminal = (words: string, there: string): string =>
    shell(`LEAT_WIDTH=100 script -qec "$LEAT ${words}" typed >/dev/null </dev/null; cat typed`, there).out;

  it.runIf(shell('command -v script', folder).code === 0)(
    'has colour and a bar of progress, and the same words as a pipe',
    () => {
      const there = folderWith();
      const seen = inTerminal('run small.yaml', there);
      const escape = new RegExp(String.raw`\u001b\[[0-9;?]*[A-Za-z]`, 'g');
      expect(seen).toMatch(escape);
      const words = (text: string): string[] =>
        text
          .replace(escape, '')
          .replaceAll('\r', '')
          .split('\n')
          .filter((line) => /^[A-Z]/.test(line) && !line.startsWith('Script'));
      const plain = shell('LEAT_WIDTH=100 $LEAT run small.yaml', there).out;
      expect(plain).not.toMatch(escape);
      expect(words(plain).length).toBeGreaterThan(3);
      for (const line of words(plain)) expect(words(seen)).toContain(line);
      expect(inTerminal('run small.yaml', folderWith()).includes('NaN')).toBe(false);
      expect(
        shell('NO_COLOR=1 script -qec "$LEAT run small.yaml" typed >/dev/null </dev/null; cat typed', there)
          .out,
      ).not.toMatch(new RegExp(String.raw`\u001b\[[0-9;]*m`));
    },
  );
});
