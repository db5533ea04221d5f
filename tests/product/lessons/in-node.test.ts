import { parseHTML } from 'linkedom';
import { newMaker } from '@leat/view/pictures';
import { describe, expect, it } from 'vitest';
import { lessons, type BoundLesson } from '../../../notebooks/lessons/index.js';
import { displayFor } from '../../../notebooks/page/display-for.js';
import type { Edition } from '../../../notebooks/support/edition.js';
import { edition as en } from '../../../notebooks/text/en/index.js';
import { edition as es } from '../../../notebooks/text/es/index.js';
import { openLarger } from '../../../packages/examples/lesson.js';
import { full } from '../../support/length.js';

/** The short form opens two lessons here, one of each kind of question; Chromium opens all of them. */
const short = ['01', '07'];
const tried = lessons.filter(({ id }) => full || short.includes(id.slice(0, 2)));

/** A lesson in a document that stands for a page. */
function opened(lesson: BoundLesson, edition: Edition): Element {
  const { document } = parseHTML('<!doctype html><html><body></body></html>');
  const maker = newMaker(document, displayFor(edition.frame.language));
  const element = lesson.element(edition, { maker, frame: edition.frame, width: () => 680 });
  document.body.append(element);
  return element;
}

/** Sends an event as a reader would. */
function send(element: Element, name: string): void {
  const { Event } = element.ownerDocument.defaultView as unknown as { Event: typeof globalThis.Event };
  element.dispatchEvent(new Event(name, { bubbles: true }));
}

/** Guesses: picks a choice, or takes the number at which the slider stands. */
async function guess(element: Element, pick = 0): Promise<void> {
  const radios = element.querySelectorAll('.predict input[type=radio]');
  if (radios.length > 0) send(radios[pick], 'change');
  const button = element.querySelector('.predict button');
  if (button === null) throw new Error('nothing to predict');
  send(button, 'click');
  // An ensemble works on until it is done.
  while (element.querySelector('.veil') !== null) await new Promise((resolve) => setTimeout(resolve, 20));
}

const numbers = (element: Element): readonly (readonly [string, string])[] =>
  [...element.querySelectorAll('output')].map((each) => [
    each.getAttribute('data-figure') ?? '',
    Number(each.getAttribute('data-value')).toPrecision(9),
  ]);

describe('a lesson before its prediction', () => {
  it.each(tried.map((lesson) => [lesson.id, lesson] as const))('%s shows no answer', (_, lesson) => {
    const element = opened(lesson, en);
    const words = lesson.words(en);
    expect(element.querySelector('.veil')?.textContent).toBe(en.frame.veil);
    expect(element.querySelectorAll('.shown *, .reply *, .chart, pre, details, .exercise')).toHaveLength(0);
    expect(element.querySelector('.predict button')?.hasAttribute('disabled')).toBe(
      words.choices !== undefined,
    );
    expect(element.querySelectorAll('svg.system')).toHaveLength(1);
    for (const reply of words.replies ?? []) expect(element.textContent).not.toContain(reply);
    expect(element.textContent).not.toContain(words.wrong[0]);
  });

  it('would be found out if it showed one', () => {
    const element = opened(lessons[0], en);
    const chart = element.ownerDocument.createElement('p');
    chart.setAttribute('class', 'chart');
    element.append(chart);
    expect(element.querySelectorAll('.chart')).toHaveLength(1);
  });
});

describe('a lesson after its prediction', () => {
  it.each(tried.map((lesson) => [lesson.id, lesson] as const))(
    '%s replies, shows, and says the same numbers in Spanish',
    async (_, lesson) => {
      const element = opened(lesson, en);
      await guess(element);
      expect(element.querySelector('.reply [data-right]')).not.toBeNull();
      expect(element.querySelectorAll('.verdict').length).toBeGreaterThan(1);
      expect(element.querySelectorAll('pre[data-system]').length).toBeGreaterThan(0);
      expect(element.querySelectorAll('[data-save]').length).toBeGreaterThan(0);
      expect(element.querySelector('[data-failed]')).toBeNull();
      expect(element.textContent).not.toMatch(/NaN|undefined|Infinity|\{[\w-]+\}/);
      const found = numbers(element);
      expect(found.length).toBeGreaterThan(3);
      const other = opened(lesson, es);
      await guess(other);
      expect(numbers(other).map(([, value]) => value)).toEqual(found.map(([, value]) => value));
      expect(other.querySelector('[data-failed]')).toBeNull();
    },
  );

  it('says of each pick whether it is right, by the run, and of one alone that it is', async () => {
    const drought = lessons.find(({ id }) => id === '07-drought');
    if (drought === undefined) throw new Error('no lesson of a drought');
    const element = opened(drought, en);
    await guess(element);
    const replies = [...element.querySelectorAll('.predict input[type=radio]')].map((radio, pick) => {
      send(radio, 'change');
      const reply = element.querySelector('.reply p');
      expect(reply?.textContent).toContain(drought.words(en).replies?.[pick]);
      return reply?.getAttribute('data-right');
    });
    expect(replies).toEqual(['false', 'false', 'true', 'false']);
  });
});

describe('worksheets', () => {
  const sheet = (lesson: BoundLesson, kind: 'worksheet' | 'answers'): Element => {
    const { document } = parseHTML('<!doctype html><html><body></body></html>');
    const maker = newMaker(document);
    return lesson[kind](en, { maker, frame: en.frame, width: () => 680 });
  };

  it('ask for the prediction and leave room for readings, and hold no answer', () => {
    const lesson = lessons.find(({ id }) => id === '07-drought') ?? lessons[0];
    const element = sheet(lesson, 'worksheet');
    const words = lesson.words(en);
    for (const choice of words.choices ?? []) expect(element.textContent).toContain(choice);
    expect(element.querySelectorAll('.blank th')).toHaveLength(words.readings.length);
    expect(element.querySelectorAll('.blank tbody tr').length).toBeGreaterThan(4);
    expect(element.querySelectorAll('output, .chart, .verdict')).toHaveLength(0);
    for (const reply of words.replies ?? []) expect(element.textContent).not.toContain(reply);
  });

  it('have their answers apart', () => {
    const lesson = lessons.find(({ id }) => id === '07-drought') ?? lessons[0];
    const element = sheet(lesson, 'answers');
    expect(element.querySelector('strong')?.textContent).toBe(lesson.words(en).choices?.[2]);
    expect(element.querySelectorAll('output').length).toBeGreaterThan(4);
  });
});

describe('the template of a lesson', () => {
  it('is a lesson: veiled before the guess, shown after it', async () => {
    const { document } = parseHTML('<!doctype html><html><body><main></main></body></html>');
    const main = document.querySelector('main');
    if (main === null) throw new Error('no main');
    openLarger(main);
    expect(main.querySelectorAll('.chart, .verdict, pre')).toHaveLength(0);
    await guess(main);
    expect(main.querySelectorAll('.chart')).toHaveLength(1);
    expect(main.querySelectorAll('.verdict')).toHaveLength(2);
    expect(main.querySelector('[data-failed]')).toBeNull();
    expect(main.textContent).toMatch(/Nitrate ends at \d/);
  });
});
