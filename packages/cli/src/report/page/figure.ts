import type { Child, Maker } from '../../picture/document.js';

/** A picture with its caption and what belongs under it. */
export function figure(
  maker: Maker,
  pictures: readonly Element[],
  caption: readonly Child[],
  kind = '',
  ...below: readonly Node[]
): HTMLElement {
  return maker.html(
    'figure',
    kind === '' ? {} : { class: kind },
    ...pictures,
    maker.html('figcaption', {}, ...caption),
    ...below,
  );
}

/** A section of a page with its heading; `id` is what the list of contents points to. */
export function section(maker: Maker, id: string, title: string, ...children: readonly Child[]): HTMLElement {
  return maker.html(
    'section',
    { id, 'aria-labelledby': `${id}-title` },
    maker.html('h2', { id: `${id}-title` }, title),
    ...children,
  );
}

/** The letter of a run and its title. */
export function runTitle(maker: Maker, letter: string, title: string): HTMLElement {
  return maker.html(
    'span',
    { class: 'letter-title' },
    maker.html('span', { class: 'letter' }, letter),
    title,
  );
}
