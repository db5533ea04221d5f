import { fillReport, type RunSummary } from '@leat/view/report';
import { type Display, plainDisplay } from '@leat/view/text';
import { newDocument } from '../../files/new-document.js';

/**
 * Text for the title of the page, the one element whose text linkedom writes as it is (it takes it for raw text, as
 * that of a script): what would be markup is escaped by hand.
 */
const asMarkup = (text: string): string =>
  text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');

/** A report of one or several runs as one HTML file that needs nothing beside it. The same runs give the same bytes. */
export function reportPage(runs: readonly RunSummary[], display: Display = plainDisplay): string {
  const document = newDocument();
  fillReport(document, runs, display);
  const title = document.querySelector('title');
  if (title !== null) title.textContent = asMarkup(title.textContent);
  return `<!doctype html>\n${document.documentElement.outerHTML}\n`;
}
