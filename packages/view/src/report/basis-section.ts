import { marks, type BibliographyEntry } from '@leat/core';
import type { Maker } from '../pictures/index.js';
import { cautionsIn } from '../text/index.js';
import type { RunSummary } from './run-summary.js';
import { section } from './elements.js';
import { scrolling, table } from './elements.js';

function list(maker: Maker, items: readonly string[], kind = ''): HTMLElement {
  return maker.html(
    'ul',
    kind === '' ? {} : { class: kind },
    ...items.map((item) => maker.html('li', {}, item)),
  );
}

function assumptions(maker: Maker, runs: readonly RunSummary[]): readonly HTMLElement[] {
  const words = maker.display.words.evidence.basis;
  const own = runs.flatMap(({ letter, system }) =>
    (system?.assumed ?? []).map((line) => (runs.length > 1 ? `${letter}: ${line}` : line)),
  );
  return [maker.html('h3', {}, words.assumed), list(maker, [...words.always, ...own])];
}

/** Sources of all runs, each once, with the numbers that came from it. */
function merged(runs: readonly RunSummary[]): readonly BibliographyEntry[] {
  const entries = new Map<string, BibliographyEntry>();
  for (const { sources } of runs)
    for (const entry of sources) {
      const key = `${entry.key} ${entry.mark} ${entry.given ?? ''}`;
      const ids = [...new Set([...(entries.get(key)?.ids ?? []), ...entry.ids])].sort();
      entries.set(key, { ...entry, ids });
    }
  return [...entries].sort(([a], [b]) => (a < b ? -1 : 1)).map(([, entry]) => entry);
}

function sourceList(maker: Maker, runs: readonly RunSummary[]): HTMLElement {
  const words = maker.display.words.evidence.basis;
  const items = merged(runs).map(({ citation, mark, ids, key, given }) =>
    maker.html(
      'li',
      {},
      maker.html(
        'details',
        {},
        maker.html(
          'summary',
          {},
          `${citation} [${mark}, ${marks[mark]}]${given === undefined ? '' : words.given(given)} `,
          maker.html('code', {}, key),
        ),
        maker.html('code', {}, ids.join(', ')),
      ),
    ),
  );
  return maker.html('ul', { class: 'sources' }, ...items);
}

function manifests(maker: Maker, runs: readonly RunSummary[]): HTMLElement {
  const words = maker.display.words.evidence.basis;
  const rows = runs.map(({ letter, file, manifest, account, system }) => [
    runs.length > 1 ? letter : file,
    runs.length > 1 ? file : '',
    manifest.version,
    maker.html('code', {}, manifest.scenario),
    manifest.integrator,
    String(manifest.tolerance),
    manifest.seed === null ? words.noneDrawn : String(manifest.seed),
    system === undefined || system.changes.length === 0 ? words.none : system.changes.join(', '),
    words.endings[account.outcome.kind],
  ]);
  const told = words.columns;
  const names = [
    ...[told.run, told.file, told.version, told.scenario, told.integrator],
    ...[told.tolerance, told.seed, told.over, told.ended],
  ];
  const shownColumns = names.map((_, i) => i).filter((i) => runs.length > 1 || i !== 1);
  return scrolling(
    maker,
    words.manifest,
    table(
      maker,
      words.manifestCaption,
      shownColumns.map((i) => ({ name: names[i] })),
      rows.map((row) => shownColumns.map((i) => row[i])),
      'stack',
    ),
  );
}

/** What the report rests on: what was assumed, where numbers are from, what to run again, and what to beware of. */
export function basisSection(maker: Maker, runs: readonly RunSummary[]): HTMLElement {
  const words = maker.display.words.evidence.basis;
  return section(
    maker,
    'basis',
    words.title,
    ...assumptions(maker, runs),
    maker.html('h3', {}, words.sources),
    maker.html('p', { class: 'note' }, words.sourcesNote),
    sourceList(maker, runs),
    maker.html('h3', {}, words.manifest),
    manifests(maker, runs),
    maker.html('h3', {}, words.cautions),
    list(maker, cautionsIn(maker.display)),
  );
}
