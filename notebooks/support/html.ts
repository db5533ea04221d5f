import { html as made } from 'htl';

/** An element from a template; several roots come in a span. Throws TypeError where it makes none. */
export function html(strings: TemplateStringsArray, ...values: unknown[]): HTMLElement {
  const node = made(strings, ...values);
  if (!(node instanceof HTMLElement)) throw new TypeError('a template that makes no element');
  return node;
}
