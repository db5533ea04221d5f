import type { Command } from 'commander';
import { unitsOption } from '../shared/display-options.js';
import { Option } from 'commander';
import {
  type AddCommand,
  allowPathOption,
  another,
  daysOption,
  everyOption,
  extendOption,
  fitOption,
  forceOption,
  membersOption,
  seedOption,
  setOption,
  tablesOption,
  workersOption,
} from '../shared/options.js';
import type { PlanOptions } from './command.js';

/** Most quantities that are planned at once. */
const most = 4;

/** Draws of a plan where nobody says: a few, to show how far it may be out. */
const fewDraws = 8;

/** `leat plan FILE`. */
export const addPlan: AddCommand = (root, streams, leave) => {
  root
    .command('plan')
    .description(
      'find how much may be planted and how many fish kept, and what to sow, feed and dose by week',
    )
    .argument('<file>', 'scenario file (YAML)')
    .option(
      '--aim <what>',
      'most or least of harvest, fish, water, feed, income or a measure',
      'most harvest',
    )
    .addOption(
      new Option(
        '--vary <name=from:to>',
        'what is planned: beds, fish or a path, such as "beds=2 m2:12 m2" (repeatable, up to four)',
      )
        .argParser(another)
        .default([], 'beds up to those of the file, fish up to twice those'),
    )
    .option(
      '--ration <flow>',
      'water that there is besides rain, such as "160 L/d" (default: as in the file)',
    )
    .addOption(
      new Option(
        '--keep <condition>',
        'what must hold besides, such as "highest nitrate@sump below 40 mg N/L" (repeatable)',
      )
        .argParser(another)
        .default([], 'none'),
    )
    .addOption(membersOption(fewDraws, 'how many draws of the uncertain numbers the plan is run with'))
    .addOption(seedOption())
    .option('--save <file>', 'write the plan as a scenario that lies over the file')
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
    .action(async (file: string, options: PlanOptions, command: Command) => {
      if (options.vary.length > most) command.error(`error: at most ${most} quantities are planned at once`);
      const { planCommand } = await import('./command.js');
      leave(await planCommand(file, options, streams));
    });
};
