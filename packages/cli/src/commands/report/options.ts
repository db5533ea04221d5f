import type { Command } from 'commander';
import type { AddCommand } from '../shared/options.js';
import type { ReportOptions } from './command.js';
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
} from '../shared/options.js';

/** Most runs that fit side by side on a page. */
const mostRuns = 6;

/** `leat report FILE...`. */
export const addReport: AddCommand = (root, streams, leave) => {
  root
    .command('report')
    .description('write an HTML report with pictures, of one system or several side by side')
    .argument('<files...>', 'scenario files (YAML), or documents of leat run --json')
    .option(
      '--ensemble <files...>',
      'bands: documents of leat ensemble --json (or files of its --out) of these systems',
    )
    .option('--out <file>', 'where to write it', 'report.html')
    .addOption(forceOption())
    .addOption(daysOption())
    .addOption(everyOption())
    .addOption(setOption())
    .addOption(languageOption())
    .addOption(unitsOption())
    .addOption(allowPathOption())
    .addOption(tablesOption())
    .addOption(fitOption())
    .addOption(extendOption())
    .action(async (files: string[], options: ReportOptions, command: Command) => {
      if (files.length > mostRuns)
        command.error(`error: at most ${mostRuns} runs fit side by side in a report`);
      const { reportCommand } = await import('./command.js');
      leave(await reportCommand(files, options, streams));
    });
};
