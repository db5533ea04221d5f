import { Option, type Command } from 'commander';
import type { AddCommand } from '../shared/options.js';
import type { PlotOptions } from './command.js';
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

const endings = ['.svg', '.png'];

/** `leat plot FILE --of SERIES... --out FILE`. */
export const addPlot: AddCommand = (root, streams, leave) => {
  root
    .command('plot')
    .description('draw some quantities over time as one picture, for slides')
    .argument('<file>', 'scenario file (YAML), or a document of leat run --json')
    .requiredOption('--of <series...>', 'what to draw, such as nitrate@sump; several may be named')
    .requiredOption('--out <file>', 'where to write it: x.svg or x.png')
    .addOption(forceOption())
    .option('--limits', 'draw in the limits on what is drawn')
    .option('--title <text>', 'title of the picture (default: that of the file)')
    .addOption(
      new Option('--on <ground>', 'light or dark ground').choices(['light', 'dark']).default('light'),
    )
    .addOption(daysOption())
    .addOption(everyOption())
    .addOption(setOption())
    .addOption(languageOption())
    .addOption(unitsOption())
    .addOption(allowPathOption())
    .addOption(tablesOption())
    .addOption(fitOption())
    .addOption(extendOption())
    .action(async (file: string, options: PlotOptions, command: Command) => {
      if (!endings.some((ending) => options.out.toLowerCase().endsWith(ending)))
        command.error(`error: --out ${options.out}: give a name that ends in .svg or .png`);
      const { plotCommand } = await import('./command.js');
      leave(await plotCommand(file, options, streams));
    });
};
