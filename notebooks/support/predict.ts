import { html } from './html.js';
import { slider, type SliderOptions } from './slider.js';

/** Something to answer before the picture is shown; its value is null until the answer is given. */
export type Prediction<T> = HTMLElement & { value: T | null };

function asked<T>(question: string, fields: HTMLElement, read: () => T | null): Prediction<T> {
  const button = html`<button type="button" disabled=${read() === null}>Show what the model says</button>`;
  const form: Prediction<T> = Object.assign(
    html`<div class="predict" role="group" aria-label="Predict first">
      <p><strong>Predict first.</strong> ${question}</p>
      ${fields} ${button}
    </div>`,
    { value: null },
  );
  fields.addEventListener('input', (event) => {
    event.stopPropagation(); // nothing is shown before the button
    button.toggleAttribute('disabled', read() === null);
    if (form.value !== null) answer();
  });
  const answer = (): void => {
    form.value = read();
    form.dispatchEvent(new CustomEvent('input', { bubbles: true }));
  };
  button.addEventListener('click', answer);
  return form;
}

/** A question with answers to pick from. */
export function pickFirst(question: string, answers: readonly string[]): Prediction<string> {
  const name = `pick-${answers.join('-').replace(/\W+/g, '').slice(0, 24)}`;
  const fields = html`<div class="answers">
    ${answers.map((text) => html`<label><input type="radio" name=${name} value=${text} /> ${text}</label>`)}
  </div>`;
  return asked(
    question,
    fields,
    () => fields.querySelector<HTMLInputElement>('input:checked')?.value ?? null,
  );
}

/** A question whose answer is a number, guessed with a slider. */
export function guessFirst(question: string, options: SliderOptions): Prediction<number> {
  const field = slider('guess', options);
  return asked(question, field, () => field.value);
}

/** What stands in the place of a picture before the prediction. */
export function veil(): HTMLElement {
  return html`<p class="veil">The picture comes when you have predicted.</p>`;
}
