import { Option } from 'commander';
import type { AddCommand } from '../shared/options.js';
import type { RunOptions } from './command.js';
import { languageOption, unitsOption } from '../shared/display-options.js';
import {
  allowPathOption,
  daysOption,
  everyOption,
  extendOption,
  fitOption,
  forceOption,
  setOption,
  tablesOption,
  tolerance,
} from '../shared/options.js';

/** `leat run FILE`. */
export const addRun: AddCommand = (root, streams, leave) => {
  root
    .command('run')
    .description('simulate a system and say what nitrogen did in it')
    .argument('<file>', 'scenario file (YAML)')
    .addOption(daysOption())
    .addOption(everyOption())
    .addOption(setOption())
    .addOption(languageOption())
    .addOption(unitsOption())
    .addOption(allowPathOption())
    .addOption(tablesOption())
    .addOption(fitOption())
    .addOption(extendOption())
    .addOption(new Option('--integrator <name>', 'how to integrate').choices(['rosenbrock', 'odex']))
    .option('--tolerance <number>', 'relative tolerance (default: 1e-5)', tolerance)
    .option('--json', 'print one JSON document instead of the summary')
    .option('--csv <file>', 'write every series to a CSV file')
    .option('--parquet <file>', 'write every series to an Apache Parquet file')
    .option('--long', 'one value a row, in the files of --csv and --parquet')
    .option('--save <file>', 'write the end state, for another run to start from')
    .addOption(forceOption())
    .option(
      '--plot [series...]',
      'draw quantities over time in the terminal (default: TAN, nitrite, nitrate and pH)',
    )
    .addOption(
      new Option(
        '--sources [form]',
        'print where the numbers that were used come from; as BibTeX, that alone is printed',
      )
        .choices(['text', 'bibtex'])
        .preset('text'),
    )
    .option('--detail', 'also how it was integrated and how well the balances close')
    .option('--quiet', 'print no summary, no progress and no notes')
    .action(async (file: string, options: RunOptions) => {
      const { runCommand } = await import('./command.js');
      leave(await runCommand(file, options, streams));
    });
};
