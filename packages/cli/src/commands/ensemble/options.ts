import { InvalidArgumentError, Option, type Command } from 'commander';
import { unitsOption } from '../shared/display-options.js';
import type { AddCommand } from '../shared/options.js';
import type { EnsembleOptions, Shard } from './command.js';
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

function shard(text: string): Shard {
  const [, i, n] = /^(\d+)\/(\d+)$/.exec(text.trim()) ?? [];
  const [part, of] = [Number(i), Number(n)];
  if (!(part >= 1 && part <= of))
    throw new InvalidArgumentError('Give it as i/n, i from 1 to n, such as 3/8.');
  return { part, of };
}

/** `leat ensemble FILE`. */
export const addEnsemble: AddCommand = (root, streams, leave) => {
  root
    .command('ensemble')
    .description('run many draws of the uncertain numbers: bands of every series, odds of every limit')
    .argument('<file>', 'scenario file (YAML)')
    .addOption(membersOption())
    .addOption(seedOption())
    .addOption(
      new Option('--sampling <method>', 'how members are drawn')
        .choices(['latin-hypercube', 'sobol'])
        .default('latin-hypercube'),
    )
    .option('--correlate <ids>', 'a rank correlation of two numbers: "ID ID 0.6" (repeatable)', another, [])
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
    .option('--tolerance <number>', 'relative tolerance (default: 1e-5)', tolerance)
    .addOption(workersOption())
    .addOption(outOption())
    .addOption(resumeOption())
    .addOption(forceOption())
    .addOption(new Option('--shard <i/n>', 'run only every n-th member, for leat merge').argParser(shard))
    .option('--json', 'print one JSON document instead of the summary')
    .option('--csv <file>', 'write median and bands of every series to a CSV file')
    .action(async (file: string, options: EnsembleOptions, command: Command) => {
      if (options.shard !== undefined && options.out === undefined && options.resume === undefined)
        command.error('error: a shard is kept in a file: --out');
      const { ensembleCommand } = await import('./command.js');
      leave(await ensembleCommand(file, options, streams));
    });
};
