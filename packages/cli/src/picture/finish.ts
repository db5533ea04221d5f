import type { Maker } from './document.js';

/** What a picture shows, for those who do not see it. */
export interface Telling {
  readonly title: string;
  /** What there is to be seen in it, in words. */
  readonly description: string;
}

/** Numbers of a path to a tenth of a pixel: enough for print, and a third of the size. */
function rounded(path: string): string {
  return path.replace(/-?\d+\.\d{2,}/g, (digits) => String(Number(Number(digits).toFixed(1))));
}

/**
 * Makes an SVG ready for a page: a title and a description as its text alternative, its paths short, no
 * style of its own.
 */
export function finished(maker: Maker, svg: Element, { title, description }: Telling): Element {
  const [titleId, textId] = [maker.id(), maker.id()];
  for (const style of [...svg.querySelectorAll('style')]) style.remove();
  for (const path of [...svg.querySelectorAll('path')]) {
    const d = path.getAttribute('d');
    if (d !== null) path.setAttribute('d', rounded(d));
  }
  for (const group of [...svg.querySelectorAll('[aria-label]')]) group.removeAttribute('aria-label');
  svg.setAttribute('role', 'img');
  svg.setAttribute('aria-labelledby', `${titleId} ${textId}`);
  svg.prepend(maker.svg('title', { id: titleId }, title), maker.svg('desc', { id: textId }, description));
  return svg;
}
