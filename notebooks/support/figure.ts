import { html } from './html.js';
import type { Run } from '@leat/core';
import { numberOf, type Statistic } from './number-of.js';

/** A number that was worked out, with a name by which the check of the lessons finds it. */
export function figure(name: string, value: number, decimals: number): HTMLElement {
  return html`<output data-figure=${name} data-decimals=${decimals}>${value.toFixed(decimals)}</output>`;
}

/**
 * A number of a run. It carries what it is a number of, so that the check can run the same file in Node and compare.
 * @param file name under which the lesson shows the file of this run (`systemFile`)
 */
export function runFigure(
  file: string,
  run: Run,
  statistic: Statistic,
  series: string,
  decimals: number,
): HTMLElement {
  const value = numberOf(run, statistic, series).toFixed(decimals);
  return html`<output
    data-file=${file}
    data-statistic=${statistic}
    data-series=${series}
    data-decimals=${decimals}
    >${value}</output
  >`;
}
