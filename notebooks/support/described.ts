/** A picture as Plot drew it, with what there is to be seen in it as its one text alternative. */
export function described(svg: Element, text: string): SVGSVGElement {
  if (!(svg instanceof SVGSVGElement)) throw new TypeError('a picture of a lesson is one drawing');
  for (const part of svg.querySelectorAll('[aria-label]')) part.removeAttribute('aria-label');
  svg.setAttribute('role', 'img');
  svg.setAttribute('aria-label', text);
  return svg;
}
