import type { AddCommand } from '../shared/options.js';
import type { CheckOptions } from './command.js';
import { allowPathOption, extendOption, fitOption, setOption, tablesOption } from '../shared/options.js';

/** `leat check FILE`. */
export const addCheck: AddCommand = (root, streams, leave) => {
  root
    .command('check')
    .description('validate a system and look its design over, without simulating')
    .argument('<file>', 'scenario file (YAML)')
    .addOption(setOption())
    .addOption(allowPathOption())
    .addOption(tablesOption())
    .addOption(fitOption())
    .addOption(extendOption())
    .option('--table', 'print the stoichiometric table')
    .option('--resolved', 'print the file as it is understood, with all it includes')
    .action(async (file: string, options: CheckOptions) => {
      const { checkCommand } = await import('./command.js');
      leave(checkCommand(file, options, streams));
    });
};
