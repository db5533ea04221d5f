import { Option } from 'commander';
import { another } from './options.js';

/** `--language LANGUAGE`. */
export const languageOption = (): Option =>
  new Option(
    '--language <language>',
    'language of what is told (default: that of the file, else en)',
  ).choices(['en', 'es']);

/** `--units LIST`, repeatable. */
export const unitsOption = (): Option =>
  new Option(
    '--units <list>',
    'units to show: metric, us, "mg/L as NO3", dKH ... (repeatable; default: those of the file)',
  )
    .argParser(another)
    .default([], 'metric');
