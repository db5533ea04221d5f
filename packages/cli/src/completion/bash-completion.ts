import { takesFile, type ToldCommand } from './told-command.js';

/** What completes the value of each option of a command, as the arms of a case. */
function arms({ options }: ToldCommand): readonly string[] {
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

function block(command: ToldCommand): string {
  const flags = command.options.map(({ flag }) => flag).join(' ');
  const rest =
    command.words.length > 0
      ? `COMPREPLY=($(compgen -W '${command.words.join(' ')}' -- "$word"))`
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
export function bashCompletion(commands: readonly ToldCommand[]): string {
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
