import { type Lesson, numberOf, runText } from '@leat/view/lesson';
import { drawnRuns, type DrawnRuns } from '../support/drawn-runs.js';
import { smallSystem } from '../support/small-system.js';
import { placed, type Words } from '../support/words.js';
import type { words as english } from '../text/en/10-how-sure-are-we.js';

const SAMPLING = { method: 'latin-hypercube', members: 40, seed: 7 } as const;

export const howSure: Lesson<Words<typeof english>> = {
  id: '10-how-sure-are-we',
  open(kit, words) {
    const { labels, file, names } = words;
    const nitrite = placed(words)('nitrite@tank');
    const systemOf = (feed: number, seeded: number): string =>
      smallSystem(
        {
          ...{ title: file, days: 90, feed, base: 60, planted: 0 },
          start: `{ like: ${names.tap}, ammonia: 0.1 mg N/L, pH: 7.7 }`,
          biofilm: seeded === 0 ? 'uncycled' : `${seeded} %`,
        },
        names,
      );
    const first = runText(systemOf(30, 0));
    const best = numberOf(first, 'highest', nitrite);
    const status = kit.html('p', { class: 'small', role: 'status' });
    let opened: DrawnRuns | undefined;
    const runs = (): DrawnRuns => (opened ??= drawnRuns(systemOf(30, 0), SAMPLING, `highest ${nitrite}`));
    const bands = () => {
      const { times, series } = runs().result();
      const found = series.find(({ name }) => name === nitrite);
      if (found === undefined) throw new Error(`no bands of ${nitrite}`);
      return { time: times, low: found.band90[0], high: found.band90[1], median: found.median };
    };
    return {
      system: first,
      given: () => [...kit.text(words.given, { best: [best, 1] }), status],
      ask: {
        ...{ kind: 'number', name: 'guess', from: 0, to: 80, step: 1, value: 20, decimals: 1, near: 5 },
        get right() {
          return Math.max(...runs().answers());
        },
      },
      ready: () =>
        runs().finish((done) => {
          status.replaceChildren(
            ...kit.text(words.status, { done: String(done), all: String(SAMPLING.members) }),
          );
        }),
      shown({ value }) {
        const { time, low, high, median } = bands();
        const answers = runs().answers();
        return [
          kit.chart({
            ...{ title: labels.chart, unit: labels.unit, band: { time, low, high } },
            lines: [
              kit.course(first, nitrite, labels.best, 'biofilm', '7 3'),
              { name: labels.median, colour: 'water', time, values: median },
            ],
            levels: [{ text: kit.frame.yourGuess, value, kind: 'guess' }],
          }),
          ...kit.text(words.shown, {
            count: [answers.length, 0],
            lowest: [Math.min(...answers), 1],
            highest: [Math.max(...answers), 1],
          }),
          kit.verdict(first),
        ];
      },
      sliders: [
        { name: 'level', from: 1, to: 60, step: 1, value: 20 },
        { name: 'feed', from: 5, to: 60, step: 5, value: 20 },
        { name: 'seeded', from: 0, to: 10, step: 1, value: 0 },
      ],
      changed({ level, feed, seeded }) {
        const answers = runs().answers();
        const text = systemOf(feed, seeded);
        const run = runText(text);
        return [
          ...kit.text(words.below, {
            below: [answers.filter((each) => each < level).length, 0],
            count: [answers.length, 0],
            level: [level, 0],
          }),
          kit.chart({
            ...{ title: labels.chartNow, unit: labels.unit },
            lines: [
              kit.course(run, nitrite, labels.yours, 'biofilm'),
              kit.course(first, nitrite, labels.above, 'soft', '2 4'),
            ],
            levels: [{ text: labels.level, value: level, kind: 'limit' }],
          }),
          ...kit.text(words.changed, {
            peak: kit.reading(file, run, 'highest', nitrite, 2),
            day: kit.reading(file, run, 'day-of-highest', nitrite, 0),
          }),
          kit.verdict(run),
          kit.file(file, text),
        ];
      },
      answer() {
        const sorted = [...runs().answers()].sort((a, b) => a - b);
        const last = sorted.length === SAMPLING.members ? sorted[35] : Number.NaN;
        return kit.text(words.answer, { share: [90, 0], level: [Math.ceil(last), 0], best: [best, 1] });
      },
      sources: () => [...kit.text(words.sources), kit.sources(first, ['aob.', 'nob.', 'biofilm.'])],
    };
  },
};
