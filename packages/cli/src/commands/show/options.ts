import type { AddCommand } from '../shared/options.js';
import type { ShowOptions } from './command.js';
import { allowPathOption, fitOption, setOption, tablesOption } from '../shared/options.js';

/** `leat show [WHAT]`. */
export const addShow: AddCommand = (root, streams, leave) => {
  root
    .command('show')
    .description('a number of the library with its range, source and use, or a list of numbers')
    .argument(
      '[what]',
      'an id, the beginning of ids, a species, crop ..., a table (fish, crops, limits ...), sources, or a source',
    )
    .option('--in <file>', 'as it stands in this scenario, with what that gives anew')
    .addOption(setOption())
    .addOption(allowPathOption())
    .addOption(tablesOption())
    .addOption(fitOption())
    .option('--json', 'print one JSON document instead of words')
    .action(async (what: string | undefined, options: ShowOptions) => {
      const { showCommand } = await import('./command.js');
      leave(showCommand(what, options, streams));
    });
};
