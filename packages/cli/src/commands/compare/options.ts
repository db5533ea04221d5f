import type { Command } from 'commander';
import type { AddCommand } from '../shared/options.js';
import type { CompareOptions } from './command.js';
import { languageOption, unitsOption } from '../shared/display-options.js';
import {
  allowPathOption,
  daysOption,
  everyOption,
  extendOption,
  fitOption,
  percentage,
  setOption,
  tablesOption,
} from '../shared/options.js';

/** Most runs that have a letter. */
const mostRuns = 26;

/** `leat compare FILE FILE...`. */
export const addCompare: AddCommand = (root, streams, leave) => {
  root
    .command('compare')
    .description('simulate several systems and put them side by side')
    .argument('<file>', 'scenario file (YAML), or a document of leat run --json')
    .argument('<others...>', 'one or more to compare with it')
    .addOption(daysOption())
    .addOption(everyOption())
    .addOption(setOption())
    .addOption(languageOption())
    .addOption(unitsOption())
    .addOption(allowPathOption())
    .addOption(tablesOption())
    .addOption(fitOption())
    .addOption(extendOption())
    .option('--apart <percent>', 'difference that counts, of the highest of a quantity', percentage, 1)
    .option('--json', 'print one JSON document instead of tables')
    .action(async (file: string, others: string[], options: CompareOptions, command: Command) => {
      const files = [file, ...others];
      if (files.length > mostRuns) command.error(`error: at most ${mostRuns} runs are compared at a time`);
      const { compareCommand } = await import('./command.js');
      leave(await compareCommand(files, options, streams));
    });
};
