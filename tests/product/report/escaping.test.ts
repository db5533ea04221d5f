import { parseHTML } from 'linkedom';
import { describe, expect, it } from 'vitest';
import { lightColours, slide } from '@leat/view/pictures';
import { newDocument } from '../../../packages/cli/src/files/new-document.js';
import { reportPage } from '../../../packages/cli/src/commands/report/page.js';
import { banded } from './banded.js';
import { ensembleSaying, nasty, saying } from './nasty.js';
import { summaryOver } from './summarized.js';

const elements = (html: string): number => parseHTML(html).document.querySelectorAll('*').length;

describe('what comes from files', () => {
  it.each(nasty)('stands as text in a report: %s', async (text) => {
    const yaml = `title: ${JSON.stringify(text)}\nnote: ${JSON.stringify(text)}\n`;
    const told = await summaryOver(yaml);
    const harmless = await summaryOver('title: "plain"\nnote: "plain"\n');
    const named = { ...told, file: text };
    for (const [page, plain] of [
      [reportPage([named]), reportPage([{ ...harmless, file: 'plain' }])],
      [reportPage([named, { ...named, letter: 'B' }]), reportPage([harmless, { ...harmless, letter: 'B' }])],
    ]) {
      const { document } = parseHTML(page);
      expect(document.querySelectorAll('script, img, [onerror], [onload]')).toHaveLength(0);
      expect(elements(page)).toBe(elements(plain));
      expect(document.querySelector('header')?.textContent).toContain(text);
      for (const raw of ['<script', '<img', '<svg onload', '</title></style'])
        expect(page.includes(raw), raw).toBe(false);
    }
  });

  it.each(nasty)('stands as text wherever a saved document may put it: %s', async (text) => {
    const { document } = parseHTML(reportPage([saying(text, await summaryOver('title: Plain\n'))]));
    expect(document.querySelectorAll('script, img, [onerror], [onload]')).toHaveLength(0);
    expect(document.querySelector('#events')?.textContent).toContain(text);
    expect(document.querySelector('#limits')?.textContent).toContain(text);
    expect(document.querySelector('#courses')?.textContent).toContain(Array.from(text).slice(0, 3).join(''));
  });

  it.each(nasty)('stands as text wherever the document of an ensemble may put it: %s', async (text) => {
    const told = await summaryOver('title: Plain\n');
    const ensemble = banded(told);
    const page = reportPage([{ ...told, ensemble: ensembleSaying(text, ensemble) }]);
    const { document } = parseHTML(page);
    expect(document.querySelectorAll('script, img, [onerror], [onload]')).toHaveLength(0);
    expect(elements(page)).toBe(elements(reportPage([{ ...told, ensemble }])));
    const said = (document.querySelector('#sure')?.textContent ?? '').split(text).length - 1;
    expect(said).toBeGreaterThan(5);
  });

  it.each(nasty)('stands as text in a picture: %s', (title) => {
    const values = [1, 2, 3];
    const series = [{ name: 'nitrate@sump', unit: 'mg N/L', values }];
    const svg = slide(newDocument(), { title, time: [0, 1, 2], series, limits: [], colours: lightColours });
    const { document } = parseHTML(svg);
    expect(document.querySelectorAll('script, img, [onerror], [onload]')).toHaveLength(0);
    expect([...document.querySelectorAll('text')].map((each) => each.textContent)).toContain(title);
  });
});
