import type { AddCommand } from '../shared/options.js';
import type { FitOptions } from './command.js';
import {
  allowPathOption,
  extendOption,
  forceOption,
  freeOption,
  isoDate,
  setOption,
  tablesOption,
  unloggedFeedOption,
  whole,
} from '../shared/options.js';

/** `leat fit FILE`. */
export const addFit: AddCommand = (root, streams, leave) => {
  root
    .command('fit')
    .description('fit a system to a log of its water tests, and say what the log tells')
    .argument('<file>', 'scenario file (YAML) whose start-date is the first day of the run')
    .requiredOption('--log <file>', 'log (CSV, or a spreadsheet .xlsx)')
    .requiredOption('--map <file>', 'map of its columns (YAML), as `leat log` writes one')
    .addOption(freeOption())
    .option('--until <date>', 'last date of the log that counts', isoDate)
    .addOption(unloggedFeedOption())
    .option('--starts <number>', 'from how many places the search begins', whole(1, 50), 2)
    .addOption(setOption())
    .addOption(allowPathOption())
    .addOption(tablesOption())
    .addOption(extendOption())
    .option('--out <file>', 'write the fit to a file that commands take with --fit')
    .addOption(forceOption())
    .option('--json', 'print the fit as one JSON document')
    .action(async (file: string, options: FitOptions) => {
      const { fitCommand } = await import('./command.js');
      leave(await fitCommand(file, options, streams));
    });
};
