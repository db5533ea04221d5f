import type { Run } from '@leat/core';
import { type Lesson, numberOf, runText } from '@leat/view/lesson';
import { smallSystem } from '../support/small-system.js';
import { placed, type Words } from '../support/words.js';
import type { words as english } from '../text/en/06-unplanted-beds.js';

/** Steps of the kits: mg N/L of nitrate, and drops of alkalinity, meq/L (common practice). */
const [NITRATE_STEP, ALKALINITY_STEP] = [5, 0.36];

export const unplanted: Lesson<Words<typeof english>> = {
  id: '06-unplanted-beds',
  open(kit, words) {
    const { labels, file } = words;
    const at = placed(words);
    const [nitrate, alk, tan, pH] = ['nitrate@sump', 'alkalinity@sump', 'tan@tank', 'pH@sump'].map(at);
    const systemOf = (planted: number, feed: number, base: number): string =>
      smallSystem({ title: file, days: 90, feed, base, planted, alkalinity: 100 }, words.names);
    const full = runText(systemOf(4, 80, 0));
    const bare = runText(systemOf(0, 80, 0));
    const change = (series: string): number =>
      100 * (numberOf(bare, 'last', series) / numberOf(full, 'last', series) - 1);
    /** First day on which bare and planted are further apart than a step of the kit; absent: never. */
    const toldOn = (series: string, step: number): number | undefined => {
      const { time, values } = kit.course(bare, series, '', 'fish');
      const planted = kit.course(full, series, '', 'fish').values;
      return time.find((_, i) => Math.abs(values[i] - planted[i]) > step);
    };
    const pair = (run: Run, series: string, unit: string, name: string): Element =>
      kit.chart({
        ...{ title: `${unit}: ${labels.planted}, ${name}`, unit },
        lines: [
          kit.course(full, series, labels.planted, 'crop', '7 3'),
          kit.course(run, series, name, 'fish'),
        ],
      });
    const high = numberOf(bare, 'highest', nitrate);
    const highDay = numberOf(bare, 'day-of-highest', nitrate);
    /** Which of the three choices the run bears out. */
    const borneOut = (): number => {
      if (high < numberOf(bare, 'first', nitrate) + NITRATE_STEP) return 2;
      return highDay < 80 ? 1 : 0;
    };
    const day = (time: number | undefined): string =>
      time === undefined ? labels.never : kit.number(time, 0);
    return {
      system: full,
      ask: { kind: 'pick', right: borneOut() },
      shown: () => [
        pair(bare, nitrate, labels.nitrateUnit, labels.bare),
        pair(bare, alk, labels.alkalinityUnit, labels.bare),
        ...kit.text(words.shown, {
          'nitrate-day': [highDay, 0],
          'nitrate-high': [high, 0],
          end: [numberOf(bare, 'last', nitrate), 0],
          'nitrate-told': day(toldOn(nitrate, NITRATE_STEP)),
          'alkalinity-told': day(toldOn(alk, ALKALINITY_STEP)),
          'tan-change': [change(tan), 0],
          'nitrate-change': [change(nitrate), 0],
          'alkalinity-change': [change(alk), 0],
        }),
        kit.verdict(bare),
      ],
      sliders: [
        { name: 'planted', from: 0, to: 4, step: 0.5, value: 2 },
        { name: 'feed', from: 20, to: 120, step: 10, value: 80 },
        { name: 'base', from: 0, to: 150, step: 5, value: 0 },
      ],
      changed({ planted, feed, base }) {
        const text = systemOf(planted, feed, base);
        const run = runText(text);
        return [
          pair(run, nitrate, labels.nitrateUnit, labels.yours),
          pair(run, alk, labels.alkalinityUnit, labels.yours),
          ...kit.text(words.changed, {
            nitrate: kit.reading(file, run, 'last', nitrate, 1),
            alkalinity: kit.reading(file, run, 'last', alk, 2),
            pH: kit.reading(file, run, 'last', pH, 2),
            tan: kit.reading(file, run, 'last', tan, 2),
          }),
          kit.verdict(run),
          kit.file(file, text),
        ];
      },
      answer() {
        const halved = runText(systemOf(0, 40, 0));
        const dosed = runText(systemOf(0, 80, 20));
        const row = (name: string, run: Run) => [
          name,
          [numberOf(run, 'last', nitrate), 0] as const,
          [numberOf(run, 'last', alk), 2] as const,
        ];
        return [
          kit.table(
            labels.ends,
            ['', labels.nitrateUnit, labels.alkalinityUnit],
            [
              row(labels.bare80, bare),
              row(labels.bare40, halved),
              row(labels.bareDosed, dosed),
              row(labels.planted80, full),
            ],
          ),
          ...kit.text(words.answer),
        ];
      },
      sources: () => [kit.sources(full, ['crop.', 'solids.', 'denitrification.'])],
    };
  },
};
