import type { Child } from '../pictures/document.js';
import type { Guess } from './ask.js';
import { openKit } from './kit.js';
import { type Lesson, lessonHead, type LessonWords, type Stage } from './lesson.js';

/** Empty lines of the table of readings. */
const LINES = 6;

/** A lesson on paper: question, prediction, a table for readings, the exercise. It holds no answer. */
export function worksheet<W extends LessonWords>(lesson: Lesson<W>, words: W, stage: Stage): HTMLElement {
  const kit = openKit(stage.maker, stage.frame, stage.width);
  const open = lesson.open(kit, words);
  const { html, frame } = kit;
  const rule = (label: string): HTMLElement => html('p', { class: 'rule' }, label);
  const prediction: readonly Child[] =
    open.ask.kind === 'pick'
      ? [html('ul', { class: 'boxes' }, ...(words.choices ?? []).map((each) => html('li', {}, each)))]
      : [rule(`${words.guess?.label ?? ''}, ${words.guess?.unit ?? ''}:`)];
  return html(
    'section',
    { class: 'sheet', 'data-lesson': lesson.id },
    html('p', { class: 'rule names' }, `${frame.pupil}:`, html('span', {}, `${frame.date}:`)),
    ...lessonHead(kit, open, words),
    html('p', {}, html('strong', {}, frame.predictFirst), ' ', words.ask),
    ...prediction,
    rule(`${frame.because}:`),
    html('h2', {}, frame.readings),
    html(
      'table',
      { class: 'blank' },
      html('thead', {}, html('tr', {}, ...words.readings.map((head) => html('th', {}, head)))),
      html(
        'tbody',
        {},
        ...Array.from({ length: LINES }, () => html('tr', {}, ...words.readings.map(() => html('td', {})))),
      ),
    ),
    html('h2', {}, frame.exercise),
    html('p', {}, ...kit.text(words.exercise)),
    ...[rule(''), rule('')],
  );
}

/** What the teacher has in hand: the answer to the prediction with its reasons, and that of the exercise, as the model has them now. */
export function teachersAnswer<W extends LessonWords>(
  lesson: Lesson<W>,
  words: W,
  stage: Stage,
): HTMLElement {
  const kit = openKit(stage.maker, stage.frame, stage.width);
  const open = lesson.open(kit, words);
  const { html, frame } = kit;
  const { ask } = open;
  const right: Guess = { value: ask.right, right: true, reply: [] };
  const said: Child =
    ask.kind === 'pick'
      ? (words.choices?.[ask.right] ?? '')
      : `${kit.number(ask.right, ask.decimals)} ${words.guess?.unit ?? ''}`;
  return html(
    'section',
    { class: 'sheet', 'data-lesson': lesson.id },
    html('h2', {}, words.title),
    html('p', {}, words.ask, ' ', html('strong', {}, said)),
    html('div', { class: 'shown' }, ...open.shown(right)),
    html('h3', {}, frame.exercise),
    html('p', {}, ...kit.text(words.exercise)),
    html('div', {}, ...open.answer()),
  );
}
