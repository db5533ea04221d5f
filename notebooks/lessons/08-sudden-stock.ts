import type { Run } from '@leat/core';
import { type Lesson, numberOf, runText } from '@leat/view/lesson';
import { smallSystem } from '../support/small-system.js';
import { placed, type Words } from '../support/words.js';
import type { words as english } from '../text/en/08-sudden-stock.js';

export const suddenStock: Lesson<Words<typeof english>> = {
  id: '08-sudden-stock',
  open(kit, words) {
    const { labels, file, names } = words;
    const at = placed(words);
    const [tan, nitrite, oxygen] = ['tan@tank', 'nitrite@tank', 'oxygen@tank'].map(at);
    const systemOf = (added: number, steps: number, media: number): string =>
      smallSystem(
        {
          ...{ title: file, days: 90, feed: 40, media, base: 60, biofilm: '15 %' },
          actions: Array.from({ length: steps }, (_, step) => {
            const day = 20 + 7 * step;
            const all = 30 + (added * (step + 1)) / steps;
            return [
              `{ at: ${day} d, stock: { cohort: ${names.fish}, number: ${added / steps}, mass: 150 g } }`,
              `{ at: ${day} d, feed: { cohort: ${names.fish}, ration: ${(40 * all) / 30} g/d } }`,
            ];
          }).flat(),
        },
        names,
      );
    const first = runText(systemOf(60, 1, 10));
    const tanOn = (run: Run, day: number): number => kit.course(run, tan, '', 'fish').values[day];
    const lines = (run: Run) => [
      kit.course(run, tan, labels.ammonia, 'fish'),
      kit.course(run, nitrite, labels.nitrite, 'biofilm', '7 3'),
    ];
    const guide = {
      ...{ text: labels.guide, kind: 'limit' as const },
      value: first.model.parameters.number('limit.tan-guide.value').value,
    };
    const peak = numberOf(first, 'highest', tan);
    return {
      system: first,
      ask: {
        kind: 'number',
        name: 'guess',
        from: 0,
        to: 6,
        step: 0.1,
        value: 3,
        right: peak,
        decimals: 1,
        near: 0.3,
      },
      shown: ({ value }) => [
        kit.chart({
          ...{ title: labels.chart, unit: 'mg N/L', lines: lines(first) },
          levels: [guide, { text: kit.frame.yourGuess, value, kind: 'guess' }],
          moments: [{ text: labels.stocked, time: 20 }],
        }),
        ...kit.text(words.shown, {
          before: [tanOn(first, 20), 2],
          peak: [peak, 2],
          'peak-day': [numberOf(first, 'day-of-highest', tan), 0],
          after: [tanOn(first, 42), 2],
          end: [tanOn(first, 90), 2],
        }),
        kit.verdict(first),
      ],
      sliders: [
        { name: 'added', from: 0, to: 120, step: 12, value: 60 },
        { name: 'steps', from: 1, to: 6, step: 1, value: 3 },
        { name: 'media', from: 5, to: 100, step: 5, value: 10 },
      ],
      changed({ added, steps, media }) {
        const text = systemOf(added, steps, media);
        const run = runText(text);
        return [
          kit.chart({
            ...{ title: labels.chartNow, unit: 'mg N/L', lines: lines(run), levels: [guide], atLeast: 1 },
            moments: [{ text: labels.firstStocked, time: 20 }],
          }),
          ...kit.text(words.changed, {
            tan: kit.reading(file, run, 'highest', tan, 2),
            nitrite: kit.reading(file, run, 'highest', nitrite, 2),
            oxygen: kit.reading(file, run, 'lowest', oxygen, 2),
          }),
          kit.verdict(run),
          kit.file(file, text),
        ];
      },
      answer() {
        const row = (name: string, run: Run) => [
          name,
          [numberOf(run, 'highest', tan), 2] as const,
          [tanOn(run, 48), 2] as const,
        ];
        return [
          kit.table(
            labels.compared,
            ['', labels.highest, labels.day48],
            [
              row(labels.oneStep, first),
              row(labels.threeSteps, runText(systemOf(60, 3, 10))),
              row(labels.twenty, runText(systemOf(60, 1, 20))),
            ],
          ),
          ...kit.text(words.answer),
        ];
      },
      sources: () => [kit.sources(first, ['aob.', 'biofilm.'])],
    };
  },
};
