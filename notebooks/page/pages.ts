import { type Child, type Maker } from '@leat/view/pictures';
import { openKit, saveButton, type Stage } from '@leat/view/lesson';
import { lessons, type BoundLesson } from '../lessons/index.js';
import { blankLog, blankLogMap } from '../support/blank-log.js';
import type { Edition } from '../support/edition.js';

/** A page that is to be filled. */
export interface OpenPage {
  readonly maker: Maker;
  readonly edition: Edition;
  /** Id of a lesson, `worksheets`, `answers`, `teacher`, `index`, or `all` for every page in one file. */
  readonly page: string;
  readonly main: Element;
  /** Which page of `all` is asked for. */
  readonly hash: () => string;
  readonly changed: (act: () => void) => void;
}

/** Empty lines of the printed log. */
const LOG_LINES = 18;

/** Room for pictures where the page does not say, px. */
const USUAL_ROOM = 680;

function stageOf({ maker, edition, main }: OpenPage): Stage {
  return { maker, frame: edition.frame, width: () => (main.clientWidth > 0 ? main.clientWidth : USUAL_ROOM) };
}

/** Links of a text to lessons: `{lesson-07}`. */
function lessonLinks({ maker, edition }: OpenPage, address: (id: string) => string): Record<string, Child> {
  return Object.fromEntries(
    lessons.map((lesson) => [
      `lesson-${lesson.id.slice(0, 2)}`,
      maker.html('a', { href: address(lesson.id) }, lesson.words(edition).title),
    ]),
  );
}

function printButton({ maker, edition }: OpenPage): HTMLElement {
  const button = maker.html('button', { type: 'button', class: 'print' }, edition.site.print);
  button.addEventListener('click', () => window.print());
  return button;
}

/** The log to print and to save, with the map by which `leat log` reads it. */
function logSheet(page: OpenPage): HTMLElement {
  const { maker, edition } = page;
  const { html } = maker;
  const { site, logColumns, names, frame } = edition;
  const heads = Object.values(logColumns);
  const kit = openKit(maker, frame, () => USUAL_ROOM);
  return html(
    'section',
    { class: 'sheet log' },
    html('h1', {}, site.log),
    ...kit.text(site.logNote),
    html(
      'p',
      {},
      saveButton(maker, frame.save, site.logFile, blankLog(logColumns)),
      ' ',
      saveButton(maker, frame.save, site.mapFile, blankLogMap(logColumns, names)),
    ),
    html(
      'div',
      { class: 'wide', tabindex: 0, role: 'region', 'aria-label': site.log },
      html(
        'table',
        { class: 'blank' },
        html('thead', {}, html('tr', {}, ...heads.map((head) => html('th', {}, head)))),
        html(
          'tbody',
          {},
          ...Array.from({ length: LOG_LINES }, () => html('tr', {}, ...heads.map(() => html('td', {})))),
        ),
      ),
    ),
  );
}

/** Parts that take a while, one after the other, so that the page shows each as it comes. */
function oneByOne(main: Element, parts: readonly (() => Child)[], end: () => void): void {
  const [part, ...others] = parts;
  if (parts.length === 0) {
    end();
    return;
  }
  main.append(part());
  setTimeout(() => oneByOne(main, others, end));
}

function sheets(page: OpenPage, note: string, log: boolean, sheet: (lesson: BoundLesson) => Child): void {
  const { maker, edition, main } = page;
  const { site } = edition;
  main.replaceChildren(
    maker.html('h1', { class: 'screen' }, log ? site.worksheets : site.answers),
    maker.html('p', { class: 'screen' }, note),
    printButton(page),
  );
  const parts = lessons.map((lesson) => () => sheet(lesson));
  oneByOne(main, [...(log ? [() => logSheet(page)] : []), ...parts], () => {
    main.setAttribute('data-done', '');
  });
}

/** The list of all lessons. */
function contents(page: OpenPage, address: (id: string) => string): readonly Child[] {
  const { maker, edition } = page;
  const { html } = maker;
  const { site, frame } = edition;
  const kit = openKit(maker, frame, () => USUAL_ROOM);
  const groups = Object.entries(site.groups).flatMap(([group, name]) => [
    html('h2', {}, name),
    html(
      'ul',
      {},
      ...lessons
        .filter((lesson) => lesson.group === group)
        .map((lesson) => {
          const { title, question } = lesson.words(edition);
          return html('li', {}, html('a', { href: address(lesson.id) }, title), html('br'), question);
        }),
    ),
  ]);
  const others = [
    ['teacher', site.teacher],
    ['worksheets', site.worksheets],
    ['answers', site.answers],
  ].map(([id, name]) => html('li', {}, html('a', { href: address(id) }, name)));
  return [
    html('h1', {}, site.title),
    ...kit.text(site.intro),
    ...groups,
    html('ul', { class: 'others' }, ...others),
  ];
}

function show(page: OpenPage, name: string, address: (id: string) => string): void {
  const { edition, main, maker } = page;
  const stage = stageOf(page);
  main.removeAttribute('data-done');
  const lesson = lessons.find(({ id }) => id === name);
  if (lesson !== undefined) main.replaceChildren(lesson.element(edition, stage));
  else if (name === 'worksheets') {
    sheets(page, edition.site.sheetsNote, true, (each) => each.worksheet(edition, stage));
    return;
  } else if (name === 'answers') {
    sheets(page, edition.site.answersNote, false, (each) => each.answers(edition, stage));
    return;
  } else if (name === 'teacher')
    main.replaceChildren(
      ...openKit(maker, edition.frame, stage.width).text(edition.teacher, lessonLinks(page, address)),
    );
  else main.replaceChildren(...contents(page, address));
  main.setAttribute('data-done', '');
}

/** Fills a page by what it says that it is. */
export function openPage(page: OpenPage): void {
  if (page.page !== 'all') {
    show(page, page.page, (id) => `./${id}.html`);
    return;
  }
  const turn = (): void => show(page, page.hash(), (id) => `#${id}`);
  turn();
  page.changed(() => {
    turn();
    window.scrollTo(0, 0);
  });
}
