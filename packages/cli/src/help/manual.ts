import type { Command } from 'commander';
import { commandSummaries } from './command-summary.js';
import { exit } from '../terminal/exit.js';
import { examples } from './examples.js';

/** Text of a manual page: backslashes, hyphens and leading dots are not commands of roff. */
const plain = (text: string): string =>
  text
    .replaceAll('\\', '\\e')
    .replaceAll('-', '\\-')
    .replace(/^(?=[.'])/gm, '\\&');

const bold = (text: string): string => `\\fB${plain(text)}\\fR`;

/** What each exit code means, by its name in `exit`. */
export const exitMeanings: Readonly<Record<keyof typeof exit, string>> = {
  done: 'all was done',
  badInput: 'bad input',
  notFinished: 'a run did not finish, or a fit failed by its own verdict',
  balanceBroken: 'a balance is broken',
  badUsage: 'bad usage',
  ourBug: 'a fault of leat itself',
  interrupted: 'interrupted',
  terminated: 'terminated',
};

/** The manual page of the command, from the same tree as its help: roff, as `man` reads it. */
export function manual(root: Command): string {
  const commands = commandSummaries(root).flatMap(({ name, usage, what, options, arguments: given }) => [
    `.SS ${plain(`leat ${name} ${usage}`)}`,
    plain(what),
    ...[
      ...given.map((each) => [each.name, each.what] as const),
      ...options.map(({ flag, takes = '', values, what: said }) => {
        const choice = values.length === 0 ? '' : `: ${values.join(', ')}`;
        return [`${flag} ${takes}`.trim(), `${said}${choice}`] as const;
      }),
    ].flatMap(([term, said]) => ['.TP', bold(term), plain(said)]),
    '.PP',
    'Examples:',
    ...examples[name].flatMap(([args, said]) => ['.TP', bold(`leat ${args}`), plain(said)]),
  ]);
  return `${[
    `.TH LEAT 1 "" "leat ${root.version() ?? ''}" "User Commands"`,
    '.SH NAME',
    `leat \\- ${plain(root.description())}`,
    '.SH SYNOPSIS',
    `${bold('leat')} COMMAND [OPTIONS] [ARGUMENTS]`,
    '.SH COMMANDS',
    ...commands,
    '.SH EXIT STATUS',
    ...Object.entries(exitMeanings).flatMap(([key, said]) => [
      '.TP',
      bold(String(exit[key as keyof typeof exit])),
      plain(said),
    ]),
    '.SH ENVIRONMENT',
    '.TP',
    bold('NO_COLOR'),
    'no colour in the terminal',
    '.TP',
    bold('LEAT_DEBUG'),
    plain('1: a fault of leat itself is told with the place in its source'),
  ].join('\n')}\n`;
}
