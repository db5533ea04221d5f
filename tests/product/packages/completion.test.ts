import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { folderWith, leat } from '../../support/leat.js';

const folder = folderWith({ 'my-log.csv': 'Date\n' });
const script = async (shell: string): Promise<string> => (await leat(['completion', shell], folder)).out;
const required = process.env['LEAT_CI_TOOLS'] === '1';
mkdirSync(join(folder, 'bin'));
for (const shell of ['bash', 'zsh', 'fish'])
  writeFileSync(join(folder, `leat.${shell}`), await script(shell));

const has = (shell: string): boolean => existsSync(`/usr/bin/${shell}`);
const skipped = (shell: string): string =>
  has(shell) ? '' : ` (skipped: no ${shell}; apt-get install ${shell})`;

function run(shell: string, line: string): readonly string[] {
  const quiet = shell === 'zsh' ? ['-f'] : shell === 'fish' ? ['--no-config'] : ['--norc'];
  const { status, stdout, stderr } = spawnSync(shell, [...quiet, '-c', line], {
    cwd: folder,
    encoding: 'utf8',
  });
  expect([status, stderr]).toEqual([0, '']);
  return stdout.split('\n').filter((each) => each !== '');
}

/** What bash offers for the last word. */
const bash = (...words: readonly string[]): readonly string[] => {
  const list = words.map((word) => `'${word}'`).join(' ');
  return run(
    'bash',
    `source leat.bash; COMP_WORDS=(leat ${list}); COMP_CWORD=${words.length}; _leat; printf '%s\\n' "\${COMPREPLY[@]}"`,
  );
};

const names = [...(await leat(['--help'], folder)).out.matchAll(/^ {2}([a-z]+) /gm)]
  .map(([, name]) => name)
  .filter((name) => name !== 'help');

describe('completion in bash', () => {
  it('offers every command', () => {
    expect(names.length).toBeGreaterThan(15);
    expect(bash('')).toEqual([...names, '--help', '--version']);
    expect(bash('se')).toEqual(['sensitivity']);
  });

  it.each(names)('offers every option of %s that its help names', async (name) => {
    const help = (await leat([name, '--help'], folder)).out;
    const options = [...help.matchAll(/^ {2}(?:-\w, )?(--[a-z-]+)/gm)].map(([, option]) => option);
    expect(options).toContain('--help');
    expect([...bash(name, '--')].sort()).toEqual(options.sort());
  });

  it('offers the values of an option that has few, files where a file is asked, and nothing else', () => {
    expect(bash('run', '--integrator', '')).toEqual(['rosenbrock', 'odex']);
    expect(bash('why', 'a.yaml', '--around', 'p')).toEqual(['place']);
    expect(bash('fit', '--log', 'my')).toEqual(['my-log.csv']);
    expect(bash('run', 'sma')).toEqual(['small.yaml']);
    expect(bash('completion', '')).toEqual(['bash', 'zsh', 'fish']);
    expect(bash('run', '--days', '')).toEqual([]);
  });

  it('is set up by sourcing what the command prints', () => {
    expect(run('bash', 'source <(cat leat.bash); complete -p leat')).toEqual([
      'complete -o filenames -F _leat leat',
    ]);
  });
});

describe('completion in zsh and fish', () => {
  it.each(['zsh', 'fish'])('%s is there where it must be', (shell) => {
    expect(has(shell) || !required, skipped(shell)).toBe(true);
  });

  it.skipIf(!has('fish'))(`fish offers commands, options and values${skipped('fish')}`, () => {
    const fish = (line: string): readonly string[] =>
      run('fish', `source leat.fish; complete -C '${line}'`).map((each) => each.split('\t')[0]);
    expect([...fish('leat ')].sort()).toEqual([...names].sort());
    expect(fish('leat run --integrator ')).toEqual(expect.arrayContaining(['odex', 'rosenbrock']));
    expect(fish('leat why --aro')).toEqual(['--around']);
    expect(fish('leat completion ')).toEqual(expect.arrayContaining(['bash', 'fish', 'zsh']));
    expect(fish('leat fit --log my')).toEqual(['my-log.csv']);
  });

  it.skipIf(!has('zsh'))(`zsh reads it and offers commands, options and values${skipped('zsh')}`, () => {
    // A terminal of its own, as completion of zsh only works in one: type, press Tab, read what stands there.
    // It is read until what is looked for stands there, or for a minute.
    const typed = (line: string, offered: string): string =>
      run(
        'zsh',
        [
          'zmodload zsh/zpty',
          "zpty shell 'PS1= zsh -f -i'",
          "zpty -w shell 'autoload -U compinit; compinit -u -D; PS1=; source leat.zsh; setopt no_beep; print re''ady'",
          "zpty -r shell seen '*ready*'",
          `zpty -w -n shell $'${line}\\t\\t'`,
          'out=',
          `for i in {1..600}; do while zpty -rt shell part; do out+=$part; done; [[ $out == *'${offered}'* ]] && break; sleep 0.1; done`,
          'print -r -- $out; zpty -d shell',
        ].join('\n'),
      ).join('\n');
    expect(typed('leat sens', 'leat sensitivity')).toContain('leat sensitivity');
    expect(typed('leat run --integrator ro', 'rosenbrock')).toContain('rosenbrock');
    expect(typed('leat why --aro', '--around')).toContain('--around');
    expect(typed('leat fit --log my', 'my-log.csv')).toContain('my-log.csv');
  });
});
