import type { Run } from '@leat/core';
import { type Lesson, numberOf, runText } from '@leat/view/lesson';
import { smallSystem } from '../support/small-system.js';
import { placed, type Words } from '../support/words.js';
import type { words as english } from '../text/en/04-starting-a-biofilter.js';

export const biofilter: Lesson<Words<typeof english>> = {
  id: '04-starting-a-biofilter',
  open(kit, words) {
    const { labels, file, names } = words;
    const at = placed(words);
    const [tan, nitrite] = [at('tan@tank'), at('nitrite@tank')];
    const systemOf = (temperature: number, seeded: number, feed: number): string =>
      smallSystem(
        {
          ...{ title: file, days: 90, feed, temperature, base: 60, planted: 0 },
          biofilm: seeded === 0 ? 'uncycled' : `${seeded} %`,
          start: `{ like: ${names.tap}, ammonia: 0.1 mg N/L, pH: 7.7 }`,
        },
        names,
      );
    const first = runText(systemOf(24, 0, 30));
    const poisons = (run: Run) => [
      kit.course(run, tan, labels.ammonia, 'fish'),
      kit.course(run, nitrite, labels.nitrite, 'biofilm', '7 3'),
    ];
    const guide = {
      ...{ text: labels.guide, kind: 'limit' as const },
      value: first.model.parameters.number('limit.nitrite-guide.value').value,
    };
    const peak = (series: string) => ({
      day: numberOf(first, 'day-of-highest', series),
      high: numberOf(first, 'highest', series),
    });
    const [ammonia, second] = [peak(tan), peak(nitrite)];
    /** Which of the four choices the run bears out. */
    const borneOut = (): number => {
      if (numberOf(first, 'last', tan) > 0.8 * ammonia.high) return 3;
      if (Math.abs(second.day - ammonia.day) < 3) return 0;
      return second.day > ammonia.day ? 1 : 2;
    };
    return {
      system: first,
      ask: { kind: 'pick', right: borneOut() },
      shown: () => [
        kit.chart({ title: labels.chart, unit: 'mg N/L', lines: poisons(first), levels: [guide] }),
        ...kit.text(words.shown, {
          'tan-day': [ammonia.day, 0],
          'tan-high': [ammonia.high, 1],
          'nitrite-day': [second.day, 0],
          'nitrite-high': [second.high, 1],
        }),
        kit.verdict(first),
      ],
      sliders: [
        { name: 'temperature', from: 14, to: 30, step: 1, value: 18 },
        { name: 'seeded', from: 0, to: 10, step: 1, value: 0 },
        { name: 'feed', from: 5, to: 60, step: 5, value: 30 },
      ],
      changed({ temperature, seeded, feed }) {
        const text = systemOf(temperature, seeded, feed);
        const run = runText(text);
        return [
          kit.chart({ title: labels.chartNow, unit: 'mg N/L', lines: poisons(run), levels: [guide] }),
          ...kit.text(words.changed, {
            tan: kit.reading(file, run, 'highest', tan, 2),
            'tan-day': kit.reading(file, run, 'day-of-highest', tan, 0),
            nitrite: kit.reading(file, run, 'highest', nitrite, 2),
            'nitrite-day': kit.reading(file, run, 'day-of-highest', nitrite, 0),
          }),
          kit.verdict(run),
          kit.file(file, text),
        ];
      },
      answer: () =>
        kit.text(words.answer, {
          seeded: [numberOf(runText(systemOf(24, 5, 30)), 'highest', nitrite), 2],
          unseeded: [second.high, 1],
        }),
      sources: () => [kit.sources(first, ['aob.', 'nob.', 'biofilm.', 'limit.nitrite', 'limit.tan'])],
    };
  },
};
