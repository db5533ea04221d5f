import { Argument } from 'commander';
import type { AddCommand } from '../shared/options.js';

/** `leat completion SHELL`. */
export const addCompletion: AddCommand = (root, streams) => {
  root
    .command('completion')
    .description('print what lets a shell complete commands, options and their values')
    .addArgument(new Argument('<shell>', 'which shell').choices(['bash', 'zsh', 'fish']))
    .action(async (shell: 'bash' | 'zsh' | 'fish') => {
      const { completionText } = await import('./scripts.js');
      streams.result(completionText(root, shell));
    });
};
