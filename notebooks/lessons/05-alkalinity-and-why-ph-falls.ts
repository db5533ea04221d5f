import type { Run } from '@leat/core';
import { type Lesson, numberOf, runText } from '@leat/view/lesson';
import { smallSystem } from '../support/small-system.js';
import { placed, type Words } from '../support/words.js';
import type { words as english } from '../text/en/05-alkalinity-and-why-ph-falls.js';

/** The first day on which a course is under a value; absent: never. */
function firstUnder(run: Run, values: ArrayLike<number>, value: number): number | undefined {
  return run.samples.find((_, i) => values[i] < value)?.time;
}

export const alkalinity: Lesson<Words<typeof english>> = {
  id: '05-alkalinity-and-why-ph-falls',
  open(kit, words) {
    const { labels, file, names } = words;
    const at = placed(words);
    const [alk, pH, nitrate, tan] = ['alkalinity@sump', 'pH@sump', 'nitrate@sump', 'tan@tank'].map(at);
    const systemOf = (feed: number, base: number, ofMains: number, air?: number): string =>
      smallSystem(
        {
          ...{ title: file, days: 90, feed, base, alkalinity: ofMains, planted: 1 },
          ...(air !== undefined && { carbonDioxide: air }),
          start: `{ like: ${names.tap}, ammonia: 0.2 mg N/L, nitrate: 20 mg N/L, pH: 7.5 }`,
        },
        names,
      );
    const first = runText(systemOf(100, 0, 30));
    const course = (run: Run, series: string) => kit.course(run, series, '', 'fish').values;
    const guide = first.model.parameters.number('limit.tan-guide.value').value;
    const low = first.model.parameters.number('limit.ph-low.value').value;
    /** Days that tell the story: half the alkalinity gone, ammonia over the guide, and where each turns. */
    const daysOf = (run: Run) => ({
      half: firstUnder(run, course(run, alk), numberOf(run, 'first', alk) / 2),
      late: run.samples.find((_, i) => course(run, tan)[i] > guide)?.time,
      lowest: numberOf(run, 'day-of-lowest', pH),
      nitrate: numberOf(run, 'day-of-highest', nitrate),
    });
    const days = daysOf(first);
    const moment = (text: string, time: number | undefined) => (time === undefined ? [] : [{ text, time }]);
    const pictures = (run: Run): readonly Element[] => {
      const when = daysOf(run);
      return [
        kit.chart({
          ...{ title: labels.alkalinityChart, unit: labels.alkalinityUnit },
          lines: [kit.course(run, alk, labels.alkalinity, 'water')],
          moments: moment(labels.half, when.half),
        }),
        kit.chart({
          ...{ title: labels.pHChart, unit: 'pH', from: 4, atLeast: 8.5 },
          lines: [kit.course(run, pH, 'pH', 'fish')],
          levels: [{ text: labels.lowForFish, value: low, kind: 'limit' }],
          moments: [...moment(labels.late, when.late), ...moment(labels.lowest, when.lowest)],
        }),
        kit.chart({
          ...{ title: labels.nitrateChart, unit: labels.nitrateUnit },
          lines: [kit.course(run, nitrate, labels.nitrate, 'crop')],
          moments: moment(labels.highest, when.nitrate),
        }),
      ];
    };
    const lost = (from: number, to: number): number => course(first, pH)[from] - course(first, pH)[to];
    /** Which of the five choices the run bears out. */
    const borneOut = (): number => {
      const [start, least, end] = (['first', 'lowest', 'last'] as const).map((each) =>
        numberOf(first, each, pH),
      );
      if (least >= start) return 3;
      if (start - least < 0.3) return 4;
      if (end - least > 0.5) return 1;
      return lost(7, 12) > 1.5 * lost(1, 6) ? 2 : 0;
    };
    const day = (time: number | undefined) => (time === undefined ? labels.never : ([time, 0] as const));
    const perNitrogen = 50 * (2 / first.model.parameters.value('molar.nitrogen'));
    const feedNitrogen =
      100 *
      first.model.parameters.value('feed.grower-32.protein') *
      first.model.parameters.value('protein.nitrogen');
    return {
      system: first,
      ask: { kind: 'pick', right: borneOut() },
      shown: () => [
        ...pictures(first),
        ...kit.text(words.shown, {
          half: day(days.half),
          late: day(days.late),
          warned:
            days.late === undefined || days.half === undefined ? labels.never : [days.late - days.half, 0],
          guide: [guide, 0],
          start: [numberOf(first, 'first', alk), 2],
          slow: [lost(1, 6), 1],
          fast: [lost(7, 12), 1],
          tan: [numberOf(first, 'highest', tan), 1],
          'tan-day': [numberOf(first, 'day-of-highest', tan), 0],
          'nitrate-day': [days.nitrate, 0],
          'ph-day': [days.lowest, 0],
          'ph-low': [numberOf(first, 'lowest', pH), 1],
          'ph-end': [numberOf(first, 'last', pH), 1],
        }),
        kit.verdict(first),
      ],
      sliders: [
        { name: 'feed', from: 20, to: 140, step: 10, value: 100 },
        { name: 'base', from: 0, to: 200, step: 5, value: 40 },
        { name: 'alkalinity', from: 20, to: 300, step: 10, value: 30 },
        { name: 'air', from: 420, to: 2000, step: 20, value: 420 },
      ],
      changed({ feed, base, alkalinity: ofMains, air }) {
        const text = systemOf(feed, base, ofMains, air);
        const run = runText(text);
        return [
          ...pictures(run),
          ...kit.text(words.changed, {
            alkalinity: kit.reading(file, run, 'last', alk, 2),
            end: kit.reading(file, run, 'last', pH, 2),
            lowest: kit.reading(file, run, 'lowest', pH, 2),
            'lowest-day': kit.reading(file, run, 'day-of-lowest', pH, 0),
            tan: kit.reading(file, run, 'last', tan, 2),
          }),
          kit.verdict(run),
          kit.file(file, text),
        ];
      },
      answer: () =>
        kit.text(words.answer, {
          molar: [first.model.parameters.value('molar.nitrogen'), 2],
          grams: [perNitrogen, 2],
          'feed-nitrogen': [feedNitrogen, 1],
          back: [perNitrogen / 2, 2],
        }),
      sources: () => [kit.sources(first, ['aob.', 'carbonate', 'molar.', 'denitrification.'])],
    };
  },
};
