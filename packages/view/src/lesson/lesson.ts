import type { Run } from '@leat/core';
import type { Child, Maker } from '../pictures/document.js';
import { type Ask, type AskWords, type Guess, predict } from './ask.js';
import { type Kit, openKit } from './kit.js';
import { slider, type SliderRange, type SliderWords } from './slider.js';
import type { LessonFrame } from './words.js';

/** The words of a lesson, apart from its code: HTML with places in braces where numbers go (see `fill`). */
export interface LessonWords extends AskWords {
  readonly title: string;
  readonly question: string;
  /** What one must know to predict. It tells no answer. */
  readonly intro: string;
  readonly sliders: Readonly<Record<string, SliderWords>>;
  readonly wrong: readonly string[];
  readonly caution: string;
  readonly exercise: string;
  /** Columns of the table of readings on the worksheet. */
  readonly readings: readonly string[];
}

/** A lesson whose first system has run. Only `given` may be seen before the prediction. */
export interface OpenLesson {
  /** A run of the system that is drawn. */
  readonly system: Run;
  /** What stands beside the question: it may not hold the answer. */
  readonly given?: () => readonly Child[];
  readonly ask: Ask;
  /** What must have been worked out before an answer can be judged; absent: nothing. */
  readonly ready?: () => Promise<unknown>;
  /** What the model says, and why. */
  readonly shown: (guess: Guess) => readonly Child[];
  readonly sliders: readonly SliderRange[];
  /** What comes out with the sliders as they stand. */
  readonly changed: (values: Readonly<Record<string, number>>) => readonly Child[];
  /** Further parts behind the sliders. */
  readonly further?: () => readonly Child[];
  readonly answer: () => readonly Child[];
  readonly sources: () => readonly Child[];
}

/** A lesson: a name for its file, and what opens it with the words of a language. */
export interface Lesson<W extends LessonWords = LessonWords> {
  /** Such as `07-drought`. */
  readonly id: string;
  open(kit: Kit, words: W): OpenLesson;
}

/** Where a lesson is shown. */
export interface Stage {
  readonly maker: Maker;
  readonly frame: LessonFrame;
  /** Room for pictures, px. */
  readonly width: () => number;
}

/** Does work at the next frame, and only the last that was asked for: fingers are faster than runs. */
function atNextFrame(): (work: () => void) => void {
  if (typeof requestAnimationFrame !== 'function') return (work) => work();
  let waiting: (() => void) | undefined;
  return (work) => {
    if (waiting === undefined)
      requestAnimationFrame(() => {
        const now = waiting;
        waiting = undefined;
        now?.();
      });
    waiting = work;
  };
}

/** Sliders and what comes out with them; what cannot be run says why, and the sliders stay. */
function changing(kit: Kit, lesson: OpenLesson, words: LessonWords): HTMLElement {
  const out = kit.html('div', { class: 'changed' });
  const soon = atNextFrame();
  const values = (): Record<string, number> =>
    Object.fromEntries(lesson.sliders.map(({ name }, i) => [name, fields[i].value()]));
  const redraw = (): void => {
    try {
      out.replaceChildren(...lesson.changed(values()));
    } catch (error) {
      const said = error instanceof Error ? error.message : String(error);
      out.replaceChildren(kit.html('p', { class: 'caution', 'data-failed': '' }, said));
    }
  };
  const fields = lesson.sliders.map((range) =>
    slider(kit.maker, range, words.sliders[range.name], kit.frame, () => soon(redraw)),
  );
  redraw();
  return kit.html('div', {}, ...fields.map(({ element }) => element), out);
}

/** A folded answer, worked out when it is opened. */
export function foldedAnswer(kit: Kit, answer: () => readonly Child[]): HTMLElement {
  const details = kit.html('details', { class: 'exercise' }, kit.html('summary', {}, kit.frame.answer));
  details.addEventListener('toggle', () => details.append(kit.html('div', {}, ...answer())), { once: true });
  return details;
}

/** Everything that comes after the prediction but the reply to it. */
function rest(kit: Kit, lesson: OpenLesson, words: LessonWords): readonly Child[] {
  const { html, frame } = kit;
  return [
    html('h2', {}, frame.change),
    changing(kit, lesson, words),
    ...(lesson.further?.() ?? []),
    html('h2', {}, frame.wrong),
    html('ul', {}, ...words.wrong.map((line) => html('li', {}, ...kit.text(line)))),
    html('p', { class: 'caution' }, html('strong', {}, frame.caution), ' ', ...kit.text(words.caution)),
    html('h2', {}, frame.exercise),
    html('p', { class: 'task' }, ...kit.text(words.exercise)),
    foldedAnswer(kit, lesson.answer),
    html('h2', {}, frame.sources),
    ...lesson.sources(),
  ];
}

/** Title, question and what must be known to predict. */
export function lessonHead(kit: Kit, lesson: OpenLesson, words: LessonWords): readonly Child[] {
  const { html } = kit;
  return [
    html('h1', {}, words.title),
    html('p', { class: 'question' }, words.question),
    html('div', { class: 'intro' }, ...kit.text(words.intro)),
    html('figure', {}, kit.system(lesson.system)),
    ...(lesson.given?.() ?? []),
  ];
}

/**
 * A lesson as a part of a page. Nothing that comes after the prediction is in the page before it: not for the eye, not for a
 * screen reader, not on paper.
 */
export function lessonElement<W extends LessonWords>(
  lesson: Lesson<W>,
  words: W,
  { maker, frame, width }: Stage,
): HTMLElement {
  const kit = openKit(maker, frame, width);
  const open = lesson.open(kit, words);
  const { html } = kit;
  const reply = html('div', { class: 'reply', role: 'status' });
  const shown = html('div', { class: 'shown' });
  const after = html('div', { class: 'after' }, html('p', { class: 'veil' }, frame.veil));
  let veiled = true;
  const tell = (guess: Guess): void => {
    reply.replaceChildren(
      html(
        'p',
        { class: guess.right ? 'right' : 'not-right', 'data-right': String(guess.right) },
        ...guess.reply,
      ),
    );
    shown.replaceChildren(...open.shown(guess));
    if (!veiled) return;
    veiled = false;
    after.replaceChildren(...rest(kit, open, words));
  };
  const told = (judge: () => Guess): void => {
    if (open.ready === undefined) {
      tell(judge());
      return;
    }
    reply.replaceChildren(html('p', {}, frame.atWork));
    void open.ready().then(() => tell(judge()));
  };
  return html(
    'article',
    { class: 'lesson', 'data-lesson': lesson.id },
    ...lessonHead(kit, open, words),
    predict(maker, open.ask, words, frame, told),
    ...[reply, shown, after],
  );
}
