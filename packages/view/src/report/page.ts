import { type Maker, newMaker } from '../pictures/index.js';
import { type Display, plainDisplay } from '../text/index.js';
import type { RunSummary } from './run-summary.js';
import { afterSection, isDisturbed } from './after-section.js';
import { askedHeader } from './asked-section.js';
import { baseSection, usedBase } from './base-section.js';
import { basisSection } from './basis-section.js';
import { chancesSection } from './chances-section.js';
import { coursesSection } from './courses-section.js';
import { differencesSection } from './differences-section.js';
import { eventsSection } from './events-section.js';
import { harvestSection, hasHarvest } from './harvest-section.js';
import { limitsSection } from './limits-section.js';
import { nitrogenSection } from './nitrogen-section.js';
import { pageStyle } from './style.js';
import { systemSection } from './system-section.js';
import { waterSection } from './water-section.js';

/** Makes a section of some runs. */
export type Section = (maker: Maker, runs: readonly RunSummary[]) => HTMLElement;

/** Id of what a folded section holds: a link to it opens the section. */
const insideOf = (id: string): string => `${id}-inside`;

/** A section that shows its heading alone until it is opened; on paper it is open. */
export function foldedSection(maker: Maker, whole: HTMLElement): HTMLElement {
  const [title, ...others] = [...whole.childNodes];
  whole.setAttribute('class', 'folded');
  whole.append(
    maker.html(
      'details',
      { class: 'fold' },
      maker.html('summary', {}, title),
      maker.html('div', { id: insideOf(whole.id) }, ...others),
    ),
  );
  return whole;
}

function contents(maker: Maker, sections: readonly HTMLElement[]): HTMLElement {
  const links = sections.map((each) => {
    const title = each.querySelector('h2')?.textContent ?? '';
    const inside = each.querySelector(`#${insideOf(each.id)}`);
    return maker.html('li', {}, maker.html('a', { href: `#${inside?.id ?? each.id}` }, title));
  });
  return maker.html(
    'nav',
    { 'aria-label': maker.display.words.report.contents },
    maker.html('ul', {}, ...links),
  );
}

/** Says that nothing may be fetched: the page is whole as it is. */
const policy = "default-src 'none'; style-src 'unsafe-inline'; base-uri 'none'; form-action 'none'";

/** The sections of a report of some runs, those that stand open first; each is made when it is called. */
export function sectionsFor(runs: readonly RunSummary[]): {
  readonly open: readonly Section[];
  readonly folded: readonly Section[];
} {
  return {
    open: [...(runs.some(hasHarvest) ? [harvestSection] : []), waterSection, limitsSection, systemSection],
    folded: [
      ...(runs.length > 1 ? [differencesSection] : []),
      ...(runs.some(isDisturbed) ? [afterSection] : []),
      coursesSection,
      nitrogenSection,
      ...(runs.some(usedBase) ? [baseSection] : []),
      ...(runs.some(({ ensemble }) => ensemble !== undefined) ? [chancesSection] : []),
      eventsSection,
      basisSection,
    ],
  };
}

/**
 * Fills an empty document with the report of one or several runs: a page that needs nothing beside it. The same runs give
 * the same page.
 */
export function fillReport(
  document: Document,
  runs: readonly RunSummary[],
  display: Display = plainDisplay,
): void {
  document.documentElement.setAttribute('lang', display.words.language);
  const maker = newMaker(document, display);
  const words = display.words.report;
  const { open, folded } = sectionsFor(runs);
  const sections = [
    ...open.map((make) => make(maker, runs)),
    ...folded.map((make) => foldedSection(maker, make(maker, runs))),
  ];
  const style = maker.html('style');
  style.textContent = pageStyle;
  document.head.append(
    maker.html('meta', { charset: 'utf-8' }),
    maker.html('meta', { name: 'viewport', content: 'width=device-width, initial-scale=1' }),
    maker.html('meta', { 'http-equiv': 'Content-Security-Policy', content: policy }),
    maker.html('title', {}, `${runs.map(({ account }) => account.title).join(' / ')} - Leat`),
    style,
  );
  document.body.append(
    askedHeader(maker, runs),
    contents(maker, sections),
    maker.html('main', {}, ...sections),
    maker.html('footer', {}, maker.html('p', { class: 'note' }, words.footer)),
  );
}
