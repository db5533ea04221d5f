import type { Child, Maker } from '../pictures/document.js';

/** What may stand in a place of a text: words, a node, or a number with how many decimals it is shown. */
export type Filling = Child | readonly [value: number, decimals: number];

/** A number as a language writes it, with so many decimals. */
export function numberText(value: number, decimals: number, language: string): string {
  const text = new Intl.NumberFormat(language, {
    ...{ minimumFractionDigits: decimals, maximumFractionDigits: decimals, useGrouping: false },
  }).format(value);
  return text.replace(/^-(?=[0.,]*$)/, '');
}

/** A number that was worked out, with a name by which a check finds it and its decimals. */
export function figure(
  maker: Maker,
  name: string,
  [value, decimals]: readonly [number, number],
  language: string,
): HTMLElement {
  return maker.html(
    'output',
    { 'data-figure': name, 'data-value': value.toPrecision(12), 'data-decimals': decimals },
    numberText(value, decimals, language),
  );
}

/** Names of the places of a text, `{name}`, each once, in order. */
export function placesOf(text: string): readonly string[] {
  return [...new Set([...text.matchAll(/\{([\w-]+)\}/g)].map(([, name]) => name))];
}

/**
 * A text of one's own, HTML with places in braces, as nodes: `<p>{gas} g left.</p>`. What is filled in stands as text or as the node
 * that it is, never as markup.
 * @throws RangeError for a place that nothing is given for
 */
export function fill(
  maker: Maker,
  text: string,
  fillings: Readonly<Record<string, Filling>>,
  language: string,
): readonly ChildNode[] {
  const missing = placesOf(text).filter((name) => !Object.hasOwn(fillings, name));
  if (missing.length > 0)
    throw new RangeError(
      `nothing is given for {${missing.join('}, {')}}; there is ${Object.keys(fillings).join(', ') || 'nothing'}`,
    );
  const box = maker.html('div');
  box.innerHTML = text.trim().replace(/\{([\w-]+)\}/g, '<span data-place="$1"></span>');
  for (const place of [...box.querySelectorAll('[data-place]')]) {
    const name = place.getAttribute('data-place') ?? '';
    const given = fillings[name];
    const node =
      typeof given === 'string' || 'nodeType' in given ? given : figure(maker, name, given, language);
    // A node stands once: where a text names it twice, the second is a copy.
    place.replaceWith(
      typeof node === 'string' ? node : node.parentNode === null ? node : node.cloneNode(true),
    );
  }
  return [...box.childNodes];
}

/** A text without markup whose places are filled with words, for titles and text alternatives. */
export function plainly(text: string, words: Readonly<Record<string, string>>): string {
  return text.replace(/\{([\w-]+)\}/g, (place, name: string) => words[name] ?? place);
}
