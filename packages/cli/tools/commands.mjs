// The tables of docs/commands.md, from the commands of the build. `npm run generate` writes them.
import { readFileSync } from 'node:fs';
import { table, withBlocks } from '../../../.tools/blocks.mjs';
import { examples } from '../dist/help/examples.js';
import { exitMeanings } from '../dist/help/manual.js';
import { program } from '../dist/program.js';
import { exit } from '../dist/terminal/exit.js';

const document = new URL('../docs/commands.md', import.meta.url);
const silent = { result: () => undefined, note: () => undefined };

/** What stands where an option is not given, as help says it. */
function usual({ mandatory, defaultValue, defaultValueDescription: said, description }) {
  if (mandatory) return '**needed**';
  const [, inText] = / \(default: (.*)\)$/.exec(description) ?? [];
  if (inText !== undefined) return inText;
  if (said !== undefined) return said;
  return defaultValue === undefined || defaultValue.length === 0 ? '' : String(defaultValue);
}

/** Usage, what is taken, options and examples of one command. */
function command(each) {
  const name = each.name();
  const arguments_ = each.registeredArguments.map((argument) => [
    `\`${argument.name()}\``,
    argument.description,
    argument.required ? '**needed**' : '',
  ]);
  const options = each.options.map((option) => {
    const values = option.argChoices ?? [];
    const choice = values.length === 0 ? '' : `: ${values.map((value) => `\`${value}\``).join(', ')}`;
    return [
      `\`${option.flags}\``,
      `${option.description.replace(/ \(default: .*\)$/, '')}${choice}`,
      usual(option),
    ];
  });
  const shown = examples[name].flatMap(([args, said]) => [`# ${said}`, `leat ${args}`]);
  return [
    `\`leat ${name} ${each.usage()}\`: ${each.description()}.`,
    '',
    table(['argument or option', 'what it is', 'default'], [...arguments_, ...options]),
    '',
    '```sh',
    ...shown,
    '```',
  ].join('\n');
}

/** The text of docs/commands.md. */
export function commandsDocument() {
  const { commands } = program(silent, () => undefined);
  const codes = Object.entries(exitMeanings).map(([key, meaning]) => [exit[key], meaning]);
  return withBlocks(readFileSync(document, 'utf8'), {
    'exit-codes': table(['exit code', 'meaning'], codes),
    ...Object.fromEntries(commands.map((each) => [each.name(), command(each)])),
  });
}
