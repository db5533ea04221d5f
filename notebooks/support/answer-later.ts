import { html } from './html.js';

/** A folded answer that is worked out when it is first opened: for those that take many runs. */
export function answerLater(answer: () => HTMLElement): HTMLElement {
  const details = html`<details class="exercise"><summary>Answer</summary></details>`;
  details.addEventListener('toggle', () => details.append(answer()), { once: true });
  return details;
}
