import type { Run } from '@leat/core';
import { type Bar, type Lesson, numberOf, runText } from '@leat/view/lesson';
import { nitrogenShares } from '../support/nitrogen-shares.js';
import { smallSystem } from '../support/small-system.js';
import { placed, type Words } from '../support/words.js';
import type { words as english } from '../text/en/03-where-the-feed-goes.js';

const CROP = 'harvested crop';

const shareOf = (run: Run, name: string): number =>
  100 * (nitrogenShares(run).find((each) => each.name === name)?.share ?? 0);

export const feed: Lesson<Words<typeof english>> = {
  id: '03-where-the-feed-goes',
  open(kit, words) {
    const { labels, file } = words;
    const nitrate = placed(words)('nitrate@sump');
    const systemOf = (fed: number, planted: number): string =>
      smallSystem({ title: file, days: 90, feed: fed, planted, base: 40 }, words.names);
    const barsOf = (run: Run): readonly Bar[] =>
      nitrogenShares(run)
        .slice(0, 7)
        .map(({ name, share }) => ({ name: kit.fate(name), value: 100 * share }));
    const first = runText(systemOf(60, 4));
    const crop = shareOf(first, CROP);
    return {
      system: first,
      ask: {
        kind: 'number',
        name: 'guess',
        from: 0,
        to: 100,
        step: 1,
        value: 50,
        right: crop,
        decimals: 1,
        near: 4,
      },
      shown: ({ value }) => [
        kit.bars({
          ...{ title: labels.bars, unit: '%', most: 80, decimals: 1, bars: barsOf(first) },
          ...(value <= 80 && { guess: { name: kit.fate(CROP), value } }),
        }),
        ...kit.text(words.shown, {
          crop: [crop, 1],
          gas: [shareOf(first, 'nitrogen gas'), 0],
          fish: [shareOf(first, 'kept in living fish'), 0],
        }),
        kit.verdict(first),
      ],
      sliders: [
        { name: 'feed', from: 10, to: 120, step: 5, value: 30 },
        { name: 'planted', from: 0, to: 4, step: 0.5, value: 4 },
      ],
      changed({ feed: fed, planted }) {
        const text = systemOf(fed, planted);
        const run = runText(text);
        return [
          kit.bars({ title: labels.barsNow, unit: '%', most: 80, decimals: 1, bars: barsOf(run) }),
          ...kit.text(words.changed, {
            'crop-now': [shareOf(run, CROP), 1],
            area: [fed / Math.max(planted, 0.5), 0],
            end: kit.reading(file, run, 'last', nitrate, 1),
          }),
          kit.chart({
            ...{ title: labels.chart, unit: labels.unit },
            lines: [kit.course(run, nitrate, labels.nitrate, 'water')],
          }),
          kit.verdict(run),
          kit.file(file, text),
        ];
      },
      answer() {
        const fedBy = [20, 40, 80, 120].map((fed) => ({
          fed,
          end: numberOf(runText(systemOf(fed, 4)), 'last', nitrate),
        }));
        const most = fedBy.reduce((a, b) => (b.end > a.end ? b : a));
        return [
          kit.table(
            labels.nitrateBy,
            [labels.fed, labels.unit],
            fedBy.map(({ fed, end }) => [[fed, 0] as const, [end, 1] as const]),
            2,
          ),
          ...kit.text(words.answer, {
            most: [most.fed, 0],
            area: [most.fed / 4, 0],
            rule: [first.model.parameters.number('limit.feed-per-area-leafy-low.value').value, 0],
          }),
        ];
      },
      sources: () => [
        kit.sources(first, ['feed', 'crop.lettuce', 'fish.nile-tilapia.', 'solids.', 'denitrification']),
      ],
    };
  },
};
