import { Option } from 'commander';
import { unitsOption } from '../shared/display-options.js';
import type { AddCommand } from '../shared/options.js';
import type { SteadyCommandOptions } from './command.js';
import {
  allowPathOption,
  daysOption,
  extendOption,
  fitOption,
  setOption,
  tablesOption,
} from '../shared/options.js';

/** `leat steady FILE`. */
export const addSteady: AddCommand = (root, streams, leave) => {
  root
    .command('steady')
    .description('find the state that a system comes to and keeps, and how long it takes to come back')
    .argument('<file>', 'scenario file (YAML)')
    .option('--on <when>', 'day or date whose weather lasts (default: day 0)')
    .addOption(
      new Option('--crops <how>', 'hold crops at the mean of their cycle, or as they stand at the start')
        .choices(['mean', 'as-at-start'])
        .default('mean'),
    )
    .addOption(
      new Option('--hold <component>', 'hold a component of the water at its start (repeatable)')
        .argParser((text: string, before: readonly string[]) => [...before, text])
        .default([], 'none'),
    )
    .option(
      '--patience <time>',
      'what takes longer than this to settle is held at its start and said',
      '1095 d',
    )
    .option('--detail', 'time constants, and how the state was found')
    .addOption(daysOption())
    .addOption(setOption())
    .addOption(unitsOption())
    .addOption(allowPathOption())
    .addOption(tablesOption())
    .addOption(fitOption())
    .addOption(extendOption())
    .option('--json', 'print one JSON document instead of words')
    .action(async (file: string, options: SteadyCommandOptions) => {
      const { steadyCommand } = await import('./command.js');
      leave(steadyCommand(file, options, streams));
    });
};
