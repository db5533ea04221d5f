import type { Run } from '@leat/core';
import { type Lesson, numberOf, runText } from '@leat/view/lesson';
import { smallSystem } from '../support/small-system.js';
import { placed, type Words } from '../support/words.js';
import type { words as english } from '../text/en/15-a-drought-summer.js';

/** Length of the summer, d, the day on which something is done, and the ration, L/d. */
const [SUMMER, DAY, RATION] = [120, 30, 20];

const tripOf = (run: Run): number | undefined => run.events.find(({ kind }) => kind === 'pump-trip')?.time;

export const droughtSummer: Lesson<Words<typeof english>> = {
  id: '15-a-drought-summer',
  open(kit, words) {
    const { labels, file, names } = words;
    const at = placed(words);
    const [volume, tan, nitrate] = ['volume@sump', 'tan@tank', 'nitrate@sump'].map(at);
    const loss = 'evapotranspiration@system';
    const systemOf = (cap: number, et0: number, actions: readonly string[]): string =>
      smallSystem({ title: file, days: SUMMER, feed: 60, base: 40, sump: 1000, cap, et0, actions }, names);
    const fed = (day: number, percent: number): string =>
      `{ at: ${day} d, feed: { cohort: ${names.fish}, factor: ${percent / 100} } }`;
    const fallow = (day: number): string => `{ at: ${day} d, leave-empty: ${names.crop} }`;
    const fewer = `{ at: ${DAY} d, harvest-fish: { cohort: ${names.fish}, share: 50 % } }`;
    const runWith = (actions: readonly string[]): Run => runText(systemOf(RATION, 7, actions));
    const none = runWith([]);
    /** What may be done, in the order of the choices. */
    const done = [runWith([fed(DAY, 50)]), runWith([fewer, fed(DAY, 50)]), runWith([fallow(DAY)])];
    const lasts = (run: Run): number => tripOf(run) ?? SUMMER + 1000 * numberOf(run, 'last', volume);
    const best = done.reduce((most, run) => (lasts(run) > lasts(most) ? run : most));
    const helps = lasts(best) > lasts(none) + 1;
    const [halved, , empty] = done;
    const litres = (run: Run, name: string, colour: 'water' | 'fish' | 'crop' | 'soft', dash?: string) => {
      const line = kit.course(run, volume, name, colour, dash);
      return { ...line, values: Array.from(line.values, (value) => 1000 * value) };
    };
    const inlet = { text: labels.inlet, value: 100, kind: 'limit' as const };
    const never = (run: Run): string => {
      const trip = tripOf(run);
      return trip === undefined ? labels.never : kit.number(trip, 0);
    };
    const row = (name: string, run: Run) => [
      name,
      never(run),
      [1000 * numberOf(run, 'last', loss), 0] as const,
      [numberOf(run, 'highest', tan), 1] as const,
      [numberOf(run, 'last', nitrate), 0] as const,
    ];
    return {
      system: none,
      ask: { kind: 'pick', right: helps ? done.indexOf(best) : 3 },
      shown: () => [
        kit.chart({
          ...{ title: labels.sumpChart, unit: labels.sumpUnit, levels: [inlet] },
          lines: [
            litres(none, labels.nothing, 'soft', '2 4'),
            litres(halved, labels.halved, 'fish', '7 3'),
            litres(empty, labels.fallow, 'crop'),
          ],
          moments: [{ text: labels.acted, time: DAY }],
        }),
        kit.table(
          labels.compared,
          ['', labels.trip, labels.loss, labels.tan, labels.nitrate],
          [
            row(labels.nothing, none),
            row(labels.halved, halved),
            row(labels.fewer, done[1]),
            row(labels.fallow, empty),
          ],
        ),
        ...kit.text(words.shown, {
          before: [1000 * numberOf(none, 'highest', loss), 0],
          after: [1000 * numberOf(empty, 'last', loss), 0],
          ration: [RATION, 0],
          'tan-none': [numberOf(none, 'highest', tan), 1],
          'tan-halved': [numberOf(halved, 'highest', tan), 1],
        }),
        kit.verdict(empty),
      ],
      sliders: [
        { name: 'ration', from: 0, to: 40, step: 1, value: RATION },
        { name: 'fallow', from: 0, to: SUMMER, step: 5, value: 60 },
        { name: 'feed', from: 20, to: 100, step: 10, value: 100 },
        { name: 'et0', from: 3, to: 10, step: 0.5, value: 7 },
      ],
      changed({ ration, fallow: day, feed, et0 }) {
        const actions = [...(day < SUMMER ? [fallow(day)] : []), ...(feed < 100 ? [fed(DAY, feed)] : [])];
        const text = systemOf(ration, et0, actions);
        const run = runText(text);
        const trip = tripOf(run);
        return [
          kit.chart({
            ...{ title: labels.sumpNow, unit: labels.sumpUnit, levels: [inlet] },
            lines: [litres(none, labels.nothing, 'soft', '2 4'), litres(run, labels.yours, 'water')],
            moments: day < SUMMER ? [{ text: labels.fallow, time: day }] : [],
          }),
          ...(trip === undefined ? kit.text(words.runs) : kit.text(words.trips, { trip: [trip, 0] })),
          ...kit.text(words.changed, {
            tan: kit.reading(file, run, 'highest', tan, 2),
            nitrate: kit.reading(file, run, 'last', nitrate, 1),
            loss: [1000 * numberOf(run, 'last', loss), 0],
          }),
          kit.verdict(run),
          kit.file(file, text),
        ];
      },
      answer() {
        const days = Array.from({ length: SUMMER / 5 }, (_, i) => SUMMER - 5 * (i + 1));
        const latest = days.find((day) => tripOf(runWith([fallow(day)])) === undefined);
        const run = latest === undefined ? undefined : runWith([fallow(latest)]);
        return kit.text(words.answer, {
          latest: latest === undefined ? labels.never : [latest, 0],
          lowest: [run === undefined ? Number.NaN : 1000 * numberOf(run, 'lowest', volume), 0],
        });
      },
      sources: () => [
        kit.sources(none, ['water.', 'crop.lettuce-butterhead.k', 'evaporation', 'fish.nile-tilapia.limit']),
      ],
    };
  },
};
