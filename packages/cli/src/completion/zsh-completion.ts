import { takesFile, type ToldCommand, type ToldOption } from './told-command.js';

/** Words within single quotes, free of what an argument specification reads for itself. */
const plain = (text: string): string =>
  text
    .replaceAll("'", "'\\''")
    .replaceAll('\\', '\\\\')
    .replaceAll("'\\\\''", "'\\''")
    .replace(/[[\]:]/g, '\\$&');

function optionSpec(option: ToldOption): string {
  const { flag, takes, values, what } = option;
  const action = values.length > 0 ? `(${values.join(' ')})` : takesFile(option) ? '_files' : ' ';
  return `      '*${flag}[${plain(what)}]${takes === undefined ? '' : `:value:${action}`}'`;
}

function block({ name, options, words }: ToldCommand): string {
  const rest = words.length > 0 ? `(${words.join(' ')})` : '_files';
  return [
    `    ${name})`,
    '      _arguments \\',
    ...options.map((option) => `${optionSpec(option)} \\`),
    `      '*:argument:${rest}' ;;`,
  ].join('\n');
}

/** Completion for zsh. */
export function zshCompletion(commands: readonly ToldCommand[]): string {
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
${commands.map(block).join('\n')}
  esac
}
if [[ $funcstack[1] == _leat ]]; then _leat "$@"; else compdef _leat leat; fi
`;
}
