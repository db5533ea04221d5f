import { fatesOf } from '@leat/core';
import type { Maker } from '../pictures/index.js';
import {
  boundPhrase,
  day,
  dayNames,
  type Display,
  fatePhrase,
  listed,
  percent,
  plain,
  verdictLines,
} from '../text/index.js';
import { runTitle } from './elements.js';
import type { RunSummary } from './run-summary.js';

const grams = (amount: number, display: Display): string =>
  amount >= 1000 ? display.amount(amount / 1000, 'kg') : display.amount(amount, 'g');

function nitrogenText({ account }: RunSummary, display: Display): string {
  const words = display.words.report.asked;
  const { total, from, to } = fatesOf(account.nitrogen);
  if (!(total > 0)) return words.noNitrogen;
  const [first] = from;
  const largest = to
    .slice(0, 4)
    .map(({ name, share }) => words.to(percent(share, display), toText(name, display)));
  return words.nitrogen(
    grams(total, display),
    percent(first.share, display),
    fromText(first.name, display),
    listed(largest, display),
  );
}

const drawn = 'drawn from ';
const kept = 'kept in ';

function fromText(name: string, display: Display): string {
  const words = display.words.report.asked;
  if (name.startsWith(drawn)) return words.drawn(plain(name.slice(drawn.length), display));
  return words.with(fatePhrase(name, display));
}

function toText(name: string, display: Display): string {
  const words = display.words.report.asked;
  if (name.startsWith(kept)) return words.stayed(plain(name.slice(kept.length), display));
  if (name === 'nitrogen gas') return words.asGas;
  return name === 'ammonia to air' ? words.toAir : words.leftWith(fatePhrase(name, display));
}

/** How often drawn runs pass a limit that this run keeps: what one run does not tell. */
function oddsText({ account, ensemble }: RunSummary, display: Display): string {
  const words = display.words.report.asked;
  if (ensemble === undefined) return '';
  const passedHere = (id: string, place: string): boolean =>
    account.limits.some((limit) => limit.passed && limit.id === id && limit.place === place);
  const [likeliest, ...others] = ensemble.limits
    .filter(({ id, place, passed }) => passed > 0 && !passedHere(id, place))
    .sort((a, b) => b.probability - a.probability);
  const head = words.odds(ensemble.ran);
  if (likeliest === undefined) return words.noOdds(head);
  const limit = display.words.text.inPlace(boundPhrase(likeliest, display), likeliest.place);
  const more = others.length === 0 ? '' : words.moreOdds(others.length);
  return words.passedIn(head, percent(likeliest.probability, display), limit, more);
}

/** What a run says, in a few sentences: its verdict, what drawn runs say beside it, where nitrogen went. A run that broke off says so first. */
function findings(run: RunSummary, display: Display): readonly string[] {
  const { outcome, verdict, startDate } = run.account;
  const words = display.words.report.asked;
  const broken =
    outcome.kind === 'done' ? [] : [words.brokeOff(dayNames(startDate, display)(outcome.time), outcome.kind)];
  const sentences = [
    ...verdictLines(verdict, startDate, display),
    oddsText(run, display),
    nitrogenText(run, display),
  ];
  return [...broken, ...sentences].filter((text) => text !== '');
}

function factsOf({ file, account, system }: RunSummary, display: Display): readonly string[] {
  const own = system?.facts ?? [
    display.words.report.asked.saved(day(account.time[account.time.length - 1], display)),
  ];
  return [file, ...own];
}

function changesOf(maker: Maker, { system }: RunSummary): readonly HTMLElement[] {
  if (system === undefined || system.changes.length === 0) return [];
  return [
    maker.html(
      'p',
      { class: 'note' },
      maker.display.words.report.asked.over,
      maker.html('code', {}, system.changes.join(', ')),
    ),
  ];
}

function asked(maker: Maker, run: RunSummary): readonly HTMLElement[] {
  const { system } = run;
  const facts = factsOf(run, maker.display).map((fact) => maker.html('li', {}, fact));
  return [
    ...(system === undefined || system.question === ''
      ? []
      : [maker.html('p', { class: 'question' }, system.question)]),
    ...(system === undefined || system.note === '' ? [] : [maker.html('p', {}, system.note)]),
    maker.html('ul', { class: 'facts' }, ...facts),
    ...changesOf(maker, run),
  ];
}

/** The answer of a run in a few sentences, its verdict first. */
export function shortly(maker: Maker, run: RunSummary): HTMLElement {
  const broken = run.account.outcome.kind !== 'done';
  return maker.html(
    'ul',
    {},
    ...findings(run, maker.display).map((text, i) =>
      maker.html('li', broken && i === 0 ? { class: 'warn' } : {}, text),
    ),
  );
}

/** The head of a report: titles, what was asked, and the answer in a few sentences. */
export function askedHeader(maker: Maker, runs: readonly RunSummary[]): HTMLElement {
  const [first] = runs;
  const words = maker.display.words.report;
  const many = runs.length > 1;
  const title = many ? words.sideBySide(runs.length) : first.account.title;
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
    maker.html('p', { class: 'kicker' }, words.kicker),
    maker.html('h1', {}, title),
    maker.html(
      'section',
      { id: 'asked', 'aria-labelledby': 'asked-title' },
      maker.html('h2', { id: 'asked-title' }, words.asked.title),
      ...blocks,
    ),
    maker.html('div', { class: 'short' }, maker.html('h2', { id: 'short' }, words.asked.short), ...answers),
  );
}
