import { bibliography, type Run, seriesOf, verdictOf } from '@leat/core';
import type { Child, Maker } from '../pictures/document.js';
import { fatePhrase } from '../text/names.js';
import { verdictLines } from '../text/verdict.js';
import { bars, type BarsOptions } from './bars.js';
import { chart, type ChartOptions, type Colour, type Line } from './chart.js';
import { drawnSystem } from './drawn.js';
import { fill, type Filling, figure, numberText, plainly } from './fill.js';
import { numberOf, type Statistic } from './number-of.js';
import { saveButton } from './save.js';
import type { LessonFrame } from './words.js';

/** Work that takes many runs: what came out, or steps that say how far they are before they end with it. */
export type Later = Child | Generator<string, Child>;

/** What a lesson draws and writes with, bound to its page and its language. */
export interface Kit {
  readonly maker: Maker;
  readonly frame: LessonFrame;
  /** An element, as of `newMaker`. */
  readonly html: Maker['html'];
  /** Courses over time. */
  chart(options: ChartOptions): Element;
  /** Lying bars. */
  bars(options: BarsOptions): Element;
  /** The system of a run, drawn. */
  system(run: Run): Element;
  /** A series of a run as a line of a picture. */
  course(run: Run, series: string, name: string, colour: Colour, dash?: string): Line;
  /** A text with its places filled: see `fill`. */
  text(text: string, fillings?: Readonly<Record<string, Filling>>): readonly ChildNode[];
  /** A number that carries what it is a number of, so that a check can run the file of that name and compare. */
  reading(file: string, run: Run, statistic: Statistic, series: string, decimals: number): HTMLElement;
  /** A number as text. */
  number(value: number, decimals: number): string;
  /** What a way of nitrogen is called, by the name that the library gives it. */
  fate(name: string): string;
  /** What a run comes to, in the lines that `leat run` begins with. */
  verdict(run: Run): HTMLElement;
  /** The file of a run, folded, with a button that saves it. */
  file(name: string, text: string): HTMLElement;
  /** A table; cells in columns of numbers stand right. */
  table(
    caption: string,
    heads: readonly string[],
    rows: readonly (readonly Filling[])[],
    numbers?: number,
  ): HTMLElement;
  /** A button for what takes many runs: it says that it is at work, then gives way to what came out. */
  later(label: string, work: () => Later): HTMLElement;
  /** Where the numbers are from that a run read: those whose ids begin with one of `about`, the others folded. */
  sources(run: Run, about: readonly string[]): HTMLElement;
}

function fileElement(maker: Maker, frame: LessonFrame, name: string, text: string): HTMLElement {
  const trimmed = `${text.trim()}\n`;
  return maker.html(
    'details',
    { class: 'file' },
    maker.html('summary', {}, plainly(frame.file, { name })),
    maker.html('p', {}, frame.fileText),
    saveButton(maker, frame.save, `${name.replaceAll(' ', '-')}.yaml`, trimmed),
    maker.html('pre', { tabindex: 0, 'data-system': name }, trimmed),
  );
}

function sourcesElement(maker: Maker, frame: LessonFrame, run: Run, about: readonly string[]): HTMLElement {
  const { parameters } = run.model;
  const entries = bibliography(parameters.used(), parameters);
  type Entry = (typeof entries)[number];
  const item = ({ citation, mark, ids }: Entry): HTMLElement => {
    const more = ids.length > 6 ? ` ${plainly(frame.moreNumbers, { count: String(ids.length - 6) })}` : '';
    return maker.html(
      'li',
      {},
      `${citation} [${mark}] `,
      maker.html('span', { class: 'ids' }, ids.slice(0, 6).join(', ') + more),
    );
  };
  const mine = entries
    .map((entry): Entry => ({
      ...entry,
      ids: entry.ids.filter((id) => about.some((start) => id.startsWith(start))),
    }))
    .filter(({ ids }) => ids.length > 0);
  return maker.html(
    'div',
    { class: 'sources', lang: 'en' },
    maker.html('ul', {}, ...mine.map(item)),
    maker.html(
      'details',
      {},
      maker.html('summary', {}, plainly(frame.allSources, { count: String(entries.length) })),
      maker.html('ul', {}, ...entries.map(item)),
    ),
    maker.html('p', { class: 'small', lang: frame.language }, frame.marks),
  );
}

/** Time for words to be painted before the page is busy, ms. */
const PAINTED = 40;

function laterElement(maker: Maker, frame: LessonFrame, label: string, work: () => Later): HTMLElement {
  const button = maker.html('button', { type: 'button' }, label);
  const box = maker.html('div', { class: 'work', 'aria-live': 'polite' }, button);
  const soon = (act: () => void): void => {
    setTimeout(() => {
      try {
        act();
      } catch (error) {
        const said = error instanceof Error ? error.message : String(error);
        box.replaceChildren(maker.html('p', { class: 'caution', 'data-failed': '' }, said));
      }
    }, PAINTED);
  };
  const goOn = (steps: Generator<string, Child>): void => {
    const step = steps.next();
    if (step.done === true) {
      box.replaceChildren(step.value);
      return;
    }
    box.replaceChildren(maker.html('p', {}, `${frame.atWork} ${step.value}`));
    soon(() => goOn(steps));
  };
  button.addEventListener('click', () => {
    box.replaceChildren(maker.html('p', {}, frame.atWork));
    soon(() => {
      const out = work();
      if (typeof out === 'object' && 'next' in out) goOn(out);
      else box.replaceChildren(out);
    });
  });
  return box;
}

/** Opens the kit of a page. @param width room for pictures, px, asked each time one is drawn */
export function openKit(maker: Maker, frame: LessonFrame, width: () => number): Kit {
  const canvas = () => ({ maker, frame, width: width() });
  const { html } = maker;
  const { language } = frame;
  const cell = (given: Filling, tag: string, number: boolean): HTMLElement =>
    html(
      tag,
      number ? { class: 'number' } : {},
      typeof given === 'string' || 'nodeType' in given ? given : numberText(given[0], given[1], language),
    );
  return {
    ...{ maker, frame, html },
    chart: (options) => chart(canvas(), options),
    bars: (options) => bars(canvas(), options),
    system: (run) => drawnSystem(canvas(), run),
    course: (run, series, name, colour, dash) => ({
      ...{ name, colour },
      time: run.samples.map(({ time }) => time),
      values: seriesOf(run, series).values,
      ...(dash !== undefined && { dash }),
    }),
    text: (text, fillings = {}) => fill(maker, text, fillings, language),
    reading(file, run, statistic, series, decimals) {
      const shown = figure(
        maker,
        `${statistic} ${series}`,
        [numberOf(run, statistic, series), decimals],
        language,
      );
      for (const [key, value] of Object.entries({ file, statistic, series }))
        shown.setAttribute(`data-${key}`, value);
      return shown;
    },
    fate: (name) => fatePhrase(name, maker.display),
    number: (value, decimals) => numberText(value, decimals, language),
    verdict: (run) =>
      html(
        'ul',
        { class: 'verdict' },
        ...verdictLines(verdictOf(run), run.model.scenario.startDate, maker.display).map((line) =>
          html('li', {}, line),
        ),
      ),
    file: (name, text) => fileElement(maker, frame, name, text),
    table: (caption, heads, rows, numbers = heads.length - 1) => {
      const right = (i: number): boolean => i >= heads.length - numbers;
      return html(
        'div',
        { class: 'wide', tabindex: 0, role: 'region', 'aria-label': caption },
        html(
          'table',
          {},
          html('caption', { class: 'small' }, caption),
          html('thead', {}, html('tr', {}, ...heads.map((head, i) => cell(head, 'th', right(i))))),
          html(
            'tbody',
            {},
            ...rows.map((row) => html('tr', {}, ...row.map((each, i) => cell(each, 'td', right(i))))),
          ),
        ),
      );
    },
    later: (label, work) => laterElement(maker, frame, label, work),
    sources: (run, about) => sourcesElement(maker, frame, run, about),
  };
}
