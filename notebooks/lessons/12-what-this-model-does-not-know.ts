import { createParameters, rowOf, type Run } from '@leat/core';
import { type Lesson, numberOf, runText } from '@leat/view/lesson';
import validation from '../../tests/published/VALIDATION.md?raw';
import { knownMisses, missedInSystems } from '../support/known-misses.js';
import { nitrogenShares } from '../support/nitrogen-shares.js';
import { smallSystem } from '../support/small-system.js';
import { placed, type Words } from '../support/words.js';
import type { words as english } from '../text/en/12-what-this-model-does-not-know.js';

const DENSITY = 'solids.settled-density';

const gasOf = (run: Run): number =>
  100 * (nitrogenShares(run).find(({ name }) => name === 'nitrogen gas')?.share ?? 0);

export const notKnown: Lesson<Words<typeof english>> = {
  id: '12-what-this-model-does-not-know',
  open(kit, words) {
    const { labels, file } = words;
    const nitrate = placed(words)('nitrate@sump');
    /** @param density dry matter in settled sludge, g/L */
    const systemOf = (density: number, feed: number): string =>
      smallSystem(
        { title: file, days: 90, feed, base: 40, parameters: { [DENSITY]: 1000 * density } },
        words.names,
      );
    const row = rowOf(createParameters(), DENSITY);
    const [low, high] = [row.low, row.high].map((each) => each / 1000);
    const loose = runText(systemOf(low, 60));
    const dense = runText(systemOf(high, 60));
    const end = (run: Run): number => numberOf(run, 'last', nitrate);
    return {
      system: dense,
      given: () =>
        kit.text(words.given, {
          value: [row.value / 1000, 0],
          low: [low, 0],
          high: [high, 0],
          dense: [end(dense), 1],
        }),
      ask: {
        kind: 'number',
        name: 'guess',
        from: 0,
        to: 60,
        step: 1,
        value: 25,
        right: end(loose),
        decimals: 1,
        near: 3,
      },
      shown: ({ value }) => [
        kit.bars({
          ...{ title: labels.bars, unit: 'mg N/L', most: 60, decimals: 1 },
          bars: [
            { name: labels.dense, value: end(dense) },
            { name: labels.loose, value: end(loose) },
          ],
          guess: { name: labels.loose, value },
        }),
        ...kit.text(words.shown, {
          loose: [end(loose), 1],
          'gas-loose': [gasOf(loose), 0],
          'gas-dense': [gasOf(dense), 0],
        }),
        kit.verdict(loose),
      ],
      sliders: [
        { name: 'density', from: low, to: high, step: 1, value: 20 },
        { name: 'feed', from: 20, to: 120, step: 10, value: 60 },
      ],
      changed({ density, feed }) {
        const text = systemOf(density, feed);
        const run = runText(text);
        return [
          kit.chart({
            ...{ title: labels.chart, unit: labels.unit },
            lines: [
              kit.course(run, nitrate, labels.yours, 'water'),
              kit.course(dense, nitrate, labels.denseShort, 'soft', '2 4'),
              kit.course(loose, nitrate, labels.looseShort, 'fish', '7 3'),
            ],
          }),
          ...kit.text(words.changed, {
            'gas-now': [gasOf(run), 1],
            end: kit.reading(file, run, 'last', nitrate, 1),
          }),
          kit.verdict(run),
          kit.file(file, text),
        ];
      },
      further() {
        const misses = knownMisses(validation);
        const inSystems = missedInSystems(validation);
        const folded = kit.html('details', {}, kit.html('summary', {}, labels.single));
        folded.append(
          kit.table(
            labels.single,
            [labels.value, labels.published, labels.modelSays, labels.reason],
            misses.map(({ what, published, model, reason }) => [what, published, model, reason]),
            0,
          ),
        );
        const tables = kit.html(
          'div',
          { lang: 'en' },
          kit.table(
            labels.systems,
            [labels.quantity, labels.published, labels.median, labels.band],
            inSystems.map(({ what, unit, published, median, band }) => [
              what,
              `${published} ${unit}`,
              median,
              band,
            ]),
            0,
          ),
          folded,
        );
        return [
          ...kit.text(words.leftOut),
          ...kit.text(words.misses, { missed: [inSystems.length, 0], single: [misses.length, 0] }),
          tables,
        ];
      },
      answer: () => kit.text(words.answer, { dense: [gasOf(dense), 0], loose: [gasOf(loose), 0] }),
      sources: () => [kit.sources(dense, ['solids.', 'denitrification.'])],
    };
  },
};
