import { Option } from 'commander';
import { unitsOption } from '../shared/display-options.js';
import type { AddCommand } from '../shared/options.js';
import type { SensitivityOptions } from './command.js';
import {
  allowPathOption,
  another,
  daysOption,
  everyOption,
  extendOption,
  fitOption,
  forceOption,
  membersOption,
  outOption,
  resumeOption,
  seedOption,
  setOption,
  tablesOption,
  tolerance,
  workersOption,
} from '../shared/options.js';

/** `leat sensitivity FILE --of MEASURE`. */
export const addSensitivity: AddCommand = (root, streams, leave) => {
  root
    .command('sensitivity')
    .description('say which of the uncertain numbers an outcome depends on')
    .argument('<file>', 'scenario file (YAML)')
    .requiredOption('--of <measure>', 'the outcome, such as "highest tan@tank-1 averaged 1 d"')
    .addOption(
      new Option(
        '--method <method>',
        'screened: Morris over all, then Sobol over the few that matter; or one of them, or all',
      )
        .choices(['screened', 'local', 'morris', 'sobol', 'all'])
        .default('screened'),
    )
    .addOption(
      new Option(
        '--over <what>',
        'numbers of the tables, or those of your own file and how far off they may be',
      )
        .choices(['tables', 'mine'])
        .default('tables'),
    )
    .option(
      '--error <path=percent>',
      'with --over mine: how far off your numbers may be, such as "fish.*.ration=5 %" (repeatable)',
      another,
      [],
    )
    .addOption(
      membersOption(64, 'base points of the Sobol indices; a tenth of them, at least 4, are trajectories'),
    )
    .addOption(seedOption())
    .option('--only <pattern>', 'look only at numbers with such an id; * stands for anything')
    .addOption(daysOption())
    .addOption(everyOption())
    .addOption(setOption())
    .addOption(unitsOption())
    .addOption(allowPathOption())
    .addOption(tablesOption())
    .addOption(fitOption())
    .addOption(extendOption())
    .option('--tolerance <number>', 'relative tolerance (default: 1e-5)', tolerance)
    .addOption(workersOption())
    .addOption(outOption())
    .addOption(resumeOption())
    .addOption(forceOption())
    .option('--json', 'print one JSON document instead of the summary')
    .action(
      async (
        file: string,
        options: SensitivityOptions & { readonly over: string; readonly error: readonly string[] },
      ) => {
        if (options.over === 'mine') {
          const { ownSensitivity } = await import('./own.js');
          leave(await ownSensitivity(file, options, streams));
          return;
        }
        const { sensitivityCommand } = await import('./command.js');
        leave(await sensitivityCommand(file, options, streams));
      },
    );
};
