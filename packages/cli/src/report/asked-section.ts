import { fatesOf } from '@leat/core';
import type { Maker } from '@leat/view/pictures';
import { boundPhrase, day, listed, percent, shown, verdictLines } from '@leat/view/text';
import { runTitle } from './elements.js';
import type { RunSummary } from './run-summary.js';

const grams = (amount: number): string =>
  amount >= 1000 ? `${shown(amount / 1000)} kg` : `${shown(amount)} g`;

function nitrogenText({ account }: RunSummary): string {
  const { total, from, to } = fatesOf(account.nitrogen);
  if (!(total > 0)) return 'No nitrogen came or went.';
  const [first] = from;
  const largest = to.slice(0, 4).map(({ name, share }) => `${percent(share)} ${toText(name)}`);
  return `Of ${grams(total)} of nitrogen that came (${percent(first.share)} ${fromText(first.name)}), ${listed(largest)}.`;
}

const fromText = (name: string): string => (name.startsWith('drawn from') ? name : `with ${name}`);

function toText(name: string): string {
  if (name.startsWith('kept in')) return `stayed in ${name.slice('kept in '.length)}`;
  if (name === 'nitrogen gas') return 'left as nitrogen gas';
  return name === 'ammonia to air' ? 'left as ammonia to the air' : `left with ${name}`;
}

/** How often drawn runs pass a limit that this run keeps: what one run does not tell. */
function oddsText({ account, ensemble }: RunSummary): string {
  if (ensemble === undefined) return '';
  const passedHere = (id: string, place: string): boolean =>
    account.limits.some((limit) => limit.passed && limit.id === id && limit.place === place);
  const [likeliest, ...others] = ensemble.limits
    .filter(({ id, place, passed }) => passed > 0 && !passedHere(id, place))
    .sort((a, b) => b.probability - a.probability);
  const head = `In ${ensemble.ran} runs with numbers drawn from their ranges`;
  if (likeliest === undefined) return `${head} no limit was passed that this run keeps.`;
  const limit = `${boundPhrase(likeliest)} in ${likeliest.place}`;
  const more = others.length === 0 ? '' : `; ${others.length} more are listed under "How sure we are"`;
  return `${head} a limit that this run keeps was passed in ${percent(likeliest.probability)}: ${limit}${more}.`;
}

/** What a run says, in a few sentences: its verdict, what drawn runs say beside it, where nitrogen went. A run that broke off says so first. */
function findings(run: RunSummary): readonly string[] {
  const { outcome } = run.account;
  const broken =
    outcome.kind === 'done'
      ? []
      : [`The run broke off on day ${shown(outcome.time)} (${outcome.kind}): everything here ends there.`];
  const { verdict, startDate } = run.account;
  const sentences = [...verdictLines(verdict, startDate), oddsText(run), nitrogenText(run)];
  return [...broken, ...sentences].filter((text) => text !== '');
}

function factsOf({ file, account, system }: RunSummary): readonly string[] {
  const own = system?.facts ?? [`${day(account.time[account.time.length - 1])} days, from a saved document`];
  return [file, ...own];
}

function changesOf(maker: Maker, { system }: RunSummary): readonly HTMLElement[] {
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

function asked(maker: Maker, run: RunSummary): readonly HTMLElement[] {
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

function shortly(maker: Maker, run: RunSummary): HTMLElement {
  const broken = run.account.outcome.kind !== 'done';
  return maker.html(
    'ul',
    {},
    ...findings(run).map((text, i) => maker.html('li', broken && i === 0 ? { class: 'warn' } : {}, text)),
  );
}

/** The head of a report: titles, what was asked, and the answer in a few sentences. */
export function askedHeader(maker: Maker, runs: readonly RunSummary[]): HTMLElement {
  const [first] = runs;
  const many = runs.length > 1;
  const title = many ? `${runs.length} runs side by side` : first.account.title;
  const blocks = runs.map((run) =>
    many
      ? maker.html(
          'div',
          {},
          maker.html('h3', {}, runTitle(maker, run.letter, run.account.title)),
          ...asked(maker, run),
        )
      : maker.html('div', {}, ...asked(maker, run)),
  );
  const answers = runs.flatMap((run) =>
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
