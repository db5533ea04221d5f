import type { Command } from 'commander';
import {
  takesFile,
  type CommandSummary,
  commandSummaries,
  type OptionSummary,
} from '../../help/command-summary.js';

/** What completes the value of each option of a command, as the arms of a case. */
function arms({ options }: CommandSummary): readonly string[] {
  return options
    .filter(({ takes }) => takes !== undefined)
    .map((option) => {
      const how =
        option.values.length > 0
          ? `COMPREPLY=($(compgen -W '${option.values.join(' ')}' -- "$word"))`
          : takesFile(option)
            ? 'COMPREPLY=($(compgen -f -- "$word"))'
            : 'COMPREPLY=()';
      return `      ${option.flag}) ${how}; return ;;`;
    });
}

function block(command: CommandSummary): string {
  const flags = command.options.map(({ flag }) => flag).join(' ');
  const rest =
    command.choices.length > 0
      ? `COMPREPLY=($(compgen -W '${command.choices.join(' ')}' -- "$word"))`
      : 'COMPREPLY=($(compgen -f -- "$word"))';
  return [
    `  ${command.name})`,
    '    case "$before" in',
    ...arms(command),
    '    esac',
    `    if [[ $word == -* ]]; then COMPREPLY=($(compgen -W '${flags}' -- "$word")); else ${rest}; fi ;;`,
  ].join('\n');
}

/** Completion for bash. */
function bashCompletion(commands: readonly CommandSummary[]): string {
  return `# bash completion of leat
_leat() {
  local IFS=$' \\t\\n'
  local word="\${COMP_WORDS[COMP_CWORD]}" before="\${COMP_WORDS[COMP_CWORD-1]}"
  if (( COMP_CWORD == 1 )); then
    COMPREPLY=($(compgen -W '${commands.map(({ name }) => name).join(' ')} --help --version' -- "$word"))
    return
  fi
  case "\${COMP_WORDS[1]}" in
${commands.map(block).join('\n')}
  esac
}
complete -o filenames -F _leat leat
`;
}

const quoted = (text: string): string => `'${text.replaceAll('\\', '\\\\').replaceAll("'", "\\'")}'`;

function optionLine(command: string, option: OptionSummary): string {
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
function fishCompletion(commands: readonly CommandSummary[]): string {
  const lines = commands.flatMap((command) => [
    `complete -c leat -n __fish_use_subcommand -f -a ${command.name} -d ${quoted(command.what)}`,
    ...(command.choices.length === 0
      ? []
      : [
          `complete -c leat -n '__fish_seen_subcommand_from ${command.name}' -f -a ${quoted(command.choices.join(' '))}`,
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

/** Words within single quotes, free of what an argument specification reads for itself. */
const plain = (text: string): string =>
  text
    .replaceAll("'", "'\\''")
    .replaceAll('\\', '\\\\')
    .replaceAll("'\\\\''", "'\\''")
    .replace(/[[\]:]/g, '\\$&');

function optionSpec(option: OptionSummary): string {
  const { flag, takes, values, what } = option;
  const action = values.length > 0 ? `(${values.join(' ')})` : takesFile(option) ? '_files' : ' ';
  return `      '*${flag}[${plain(what)}]${takes === undefined ? '' : `:value:${action}`}'`;
}

function zshBlock({ name, options, choices }: CommandSummary): string {
  const rest = choices.length > 0 ? `(${choices.join(' ')})` : '_files';
  return [
    `    ${name})`,
    '      _arguments \\',
    ...options.map((option) => `${optionSpec(option)} \\`),
    `      '*:argument:${rest}' ;;`,
  ].join('\n');
}

/** Completion for zsh. */
function zshCompletion(commands: readonly CommandSummary[]): string {
  return `#compdef leat
_leat() {
  local -a names
  names=(
${commands.map(({ name, what }) => `    '${name}:${plain(what)}'`).join('\n')}
  )
  if (( CURRENT == 2 )); then
    _describe 'command' names
    _arguments '--help[display help]' '--version[display the version]'
    return
  fi
  local name=$words[2]
  shift words
  (( CURRENT-- ))
  case $name in
${commands.map(zshBlock).join('\n')}
  esac
}
if [[ $funcstack[1] == _leat ]]; then _leat "$@"; else compdef _leat leat; fi
`;
}

const makers = { bash: bashCompletion, zsh: zshCompletion, fish: fishCompletion } as const;

/** The script by which a shell completes the command line, made from the commands as they are. */
export function completionText(root: Command, shell: keyof typeof makers): string {
  return makers[shell](commandSummaries(root));
}
