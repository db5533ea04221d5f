import type { AddCommand } from '../shared/options.js';
import type { LogOptions } from './command.js';
import { allowPathOption, forceOption, setOption, tablesOption } from '../shared/options.js';

/** `leat log FILE`. */
export const addLog: AddCommand = (root, streams, leave) => {
  root
    .command('log')
    .description('read a log of water tests, by a map that says what its columns hold')
    .argument('<file>', 'log (CSV, or a spreadsheet .xlsx)')
    .option('--map <file>', 'map of the columns (YAML); without it one is guessed and shown')
    .option('--sheet <name>', 'sheet of a spreadsheet; default: that of the map, or the first')
    .option('--all', 'list every odd value, not only the first of each kind')
    .option('--write-map <file>', 'write the guessed map to a file, to look over and keep')
    .addOption(forceOption())
    .option('--system <file>', 'scenario that the log is of: names its vessels, and is held against the log')
    .addOption(setOption())
    .addOption(allowPathOption())
    .addOption(tablesOption())
    .option('--json', 'print one JSON document: every reading, feed, note and oddity')
    .action(async (file: string, options: LogOptions) => {
      const { logCommand } = await import('./command.js');
      leave(await logCommand(file, options, streams));
    });
};
