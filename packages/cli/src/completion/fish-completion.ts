import { takesFile, type ToldCommand, type ToldOption } from './told-command.js';

const quoted = (text: string): string => `'${text.replaceAll('\\', '\\\\').replaceAll("'", "\\'")}'`;

function optionLine(command: string, option: ToldOption): string {
  const { flag, takes, values, what } = option;
  const value =
    takes === undefined
      ? ''
      : values.length > 0
        ? ` -x -a ${quoted(values.join(' '))}`
        : takesFile(option)
          ? ' -r -F'
          : ' -x';
  return `complete -c leat -n '__fish_seen_subcommand_from ${command}' -l ${flag.slice(2)}${value} -d ${quoted(what)}`;
}

/** Completion for fish. */
export function fishCompletion(commands: readonly ToldCommand[]): string {
  const lines = commands.flatMap((command) => [
    `complete -c leat -n __fish_use_subcommand -f -a ${command.name} -d ${quoted(command.what)}`,
    ...(command.words.length === 0
      ? []
      : [
          `complete -c leat -n '__fish_seen_subcommand_from ${command.name}' -f -a ${quoted(command.words.join(' '))}`,
        ]),
    ...command.options.map((option) => optionLine(command.name, option)),
  ]);
  return [
    '# fish completion of leat',
    'complete -c leat -n __fish_use_subcommand -f -l help -d "display help"',
    'complete -c leat -n __fish_use_subcommand -f -l version -d "display the version"',
    ...lines,
    '',
  ].join('\n');
}
