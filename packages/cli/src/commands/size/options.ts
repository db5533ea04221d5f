import { InvalidArgumentError, type Command } from 'commander';
import { unitsOption } from '../shared/display-options.js';
import type { AddCommand } from '../shared/options.js';
import type { SizeCommandOptions } from './command.js';
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
  workersOption,
} from '../shared/options.js';

/** A share of a value, such as `1%`. */
function within(text: string): number {
  const match = /^(\d+\.?\d*|\.\d+)\s*%$/.exec(text.trim());
  const share = match === null ? Number.NaN : Number(match[1]) / 100;
  if (!(share >= 1e-6 && share <= 0.5))
    throw new InvalidArgumentError('Write it as a percentage up to 50, such as 1%.');
  return share;
}

/** `leat size FILE --vary PATH --from A --to B --keep CONDITION`. */
export const addSize: AddCommand = (root, streams, leave) => {
  root
    .command('size')
    .description('find the smallest or largest size at which every condition holds over the whole run')
    .argument('<file>', 'scenario file (YAML)')
    .requiredOption(
      '--vary <path>',
      'what is sized, by its path as --set takes it; several, or one with *, by one factor (repeatable)',
      (text: string, before: readonly string[] | undefined) => another(text, before ?? []),
    )
    .requiredOption('--from <value>', 'smallest value, with its unit, such as "50 L"')
    .requiredOption('--to <value>', 'largest value')
    .requiredOption(
      '--keep <condition>',
      'what must hold, such as "highest tan@tank below 1 mg N/L" (repeatable)',
      (text: string, before: readonly string[] | undefined) => another(text, before ?? []),
    )
    .option('--largest', 'the largest value instead of the smallest')
    .option('--within <percentage>', 'how near to a value that fails (default: 1%)', within)
    .addOption(daysOption())
    .addOption(everyOption())
    .addOption(setOption())
    .addOption(unitsOption())
    .addOption(allowPathOption())
    .addOption(tablesOption())
    .addOption(fitOption())
    .addOption(extendOption())
    .addOption(membersOption().default(undefined))
    .addOption(seedOption())
    .option('--chosen <value>', 'a size whose fate in each draw is asked (default: the answer)')
    .addOption(workersOption())
    .addOption(outOption())
    .addOption(resumeOption())
    .addOption(forceOption())
    .option('--json', 'print one JSON document instead of words')
    .action(async (file: string, options: SizeCommandOptions, command: Command) => {
      if (options.chosen !== undefined && options.members === undefined)
        command.error('error: --chosen is asked of draws: --members');
      for (const option of ['out', 'resume'] as const)
        if (options[option] !== undefined && options.members === undefined)
          command.error(`error: --${option} is for draws: --members`);
      const { sizeCommand } = await import('./command.js');
      leave(await sizeCommand(file, options, streams));
    });
};
