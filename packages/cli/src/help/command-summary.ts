import type { Command } from 'commander';

/** An option as completion and the manual need it. */
export interface OptionSummary {
  readonly flag: string;
  /** The name of what it takes, as help writes it; undefined for a switch. */
  readonly takes: string | undefined;
  readonly values: readonly string[];
  readonly what: string;
}

/** A command as completion and the manual need it. */
export interface CommandSummary {
  readonly name: string;
  readonly usage: string;
  readonly what: string;
  readonly options: readonly OptionSummary[];
  readonly arguments: readonly { readonly name: string; readonly what: string }[];
  /** What its arguments may be; empty where they are files or free. */
  readonly choices: readonly string[];
}

/** The commands of the tree of commander, in the order of the help, with `--help` among the options of each. */
export function commandSummaries(root: Command): readonly CommandSummary[] {
  return root.commands.map((command) => ({
    name: command.name(),
    usage: command.usage(),
    what: command.description(),
    options: [
      ...command.options.map(({ long, flags, argChoices, description }) => ({
        flag: long ?? flags,
        takes: /[<[].*$/.exec(flags)?.[0],
        values: argChoices ?? [],
        what: description,
      })),
      { flag: '--help', takes: undefined, values: [], what: 'display help for command' },
    ],
    arguments: command.registeredArguments.map((each) => ({ name: each.name(), what: each.description })),
    choices: command.registeredArguments.flatMap(({ argChoices }) => argChoices ?? []),
  }));
}

/** Whether an option takes a value that is a file. */
export const takesFile = ({ takes }: OptionSummary): boolean => takes !== undefined && takes.includes('file');
