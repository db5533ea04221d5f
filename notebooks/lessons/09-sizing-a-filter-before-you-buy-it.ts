import { findSize, handbookFilter, type SizeAnswer } from '@leat/core/analysis';
import { type Lesson, numberOf, runText } from '@leat/view/lesson';
import { smallSystem } from '../support/small-system.js';
import { placed, type Words } from '../support/words.js';
import type { words as english } from '../text/en/09-sizing-a-filter-before-you-buy-it.js';

/** Ammonia that is aimed at, mg N/L, and the largest filter that is looked at, L. */
const [GOAL, LARGEST] = [0.5, 150];

export const sizing: Lesson<Words<typeof english>> = {
  id: '09-sizing-a-filter-before-you-buy-it',
  open(kit, words) {
    const { labels, file } = words;
    const at = placed(words);
    const [tan, nitrite] = [at('tan@tank'), at('nitrite@tank')];
    const systemOf = (feed: number, media: number, temperature: number): string =>
      smallSystem({ title: file, days: 90, feed, media, temperature, base: feed, fish: 60 }, words.names);
    const first = runText(systemOf(150, 60, 24));
    const { parameters } = first.model;
    const handbookOf = (feed: number): number =>
      1000 *
      handbookFilter({
        feed,
        ammoniaPerFeed:
          parameters.value('feed.grower-32.protein') * parameters.value('limit.tan-per-protein.value'),
        arealRate: parameters.value('limit.areal-rate-fao.value'),
        specificSurface: parameters.value('media.moving-bed-carrier.surface'),
      }).volume;
    const searchOf = (temperature: number): SizeAnswer =>
      findSize({
        ...{ from: 2, to: LARGEST, want: 'smallest', within: 0.05, whole: true },
        judge: (value) => {
          const margin = GOAL - numberOf(runText(systemOf(150, value, temperature)), 'last', tan);
          return { value, margins: [margin], holds: margin >= 0 };
        },
      });
    const litres = ({ value }: SizeAnswer): string =>
      value === undefined ? labels.none : kit.number(value, 0);
    let known: SizeAnswer | undefined;
    const search = (): SizeAnswer => (known ??= searchOf(24));
    const goal = { text: labels.goal, value: GOAL, kind: 'limit' as const };
    return {
      system: first,
      ask: {
        ...{ kind: 'number', name: 'guess', from: 1, to: LARGEST, step: 1, value: 100, decimals: 0, near: 8 },
        // Many runs: only when somebody has answered.
        get right() {
          return search().value ?? Infinity;
        },
      },
      shown: ({ value }) => [
        kit.chart({
          ...{ title: labels.chart, unit: labels.unit, horizontal: labels.litres, levels: [goal] },
          lines: [
            {
              ...{ name: labels.model, colour: 'fish' },
              time: search().trials.map((trial) => trial.value),
              values: search().trials.map(({ margins }) => GOAL - margins[0]),
            },
          ],
          moments: [{ text: labels.you, time: value }],
        }),
        ...kit.text(words.shown, {
          search: litres(search()),
          trials: [search().trials.length, 0],
          handbook: [handbookOf(150), 0],
        }),
        kit.verdict(first),
      ],
      sliders: [
        { name: 'feed', from: 40, to: 250, step: 10, value: 150 },
        { name: 'media', from: 2, to: LARGEST, step: 1, value: 40 },
        { name: 'temperature', from: 16, to: 30, step: 1, value: 24 },
      ],
      changed({ feed, media, temperature }) {
        const text = systemOf(feed, media, temperature);
        const run = runText(text);
        return [
          kit.chart({
            ...{ title: labels.chartNow, unit: 'mg N/L', atLeast: 0.6, levels: [goal] },
            lines: [
              kit.course(run, tan, labels.ammonia, 'fish'),
              kit.course(run, nitrite, labels.nitrite, 'biofilm', '7 3'),
            ],
          }),
          ...kit.text(words.changed, {
            tan: kit.reading(file, run, 'last', tan, 3),
            nitrite: kit.reading(file, run, 'last', nitrite, 3),
            'handbook-now': [handbookOf(feed), 0],
          }),
          kit.verdict(run),
          kit.file(file, text),
        ];
      },
      answer: () =>
        kit.text(words.answer, {
          winter: litres(searchOf(20)),
          cold: litres(searchOf(18)),
          warm: litres(search()),
        }),
      sources: () => [
        ...kit.text(words.rates, {
          low: [parameters.number('limit.areal-rate-low.value').value, 1],
          high: [parameters.number('limit.areal-rate-warm-high.value').value, 0],
        }),
        kit.sources(first, ['aob.', 'biofilm.', 'feed.grower-32', 'fish.nile-tilapia.temperature']),
      ],
    };
  },
};
