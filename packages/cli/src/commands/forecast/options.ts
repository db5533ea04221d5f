import type { AddCommand } from '../shared/options.js';
import type { ForecastOptions } from './command.js';
import {
  allowPathOption,
  extendOption,
  isoDate,
  setOption,
  tablesOption,
  unloggedFeedOption,
  whole,
} from '../shared/options.js';

/** `leat forecast FILE`. */
export const addForecast: AddCommand = (root, streams, leave) => {
  root
    .command('forecast')
    .description('say what a fitted system will do in the days after its log, with bands')
    .argument('<file>', 'scenario file (YAML)')
    .requiredOption('--log <file>', 'log (CSV, or a spreadsheet .xlsx)')
    .requiredOption('--map <file>', 'map of its columns (YAML)')
    .requiredOption('--fit <file>', 'fit to that log, as `leat fit --out` writes it')
    .option('--days <number>', 'days ahead', whole(1, 365), 28)
    .option('--members <number>', 'draws of the fitted numbers', whole(2, 2000), 50)
    .option('--seed <number>', 'seed of the draws', whole(0, 2 ** 31), 1)
    .option('--until <date>', 'last date of the log that counts', isoDate)
    .addOption(unloggedFeedOption())
    .option('--overlay <file>', 'what-if laid over the system from tomorrow on (YAML)')
    .addOption(setOption())
    .addOption(allowPathOption())
    .addOption(tablesOption())
    .addOption(extendOption())
    .option('--json', 'print the forecast as one JSON document')
    .action(async (file: string, options: ForecastOptions) => {
      const { forecastCommand } = await import('./command.js');
      leave(await forecastCommand(file, options, streams));
    });
};
