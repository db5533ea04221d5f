import type { Run } from '@leat/core';
import { type Lesson, numberOf, runText } from '@leat/view/lesson';
import { smallSystem } from '../support/small-system.js';
import { placed, type Words } from '../support/words.js';
import type { words as english } from '../text/en/07-drought.js';

/** Water that the pump needs in the sump, and top-up that is allowed, L and L/d. */
const [INLET, CAP] = [100, 15];

const tripOf = (run: Run): number | undefined => run.events.find(({ kind }) => kind === 'pump-trip')?.time;

export const drought: Lesson<Words<typeof english>> = {
  id: '07-drought',
  open(kit, words) {
    const { labels, file } = words;
    const at = placed(words);
    const [tan, chloride, nitrate, volume] = ['tan@tank', 'chloride@tank', 'nitrate@tank', 'volume@sump'].map(
      at,
    );
    const loss = 'evapotranspiration@system';
    const systemOf = (cap: number, sump: number, et0: number): string =>
      smallSystem({ title: file, days: 90, feed: 60, base: 40, cap, sump, et0 }, words.names);
    const first = runText(systemOf(CAP, 400, 5));
    const { parameters } = first.model;
    const trip = tripOf(first);
    /** When a course first passes a limit of the tables; never: beyond every day. */
    const passes = (series: string, id: string): number => {
      const { time, values } = kit.course(first, series, '', 'water');
      const limit = parameters.number(id).value;
      return time.find((_, i) => values[i] > limit) ?? Infinity;
    };
    const firsts = [
      passes(chloride, 'crop.lettuce-butterhead.chloride-high'),
      passes(nitrate, 'fish.nile-tilapia.limit-nitrate'),
      trip ?? Infinity,
    ];
    const soonest = Math.min(...firsts);
    const pictures = (run: Run): readonly Element[] => {
      const time = tripOf(run);
      const moments = time === undefined ? [] : [{ text: labels.air, time }];
      const line = kit.course(run, volume, labels.water, 'water');
      return [
        kit.chart({
          ...{ title: labels.sumpChart, unit: labels.sumpUnit, moments },
          lines: [{ ...line, values: Array.from(line.values, (value) => 1000 * value) }],
          levels: [{ text: labels.inlet, value: INLET, kind: 'limit' }],
        }),
        kit.chart({
          ...{ title: labels.ammoniaChart, unit: labels.ammoniaUnit, moments, atLeast: 1 },
          lines: [kit.course(run, tan, labels.ammonia, 'fish')],
        }),
        kit.chart({
          ...{ title: labels.chlorideChart, unit: labels.chlorideUnit, atLeast: 70 },
          lines: [kit.course(run, chloride, labels.chloride, 'biofilm')],
        }),
      ];
    };
    const lossOf = (run: Run): number => 1000 * numberOf(run, 'highest', loss);
    return {
      system: first,
      ask: { kind: 'pick', right: soonest === Infinity ? 3 : firsts.indexOf(soonest) },
      shown: () => [
        ...pictures(first),
        ...kit.text(words.shown, {
          trip: [trip ?? Number.NaN, 1],
          tan: [numberOf(first, 'highest', tan), 1],
          chloride: [numberOf(first, 'highest', chloride), 0],
          limit: [parameters.number('crop.lettuce-butterhead.chloride-high').value, 0],
        }),
        kit.verdict(first),
      ],
      sliders: [
        { name: 'cap', from: 0, to: 40, step: 1, value: 15 },
        { name: 'sump', from: 200, to: 1500, step: 50, value: 400 },
        { name: 'et0', from: 1, to: 10, step: 0.5, value: 5 },
      ],
      changed({ cap, sump, et0 }) {
        const text = systemOf(cap, sump, et0);
        const run = runText(text);
        const time = tripOf(run);
        return [
          ...pictures(run),
          ...(time === undefined ? kit.text(words.runs) : kit.text(words.trips, { 'trip-now': [time, 1] })),
          ...kit.text(words.changed, {
            tan: kit.reading(file, run, 'highest', tan, 2),
            chloride: kit.reading(file, run, 'last', chloride, 1),
            loss: [1000 * numberOf(run, 'last', loss), 1],
          }),
          kit.verdict(run),
          kit.file(file, text),
        ];
      },
      answer: () =>
        kit.text(words.answer, {
          loss: [lossOf(first), 1],
          cap: [CAP, 0],
          short: [90 * (lossOf(first) - CAP), 0],
          inlet: [INLET, 0],
          sum: [90 * (lossOf(first) - CAP) + INLET, 0],
        }),
      sources: () => [
        kit.sources(first, [
          ...['water.', 'crop.lettuce-butterhead.coefficient', 'crop.lettuce-butterhead.kc'],
          ...['crop.lettuce-butterhead.chloride', 'evaporation', 'weather'],
        ]),
      ],
    };
  },
};
