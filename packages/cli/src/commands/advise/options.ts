import { unitsOption } from '../shared/display-options.js';
import { type Command, InvalidArgumentError, Option } from 'commander';
import {
  type AddCommand,
  allowPathOption,
  another,
  daysOption,
  everyOption,
  extendOption,
  fitOption,
  forceOption,
  setOption,
  tablesOption,
  whole,
  workersOption,
} from '../shared/options.js';
import type { AdviseOptions } from './command.js';

/** The same as `changeNames` of the library, which options do not load: help stays quick. */
const changes = [
  ...[
    'gentler',
    'sooner',
    'smaller-dose',
    'feed',
    'stagger',
    'fewer',
    'harvest-fish',
    'leave-empty',
    'salt',
    'base',
  ],
  ...['top-up', 'change-water', 'air', 'media', 'shade', 'heat'],
];

function change(text: string, before: readonly string[]): readonly string[] {
  if (!changes.includes(text)) throw new InvalidArgumentError(`Allowed choices are ${changes.join(', ')}.`);
  return [...before, text];
}

/** `leat advise FILE`. */
export const addAdvise: AddCommand = (root, streams, leave) => {
  root
    .command('advise')
    .description('find the smallest changes with which a run that goes wrong goes well')
    .argument('<file>', 'scenario file (YAML)')
    .option('--from <when>', 'day or date from which something may be changed (default: when trouble began)')
    .addOption(
      new Option('--change <kind>', `try this change only (repeatable): ${changes.join(', ')}`)
        .argParser(change)
        .default([], 'all that fit'),
    )
    .addOption(
      new Option(
        '--keep <condition>',
        'what must hold besides, such as "last nitrate@sump below 40 mg N/L" (repeatable)',
      )
        .argParser(another)
        .default([], 'none'),
    )
    .option('--save <file>', 'write a proposal as a scenario that lies over the file')
    .addOption(
      new Option('--take <number>', 'which proposal is written').argParser(whole(1, 1000)).default(1),
    )
    .addOption(daysOption())
    .addOption(everyOption())
    .addOption(setOption())
    .addOption(unitsOption())
    .addOption(allowPathOption())
    .addOption(tablesOption())
    .addOption(fitOption())
    .addOption(extendOption())
    .addOption(workersOption())
    .addOption(forceOption())
    .option('--json', 'print one JSON document instead of words')
    .action(async (file: string, options: AdviseOptions, command: Command) => {
      if (options.take > 1 && options.save === undefined) command.error('error: --take is for --save');
      const { adviseCommand } = await import('./command.js');
      leave(await adviseCommand(file, options, streams));
    });
};
