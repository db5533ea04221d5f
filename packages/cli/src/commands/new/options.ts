import type { AddCommand } from '../shared/options.js';
import { forceOption } from '../shared/options.js';
import type { NewOptions } from './command.js';

/** `leat new NAME`. */
export const addNew: AddCommand = (root, streams, leave) => {
  root
    .command('new')
    .description('copy a worked what-if, and what it includes, to start from')
    .argument('[name]', 'one of the names that --list prints')
    .option('--list', 'print the names and the question each one asks')
    .option('--out <file>', 'where to write it (default: its name, in the current folder)')
    .addOption(forceOption())
    .action(async (name: string | undefined, options: NewOptions) => {
      const { newCommand } = await import('./command.js');
      leave(newCommand(name, options, streams));
    });
};
