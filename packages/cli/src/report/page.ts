import { type Maker, newMaker } from '@leat/view/pictures';
import { newDocument } from '../files/new-document.js';
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

type Section = (maker: Maker, runs: readonly RunSummary[]) => HTMLElement;

/** Id of what a folded section holds: a link to it opens the section. */
const insideOf = (id: string): string => `${id}-inside`;

/** A section that shows its heading alone until it is opened; on paper it is open. */
function foldedSection(maker: Maker, whole: HTMLElement): HTMLElement {
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
  return maker.html('nav', { 'aria-label': 'Contents' }, maker.html('ul', {}, ...links));
}

/**
 * Text for the title of the page, the one element whose text linkedom writes as it is (it takes it for raw text, as
 * that of a script): what would be markup is escaped by hand.
 */
const asMarkup = (text: string): string =>
  text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');

/** Says that nothing may be fetched: the page is whole as it is. */
const policy = "default-src 'none'; style-src 'unsafe-inline'; base-uri 'none'; form-action 'none'";

/**
 * A report of one or several runs as one HTML file that needs nothing beside it. The same runs give the
 * same bytes.
 */
export function reportPage(runs: readonly RunSummary[]): string {
  const document = newDocument();
  const maker = newMaker(document);
  const open: readonly Section[] = [
    ...(runs.some(hasHarvest) ? [harvestSection] : []),
    waterSection,
    limitsSection,
    systemSection,
  ];
  const folded: readonly Section[] = [
    ...(runs.length > 1 ? [differencesSection] : []),
    ...(runs.some(isDisturbed) ? [afterSection] : []),
    coursesSection,
    nitrogenSection,
    ...(runs.some(usedBase) ? [baseSection] : []),
    ...(runs.some(({ ensemble }) => ensemble !== undefined) ? [chancesSection] : []),
    eventsSection,
    basisSection,
  ];
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
    maker.html('title', {}, asMarkup(`${runs.map(({ account }) => account.title).join(' / ')} - Leat`)),
    style,
  );
  document.body.append(
    askedHeader(maker, runs),
    contents(maker, sections),
    maker.html('main', {}, ...sections),
    maker.html(
      'footer',
      {},
      maker.html('p', { class: 'note' }, 'Made by leat report. A design and teaching aid, not a guarantee.'),
    ),
  );
  return `<!doctype html>\n${document.documentElement.outerHTML}\n`;
}
