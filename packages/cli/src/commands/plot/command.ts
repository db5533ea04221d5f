import { InputError, noSeriesNamed, worstResidual, type Fault, type RunAccount } from '@leat/core';
import { darkColours, lightColours, slide, type SlideSeries } from '@leat/view/pictures';
import type { ExitCode } from '../../terminal/exit.js';
import type { ScenarioOptions } from '../shared/referenced-files.js';
import { displayFor, type DisplayOptions } from '../shared/display.js';
import { openGathering } from '../shared/gather.js';
import type { Streams } from '../../terminal/streams.js';
import { newDocument } from '../../files/new-document.js';
import { openOutputs } from '../../files/outputs.js';
import { endingOf } from '../shared/simulated.js';
import { linesText } from '../../terminal/columns.js';

/** What `leat plot` was asked. */
export interface PlotOptions extends ScenarioOptions, DisplayOptions {
  readonly of: readonly string[];
  readonly out: string;
  readonly force?: boolean;
  readonly limits?: boolean;
  readonly title?: string;
  readonly on: 'light' | 'dark';
}

/** The series asked for; throws InputError with a fault for each that there is none of. */
function chosen({ series }: RunAccount, names: readonly string[]): readonly SlideSeries[] {
  const known = series.map(({ name }) => name);
  const faults = names
    .filter((name) => !known.includes(name))
    .map((name): Fault => ({ file: '--of', ...noSeriesNamed(name, known) }));
  if (faults.length > 0) throw new InputError(faults);
  return [...new Set(names)].flatMap((name) => {
    const found = series.find((each) => each.name === name);
    return found === undefined ? [] : [{ name, unit: found.unit, values: Array.from(found.values) }];
  });
}

/**
 * `leat plot FILE --of SERIES...`: simulates, or takes the document of `leat run --json` as it is, and writes one
 * picture. Throws InputError for series that do not exist.
 */
export async function plotCommand(file: string, options: PlotOptions, streams: Streams): Promise<ExitCode> {
  const gathering = openGathering(file, 'A', options, streams);
  const isPng = options.out.toLowerCase().endsWith('.png');
  const { out } = openOutputs<'out'>(options, { out: isPng ? 'png' : 'svg' }, options);
  const display = displayFor(options, gathering.wants);
  const run = await gathering.summary(display);
  const { account, budgets } = run;
  const asked = {
    title: options.title ?? account.title,
    time: account.time,
    series: chosen(account, options.of),
    limits: options.limits === true ? account.limits : [],
    startDate: account.startDate,
    colours: options.on === 'dark' ? darkColours : lightColours,
  };
  const picture = slide(newDocument(), asked, display);
  if (isPng) {
    const { pngOf } = await import('../../files/png.js');
    out?.write(await pngOf(picture));
  } else out?.write(picture);
  streams.note(linesText([`${options.out} written`]));
  const { code, text } = endingOf(account, worstResidual(budgets).budget);
  if (text !== '') streams.note(linesText([text]));
  return code;
}
