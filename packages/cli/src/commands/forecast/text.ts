import type { Forecast, ForecastCourse } from '@leat/core';
import { shown } from '@leat/view/text';
import { columns } from '../../terminal/columns.js';
import { modelShare } from '../shared/model-share.js';

/** What was laid over a system from the first day of a forecast on, as it was asked for. */
interface AskedWhatIf {
  readonly set: readonly string[];
  readonly overlay: string | null;
}

function whatIfLine({ set, overlay }: AskedWhatIf, from: string): string {
  const parts = [...(overlay === null ? [] : [overlay]), ...set];
  return `  what if, from ${from} on: ${parts.join('; ')}`;
}

/**
 * What a quantity is foretold by, as its weights a week or two ahead have it. The level of the readings is where every way
 * begins; what differs is how much of the model's change is added.
 */
function toldLine({ reads, vessel, told }: ForecastCourse): readonly string[] {
  const middle = told.find(({ horizon }) => horizon === 14);
  if (middle === undefined) return [];
  const share = modelShare(middle.weights);
  const by = share > 2 / 3 ? 'by the model' : share < 1 / 3 ? 'by habit' : 'by the model and by habit';
  const count = told.reduce((sum, { rehearsed }) => sum + rehearsed, 0);
  const basis =
    count === 0
      ? 'by how your readings went; no forecast of the past was weighed'
      : `by how your readings went, and ${count} forecasts of the past`;
  return [
    `  your ${reads} in ${vessel} is foretold ${by}: ${Math.round(100 * share)} % of the change that the model has is taken over (${basis})`,
  ];
}

/** A forecast in words: each quantity on a few days, with what is there and what a kit may show. */
export function forecastLines(
  { courses, dates, members, failed, notes, from }: Forecast,
  whatIf: AskedWhatIf | undefined,
): readonly string[] {
  const last = dates.length - 1;
  const days = [...new Set([0, 7, 14, 21, 28, last].filter((day) => day <= last))].sort((a, b) => a - b);
  const rows = courses.flatMap(({ reads, vessel, unit, truth, reading }) =>
    days.map((day, i) => [
      i === 0 ? reads : '',
      i === 0 ? vessel : '',
      i === 0 ? unit : '',
      dates[day],
      shown(truth[day][2]),
      `${shown(truth[day][0])} to ${shown(truth[day][4])}`,
      `${shown(reading[day][0])} to ${shown(reading[day][4])}`,
    ]),
  );
  return [
    `forecast from ${from}, ${members} draws of the fitted numbers${failed === 0 ? '' : `; ${failed} more broke off and are not in the bands`}`,
    ...(whatIf === undefined ? [] : [whatIfLine(whatIf, from)]),
    ...notes.map((note) => `  ${note}`),
    '',
    ...columns(
      [
        ['', 'where', 'unit', 'morning of', 'middle', '90 % of what is there', '90 % of what a kit shows'],
        ...rows,
      ],
      ['left', 'left', 'left', 'left', 'right', 'left', 'left'],
    ),
    ...courses.flatMap(toldLine),
    '  where the log has readings, bands are as wide as forecasts of its past erred; elsewhere they hold what is not known of the fitted numbers, not what the model leaves out',
  ];
}
