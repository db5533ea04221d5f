import { InputError, type ScenarioReading } from '@leat/core';
import { type Language, metric, readUnitChoice, type UnitChoice } from '@leat/core/units';
import { displayOf, type Display } from '@leat/view/text';

/** How what a command says is told, as its options ask for it. */
export interface DisplayOptions {
  readonly language?: Language;
  /** Lists of units with commas between them. */
  readonly units?: readonly string[];
}

/** Units as `--units` gives them; undefined where it is not given. Throws InputError with every word that is none. */
function unitsAsked({ units = [] }: DisplayOptions): UnitChoice | undefined {
  const words = units.flatMap((list) => list.split(','));
  if (words.length === 0) return undefined;
  const { choice, faults } = readUnitChoice(words);
  if (faults.length > 0) throw new InputError(faults.map((fault) => ({ file: '--units', ...fault })));
  return choice;
}

/**
 * What tells the answer of a command: by its options, else as the first file says that says it, else English and the
 * units of the results. Throws InputError with every fault of `--units`.
 * @param files what the files themselves want
 */
export function displayFor(
  options: DisplayOptions,
  ...files: readonly ScenarioReading['display'][]
): Display {
  const asked = unitsAsked(options);
  const language = options.language ?? files.find((file) => file?.language !== undefined)?.language;
  const units = asked ?? files.find((file) => file?.units !== undefined)?.units;
  return displayOf({ language: language ?? 'en', units: units ?? metric });
}

/** What tells the answer of a command that has words in English alone: by its units, else by those of its file. Throws as displayFor. */
export function displayInUnits(
  { units }: Pick<DisplayOptions, 'units'>,
  ...files: readonly ScenarioReading['display'][]
): Display {
  return displayFor({ language: 'en', ...(units !== undefined && { units }) }, ...files);
}
