import type { Maker } from '../../picture/document.js';
import { day } from '../../render/number.js';
import { findings } from '../findings.js';
import type { ToldRun } from '../told-run.js';
import { runTitle } from './figure.js';

function factsOf({ file, account, system }: ToldRun): readonly string[] {
  const own = system?.facts ?? [`${day(account.time[account.time.length - 1])} days, from a saved document`];
  return [file, ...own];
}

function changesOf(maker: Maker, { system }: ToldRun): readonly HTMLElement[] {
  if (system === undefined || system.changes.length === 0) return [];
  return [
    maker.html(
      'p',
      { class: 'note' },
      'Put over the file: ',
      maker.html('code', {}, system.changes.join(', ')),
    ),
  ];
}

function asked(maker: Maker, run: ToldRun): readonly HTMLElement[] {
  const { system } = run;
  const facts = factsOf(run).map((fact) => maker.html('li', {}, fact));
  return [
    ...(system === undefined || system.question === ''
      ? []
      : [maker.html('p', { class: 'question' }, system.question)]),
    ...(system === undefined || system.note === '' ? [] : [maker.html('p', {}, system.note)]),
    maker.html('ul', { class: 'facts' }, ...facts),
    ...changesOf(maker, run),
  ];
}

function shortly(maker: Maker, run: ToldRun): HTMLElement {
  const broken = run.account.outcome.kind !== 'done';
  return maker.html(
    'ul',
    {},
    ...findings(run).map((text, i) => maker.html('li', broken && i === 0 ? { class: 'warn' } : {}, text)),
  );
}

/** The head of a report: titles, what was asked, and the answer in a few sentences. */
export function askedHeader(maker: Maker, told: readonly ToldRun[]): HTMLElement {
  const [first] = told;
  const many = told.length > 1;
  const title = many ? `${told.length} runs side by side` : first.account.title;
  const blocks = told.map((run) =>
    many
      ? maker.html(
          'div',
          {},
          maker.html('h3', {}, runTitle(maker, run.letter, run.account.title)),
          ...asked(maker, run),
        )
      : maker.html('div', {}, ...asked(maker, run)),
  );
  const answers = told.flatMap((run) =>
    many
      ? [maker.html('h3', {}, runTitle(maker, run.letter, run.account.title)), shortly(maker, run)]
      : [shortly(maker, run)],
  );
  return maker.html(
    'header',
    {},
    maker.html('p', { class: 'kicker' }, 'Leat: what nitrogen does in a system of fish and plants'),
    maker.html('h1', {}, title),
    maker.html(
      'section',
      { id: 'asked', 'aria-labelledby': 'asked-title' },
      maker.html('h2', { id: 'asked-title' }, 'What was asked'),
      ...blocks,
    ),
    maker.html('div', { class: 'short' }, maker.html('h2', { id: 'short' }, 'In short'), ...answers),
  );
}
