import { Option, type Command } from 'commander';
import type { AddCommand } from '../shared/options.js';
import type { WhyCommandOptions } from './command.js';
import {
  allowPathOption,
  daysOption,
  everyOption,
  fitOption,
  setOption,
  tablesOption,
} from '../shared/options.js';

/** What is wrong with the days of `leat why`, if anything. */
function daysProblem(other: string | undefined, { at, from, to }: WhyCommandOptions): string | undefined {
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
    .addOption(daysOption())
    .addOption(everyOption())
    .addOption(setOption())
    .addOption(allowPathOption())
    .addOption(tablesOption())
    .addOption(fitOption())
    .option('--json', 'print one JSON document instead of words')
    .action(async (file: string, other: string | undefined, options: WhyCommandOptions, command: Command) => {
      const problem = daysProblem(other, options);
      if (problem !== undefined) command.error(`error: ${problem}`);
      const { whyCommand } = await import('./command.js');
      leave(await whyCommand(other === undefined ? [file] : [file, other], options, streams));
    });
};
