import { Option, type Command } from 'commander';
import { unitsOption } from '../shared/display-options.js';
import type { AddCommand } from '../shared/options.js';
import type { WhyCommandOptions } from './command.js';
import {
  allowPathOption,
  daysOption,
  everyOption,
  extendOption,
  fitOption,
  setOption,
  tablesOption,
  whole,
  workersOption,
} from '../shared/options.js';

/** What is wrong with the days of `leat why`, if anything. */
function daysProblem(other: string | undefined, { at, from, to, by }: WhyCommandOptions): string | undefined {
  if (other === undefined && by === 'change') return '--by change compares two files';
  if (other !== undefined)
    return from === undefined && to === undefined ? undefined : 'two files are compared at one day: --at';
  return from !== undefined && at === undefined
    ? undefined
    : 'one file is compared between two of its days: --from and --to';
}

/** `leat why FILE [FILE] --of QUANTITY`. */
export const addWhy: AddCommand = (root, streams, leave) => {
  root
    .command('why')
    .description('say which processes, flows and actions made a quantity differ')
    .argument('<file>', 'scenario file (YAML)')
    .argument('[other]', 'another; without it, two days of the one are compared')
    .requiredOption('--of <quantity>', 'what differs, such as nitrate@sump')
    .option('--at <time>', 'day of both runs, such as 60d (default: the last that both have)')
    .option('--from <time>', 'earlier day of the one run')
    .option('--to <time>', 'later day of the one run (default: its end)')
    .addOption(
      new Option('--around <what>', 'count all water, or also what flows between vessels')
        .choices(['system', 'place'])
        .default('system'),
    )
    .addOption(
      new Option('--by <what>', 'what processes did, or before it what was changed between two files')
        .choices(['process', 'change'])
        .default('process'),
    )
    .option(
      '--most <number>',
      'changes told apart with --by change: each one doubles the runs',
      whole(1, 8),
      5,
    )
    .option('--detail', 'every process by itself, nothing netted')
    .addOption(workersOption())
    .addOption(daysOption())
    .addOption(everyOption())
    .addOption(setOption())
    .addOption(unitsOption())
    .addOption(allowPathOption())
    .addOption(tablesOption())
    .addOption(fitOption())
    .addOption(extendOption())
    .option('--json', 'print one JSON document instead of words')
    .action(async (file: string, other: string | undefined, options: WhyCommandOptions, command: Command) => {
      const problem = daysProblem(other, options);
      if (problem !== undefined) command.error(`error: ${problem}`);
      const { whyCommand } = await import('./command.js');
      leave(await whyCommand(other === undefined ? [file] : [file, other], options, streams));
    });
};
