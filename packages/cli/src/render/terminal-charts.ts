import { seriesOf, type Run } from '@leat/core';
import { keySeries } from './key-quantities.js';
import { terminalChart } from './terminal-chart.js';

const usual: ReadonlySet<string> = new Set(['tan', 'nitrite', 'nitrate', 'pH']);

/**
 * Courses of some series drawn with letters, one below the other.
 * @param asked names, or true for TAN, nitrite, nitrate and pH where the fish live
 * @throws InputError for a series that there is none of, with the nearest name
 */
export function terminalCharts(run: Run, asked: true | readonly string[]): string {
  const names =
    asked === true ? keySeries(run).filter((name) => usual.has(name.slice(0, name.indexOf('@')))) : asked;
  const time = run.samples.map((sample) => sample.time);
  const charts = names.map((name) => {
    const { unit, values } = seriesOf(run, name);
    return terminalChart(unit === 'pH' ? name : `${name}, ${unit}`, time, values).join('\n');
  });
  return `\n${charts.join('\n\n')}\n`;
}
