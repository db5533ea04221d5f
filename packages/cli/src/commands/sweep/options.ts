import type { Command } from 'commander';
import { unitsOption } from '../shared/display-options.js';
import type { AddCommand } from '../shared/options.js';
import type { SweepOptions } from './command.js';
import {
  allowPathOption,
  another,
  daysOption,
  everyOption,
  extendOption,
  fitOption,
  forceOption,
  setOption,
  tablesOption,
  workersOption,
} from '../shared/options.js';

/** `leat sweep FILE --vary PATH=A:B:n --of MEASURE`. */
export const addSweep: AddCommand = (root, streams, leave) => {
  root
    .command('sweep')
    .description('run a range of values: a table of outcomes, and over two quantities a map')
    .argument('<file>', 'scenario file (YAML)')
    .requiredOption(
      '--vary <path=A:B:n>',
      'n values from A to B, such as "vessels.filter.volume=50 L:400 L:8" (once or twice)',
      (text: string, before: readonly string[] | undefined) => another(text, before ?? []),
    )
    .option('--of <measure>', 'a number of each run, such as "highest tan@tank-1" (repeatable)', another, [])
    .option('--keep <condition>', 'what a run must do, such as "keeps limits" (repeatable)', another, [])
    .addOption(daysOption())
    .addOption(everyOption())
    .addOption(setOption())
    .addOption(unitsOption())
    .addOption(allowPathOption())
    .addOption(tablesOption())
    .addOption(fitOption())
    .addOption(extendOption())
    .addOption(workersOption())
    .option('--csv <file>', 'write every point to a CSV file')
    .option('--svg <file>', 'draw a line over one quantity, a map over two')
    .addOption(forceOption())
    .option('--json', 'print one JSON document instead of words')
    .action(async (file: string, options: SweepOptions, command: Command) => {
      if (options.vary.length > 2) command.error('error: at most two quantities are varied');
      if (options.of.length + options.keep.length === 0)
        command.error('error: nothing is asked of the runs: --of or --keep');
      const { sweepCommand } = await import('./command.js');
      leave(await sweepCommand(file, options, streams));
    });
};
