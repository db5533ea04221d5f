import { type Lesson, numberOf, runText } from '@leat/view/lesson';
import type { SystemNames } from '../support/small-system.js';
import { placed, type Words } from '../support/words.js';
import type { words as english } from '../text/en/01-one-tank-and-a-tap.js';

/** A tank of 1000 L with a tap that gives so many litres a day of so much nitrate. */
const tankOf = (
  title: string,
  { tank, tap: water, note }: SystemNames,
  tap: number,
  nitrate: number,
): string =>
  `title: ${title}
note: ${note}
days: 90
climate: { water-temperature: 20 degC, et0: 0 mm/d }
waters:
  ${water}: { nitrate: ${nitrate} mg N/L, alkalinity: 100 mg/L as CaCO3, pH: 7.5, chloride: 20 mg/L }
vessels:
  ${tank}: { kind: vessel, volume: 1 m3, area: 1 m2, surface: 0 m2, floor: 0 m2, exchange: ${tap} L/d }
reservoir: ${tank}
top-up: { level: 1 m3, rate: 5 L/min, from: [{ water: ${water} }] }
start: { biofilm: uncycled, water: { like: ${water}, nitrate: 80 mg N/L } }
`;

/** Nitrate of the tank at the start and of the tap, mg N/L. */
const [START, TAP] = [80, 2];

export const oneTank: Lesson<Words<typeof english>> = {
  id: '01-one-tank-and-a-tap',
  open(kit, words) {
    const { labels, names, file } = words;
    const nitrate = placed(words)('nitrate@tank');
    const first = runText(tankOf(file, names, 100, TAP));
    const line = kit.course(first, nitrate, labels.nitrate, 'water');
    const onDay10 = line.values[10];
    return {
      system: first,
      ask: {
        kind: 'number',
        name: 'guess',
        from: 0,
        to: 80,
        step: 1,
        value: 50,
        right: onDay10,
        decimals: 1,
        near: 4,
      },
      shown: ({ value }) => [
        kit.chart({
          ...{ title: labels.chart, unit: labels.unit, lines: [line] },
          levels: [{ text: kit.frame.yourGuess, value, kind: 'guess' }],
          moments: [{ text: labels.tankful, time: 10 }],
        }),
        ...kit.text(words.shown, {
          'day-10': [onDay10, 1],
          left: [(100 * (onDay10 - TAP)) / (START - TAP), 0],
        }),
        kit.verdict(first),
      ],
      sliders: [
        { name: 'tap', from: 10, to: 400, step: 10, value: 200 },
        { name: 'nitrate', from: 0, to: 40, step: 1, value: 2 },
      ],
      changed({ tap, nitrate: inTap }) {
        const text = tankOf(file, names, tap, inTap);
        const run = runText(text);
        return [
          kit.chart({
            ...{ title: labels.chartNow, unit: labels.unit },
            lines: [
              { ...line, name: labels.before, colour: 'soft', dash: '2 4' },
              kit.course(run, nitrate, labels.now, 'water'),
            ],
          }),
          ...kit.text(words.changed, {
            end: kit.reading(file, run, 'last', nitrate, 1),
            tankful: [1000 / tap, 1],
          }),
          kit.verdict(run),
          kit.file(file, text),
        ];
      },
      answer: () =>
        kit.text(words.answer, {
          twentieth: [Math.log(20), 1],
          once: [0.95, 2],
          check: [numberOf(first, 'last', nitrate), 1],
        }),
      sources: () => [
        ...kit.text(words.sources),
        kit.sources(first, ['temperature', 'gas', 'oxygen', 'carbonate']),
      ],
    };
  },
};
