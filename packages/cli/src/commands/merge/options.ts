import type { AddCommand } from '../shared/options.js';
import { unitsOption } from '../shared/display-options.js';
import { forceOption } from '../shared/options.js';
import type { MergeOptions } from './command.js';

/** `leat merge FILES`. */
export const addMerge: AddCommand = (root, streams, leave) => {
  root
    .command('merge')
    .description('join the shards of an ensemble that ran in parts, on one machine or many')
    .argument('<files...>', 'files of leat ensemble --shard i/n --out FILE')
    .option('--out <file>', 'keep the whole in a file')
    .option('--json', 'print one JSON document instead of the summary')
    .option('--csv <file>', 'write median and bands of every series to a CSV file')
    .addOption(unitsOption())
    .addOption(forceOption())
    .action(async (files: string[], options: MergeOptions) => {
      const { mergeCommand } = await import('./command.js');
      leave(mergeCommand(files, options, streams));
    });
};
