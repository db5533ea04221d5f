import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { examples } from '../../../packages/cli/src/help/examples.js';
import { program } from '../../../packages/cli/src/program.js';
import { call, root } from './packed.js';

const silent = { result: () => undefined, note: () => undefined };
const fresh = () => program(silent, () => undefined);
const names = fresh().commands.map((command) => command.name());

/** Words as a shell cuts them; what stands behind `>` is not the command's. */
const words = (line: string): readonly string[] =>
  [...line.replace(/ > .*$/, '').matchAll(/"([^"]*)"|(\S+)/g)].map(([, quoted, bare]) => quoted ?? bare);

describe('the help of every command', () => {
  it.each(names)('%s has examples, which stand in it', (name) => {
    expect(examples[name].length).toBeGreaterThan(0);
    let help = '';
    const command = fresh().commands.find((each) => each.name() === name);
    command?.configureOutput({ writeOut: (text) => (help += text) });
    command?.outputHelp();
    for (const [args, what] of examples[name]) {
      expect(args.split(' ')[0]).toBe(name);
      expect(help).toContain(`leat ${args}\n`);
      expect(help).toContain(what);
    }
  });

  it('has examples of no command that is not there', () => {
    expect(Object.keys(examples).sort()).toEqual([...names].sort());
  });

  it.each(Object.values(examples).flatMap((list) => list.map(([args]) => args)))(
    'takes as it stands: leat %s',
    async (line) => {
      const tree = fresh();
      const called: string[] = [];
      for (const command of tree.commands)
        command.action(() => {
          called.push(command.name());
        });
      await tree.parseAsync([...words(line)], { from: 'user' });
      expect(called).toEqual([line.split(' ')[0]]);
    },
  );
});

describe('the manual page', () => {
  const path = join(root, 'packages/cli/man/leat.1');

  it('names every command, option and exit code', () => {
    const text = readFileSync(path, 'utf8').replaceAll('\\-', '-');
    for (const command of fresh().commands) {
      expect(text).toContain(`.SS leat ${command.name()} `);
      for (const { long } of command.options) expect(text).toContain(`\\fB${long ?? ''}`);
    }
    for (const code of [0, 2, 3, 4, 5, 70, 130]) expect(text).toContain(`\\fB${code}\\fR`);
  });

  it.skipIf(!existsSync('/usr/bin/man'))('is read by man without a warning', () => {
    const { status, stdout, stderr } = call('man', ['--warnings', '-l', path], root, {
      ...process.env,
      MANPAGER: 'cat',
      LC_ALL: 'C.UTF-8',
    });
    expect([status, stderr]).toEqual([0, '']);
    expect(stdout).toContain('leat completion [options] <shell>');
  });
});

describe('the list of what leat brings along', () => {
  it('names what is used, and no place of this machine', () => {
    const text = readFileSync(join(root, 'packages/cli/THIRD-PARTY.md'), 'utf8');
    for (const name of ['yaml', 'zod', 'commander', 'odex', 'ml-matrix'])
      expect(text).toContain(`| ${name} | `);
    expect(text).not.toMatch(/undefined|\/node_modules\//);
  });
});
