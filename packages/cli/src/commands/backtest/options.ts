import type { AddCommand } from '../shared/options.js';
import type { BacktestOptions } from './command.js';
import {
  allowPathOption,
  extendOption,
  freeOption,
  isoDate,
  setOption,
  tablesOption,
  unloggedFeedOption,
  whole,
} from '../shared/options.js';

/** `leat backtest FILE`. */
export const addBacktest: AddCommand = (root, streams, leave) => {
  root
    .command('backtest')
    .description(
      'fit to the past of a log, forecast 7, 14 and 28 days, step on: what would it have been worth?',
    )
    .argument('<file>', 'scenario file (YAML)')
    .requiredOption('--log <file>', 'log (CSV, or a spreadsheet .xlsx)')
    .requiredOption('--map <file>', 'map of its columns (YAML)')
    .addOption(freeOption())
    .option('--step <number>', 'days from one forecast to the next', whole(1, 365), 14)
    .option('--warm-up <number>', 'days of log before the first forecast', whole(7, 3650), 42)
    .option(
      '--fits <number>',
      'most fits that are made: between two of them the earlier stands',
      whole(1, 500),
      8,
    )
    .option('--until <date>', 'last date of the log that counts', isoDate)
    .addOption(unloggedFeedOption())
    .addOption(setOption())
    .addOption(allowPathOption())
    .addOption(tablesOption())
    .addOption(extendOption())
    .option('--json', 'print one JSON document')
    .action(async (file: string, options: BacktestOptions) => {
      const { backtestCommand } = await import('./command.js');
      leave(await backtestCommand(file, options, streams));
    });
};
