import { type Display, plainDisplay } from '../display/display.js';

/** What may stand in an element: text stands as text, whatever it says. */
export type Child = Node | string;
type Attributes = Readonly<Record<string, string | number>>;

/** Builds a document of nodes, so that what comes from files can never be read as markup. */
export interface Maker {
  readonly document: Document;
  /** In which words and units what is made is told. */
  readonly display: Display;
  /** An HTML element. */
  readonly html: (tag: string, attributes?: Attributes, ...children: readonly Child[]) => HTMLElement;
  /** An SVG element. */
  readonly svg: (tag: string, attributes?: Attributes, ...children: readonly Child[]) => SVGElement;
  /** An id that no other call gave. */
  readonly id: () => string;
}

const svgSpace = 'http://www.w3.org/2000/svg' as const;

function filled<E extends Element>(element: E, attributes: Attributes, children: readonly Child[]): E {
  for (const [name, value] of Object.entries(attributes)) element.setAttribute(name, String(value));
  element.append(...children);
  return element;
}

/** A maker of elements of a document: that of a browser, or one that stands for it. */
export function newMaker(document: Document, display: Display = plainDisplay): Maker {
  let ids = 0;
  return {
    document,
    display,
    html: (tag, attributes = {}, ...children) => filled(document.createElement(tag), attributes, children),
    svg: (tag, attributes = {}, ...children) =>
      filled(document.createElementNS(svgSpace, tag), attributes, children),
    id: () => {
      ids += 1;
      return `p${ids}`;
    },
  };
}
