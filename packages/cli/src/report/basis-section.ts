import { marks, type BibliographyEntry } from '@leat/core';
import type { Maker } from '@leat/view/pictures';
import { cautions } from '@leat/view/text';
import type { RunSummary } from './run-summary.js';
import { section } from './elements.js';
import { scrolling, table } from './elements.js';

/** What every run of Leat takes for granted. */
const always: readonly string[] = [
  'Every vessel is well mixed: no dead corners, no layers.',
  'Fish, crops and bacteria behave as published averages of their kind; no disease, no pests, no hunger for light.',
  'Nitrogen, carbon, oxygen, acidity, chloride, calcium and water are followed; phosphorus, iron and potassium are not.',
  'What has no published value here is marked as common practice or as from memory.',
];

function list(maker: Maker, items: readonly string[], kind = ''): HTMLElement {
  return maker.html(
    'ul',
    kind === '' ? {} : { class: kind },
    ...items.map((item) => maker.html('li', {}, item)),
  );
}

function assumptions(maker: Maker, runs: readonly RunSummary[]): readonly HTMLElement[] {
  const own = runs.flatMap(({ letter, system }) =>
    (system?.assumed ?? []).map((line) => (runs.length > 1 ? `${letter}: ${line}` : line)),
  );
  return [maker.html('h3', {}, 'Assumed'), list(maker, [...always, ...own])];
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
          `${citation} [${mark}, ${marks[mark]}]${given === undefined ? '' : ` (given in ${given})`} `,
          maker.html('code', {}, key),
        ),
        maker.html('code', {}, ids.join(', ')),
      ),
    ),
  );
  return maker.html('ul', { class: 'sources' }, ...items);
}

function manifests(maker: Maker, runs: readonly RunSummary[]): HTMLElement {
  const rows = runs.map(({ letter, file, manifest, account, system }) => [
    runs.length > 1 ? letter : file,
    runs.length > 1 ? file : '',
    manifest.version,
    maker.html('code', {}, manifest.scenario),
    manifest.integrator,
    String(manifest.tolerance),
    manifest.seed === null ? 'none drawn' : String(manifest.seed),
    system === undefined || system.changes.length === 0 ? 'none' : system.changes.join(', '),
    account.outcome.kind,
  ]);
  const names = [
    'run',
    'file',
    'Leat',
    'scenario (SHA-256)',
    'integrator',
    'tolerance',
    'seed',
    'put over the file',
    'ended',
  ];
  const shownColumns = names.map((_, i) => i).filter((i) => runs.length > 1 || i !== 1);
  return scrolling(
    maker,
    'Manifest',
    table(
      maker,
      'What must be the same for the same bytes',
      shownColumns.map((i) => ({ name: names[i] })),
      rows.map((row) => shownColumns.map((i) => row[i])),
      'stack',
    ),
  );
}

/** What the report rests on: what was assumed, where numbers are from, what to run again, and what to beware of. */
export function basisSection(maker: Maker, runs: readonly RunSummary[]): HTMLElement {
  return section(
    maker,
    'basis',
    'What this rests on',
    ...assumptions(maker, runs),
    maker.html('h3', {}, 'Where the numbers are from'),
    maker.html('p', { class: 'note' }, 'Each opens to the ids of the numbers that came from it.'),
    sourceList(maker, runs),
    maker.html('h3', {}, 'Manifest'),
    manifests(maker, runs),
    maker.html('h3', {}, 'Cautions'),
    list(maker, cautions),
  );
}
