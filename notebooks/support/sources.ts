import { bibliography, type Run } from '@leat/core';
import { html } from './html.js';

const marks: Readonly<Record<string, string>> = {
  R: 'read in the source',
  S: 'quoted second-hand',
  C: 'computed',
  M: 'from memory',
  W: 'from memory, weak',
  P: 'common practice',
};

/**
 * Where the numbers of a lesson are from: the bibliography of those that a run read.
 * @param about beginnings of the ids that this lesson is about, such as `aob.`; the others are folded
 */
export function sources(run: Run, about: readonly string[]): HTMLElement {
  const { parameters } = run.model;
  const entries = bibliography(parameters.used(), parameters);
  const mine = entries
    .map((entry) => ({
      ...entry,
      ids: entry.ids.filter((id) => about.some((start) => id.startsWith(start))),
    }))
    .filter(({ ids }) => ids.length > 0);
  const item = ({ citation, mark, ids }: (typeof entries)[number]): HTMLElement =>
    html`<li>
      ${citation} <span class="mark" title=${marks[mark] ?? mark}>[${mark}]</span>
      <span class="ids"
        >${ids.slice(0, 6).join(', ')}${ids.length > 6 ? ` and ${ids.length - 6} more` : ''}</span
      >
    </li>`;
  return html`<div class="sources">
    <ul>
      ${mine.map(item)}
    </ul>
    <details>
      <summary>Every source of this run (${entries.length})</summary>
      <ul>
        ${entries.map(item)}
      </ul>
    </details>
    <p class="small">
      Marks: R read in the source, S quoted second-hand, C computed, M from memory, W weak memory, P common
      practice.
    </p>
  </div>`;
}
