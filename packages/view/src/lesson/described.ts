/** A picture as Plot drew it, with what there is to be seen in it as its one text alternative. */
export function described(svg: Element, text: string): Element {
  for (const part of [...svg.querySelectorAll('[aria-label]')]) part.removeAttribute('aria-label');
  for (const style of [...svg.querySelectorAll('style')]) style.remove();
  svg.setAttribute('role', 'img');
  svg.setAttribute('aria-label', text);
  svg.setAttribute('class', 'chart');
  return svg;
}
