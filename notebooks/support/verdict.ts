import { verdictOf, type Run } from '@leat/core';
import { verdictLines } from '@leat/view/text';
import { html } from './html.js';

/** What a run comes to, in the lines that `leat run` begins with: fish, filter, water and crops, the worst first. */
export function verdict(run: Run): HTMLElement {
  const lines = verdictLines(verdictOf(run), run.model.scenario.startDate);
  return html`<ul class="verdict">
    ${lines.map((line) => html`<li>${line}</li>`)}
  </ul>`;
}
