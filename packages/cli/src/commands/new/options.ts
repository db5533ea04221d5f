import type { AddCommand } from '../shared/options.js';
import { forceOption } from '../shared/options.js';
import type { NewOptions } from './command.js';

/** `leat new NAME`, `leat new --ask`. */
export const addNew: AddCommand = (root, streams, leave) => {
  root
    .command('new')
    .description('begin a system: by about ten questions, or from a worked what-if')
    .argument('[name]', 'one of the names that --list prints; in a terminal without one, --ask')
    .option('--list', 'print the names and the question each one asks')
    .option('--ask [file]', 'ask about ten questions and write a system from the answers (to system.yaml)')
    .option('--out <file>', 'where to write it (default: its name, in the current folder)')
    .addOption(forceOption())
    .action(async (name: string | undefined, options: NewOptions) => {
      const { newCommand } = await import('./command.js');
      leave(await newCommand(name, options, streams));
    });
};
