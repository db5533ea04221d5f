import { html } from './html.js';

/** A button for what takes many runs: it says that it is at work, then gives way to what came out, or to why nothing did. */
export function workLater(label: string, work: () => HTMLElement): HTMLElement {
  const button = html`<button type="button">${label}</button>`;
  const box = html`<div class="work" aria-live="polite">${button}</div>`;
  button.addEventListener('click', () => {
    box.replaceChildren(html`<p>At work …</p>`);
    // Two frames, so that these words are seen before the page is busy.
    requestAnimationFrame(() =>
      requestAnimationFrame(() => {
        try {
          box.replaceChildren(work());
        } catch (error) {
          box.replaceChildren(
            html`<p class="caution">${error instanceof Error ? error.message : String(error)}</p>`,
          );
        }
      }),
    );
  });
  return box;
}
