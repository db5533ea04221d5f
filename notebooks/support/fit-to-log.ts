import { fit, readScenarioFully, type Fit, type WaterLog } from '@leat/core';
import { figure } from './figure.js';
import { html } from './html.js';

/**
 * Fits a system file to a log by the library's own search, from the middle of the ranges and from one further start.
 * @param free what may vary, such as `start.biofilm=0.1..5 %`
 * @throws InputError where the log holds nothing of this system
 */
export function fitToLog(text: string, log: WaterLog, free: readonly string[]): Fit {
  return fit({
    system: {
      read: (set, days) =>
        readScenarioFully(text, { file: 'lesson.yaml', set, ...(days !== undefined && { days }) }),
    },
    ...{ log, free, furtherStarts: 1 },
  });
}

const verdicts = {
  stays: 'next to nothing',
  narrowed: 'it lies in this band',
  moved: 'it is not the middle of the range',
} as const;

/** The numbers of a fit with their bands, as a table; `name` tells its figures from those of another. */
export function fitTable(
  name: string,
  { numbers }: Fit,
  words: Readonly<Record<string, string>>,
): HTMLElement {
  return html`<div class="wide" tabindex="0" role="region" aria-label=${`Fitted: ${name}`}>
    <table>
      <thead>
        <tr>
          <th>fitted</th>
          <th>best</th>
          <th>nine of ten</th>
          <th>the log says</th>
        </tr>
      </thead>
      <tbody>
        ${numbers.map(
          ({ name: number, unit, value, low, high, verdict }, i) =>
            html`<tr>
              <td>${words[number] ?? number}</td>
              <td>${figure(`${name}-${i}`, value, 2)} ${unit.replace('degC', '°C')}</td>
              <td>${figure(`${name}-${i}-low`, low, 2)} to ${figure(`${name}-${i}-high`, high, 2)}</td>
              <td>${verdicts[verdict]}</td>
            </tr>`,
        )}
      </tbody>
    </table>
  </div>`;
}
