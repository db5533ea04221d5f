import { html } from './html.js';

/** The file of a run, folded: it can be copied, saved and run by the command line. */
export function systemFile(name: string, text: string): HTMLElement {
  return html`<details class="file">
    <summary>The file behind “${name}”</summary>
    <p>
      Invented. Save it as <code>${name.replaceAll(' ', '-')}.yaml</code> and run it with
      <code>npm run leat -- run</code>.
    </p>
    <pre tabindex="0" data-system=${name}>${text.trim()}</pre>
  </details>`;
}
