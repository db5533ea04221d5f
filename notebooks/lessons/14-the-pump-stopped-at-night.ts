import type { Run } from '@leat/core';
import { type Lesson, numberOf, runText } from '@leat/view/lesson';
import { smallSystem } from '../support/small-system.js';
import { placed, type Words } from '../support/words.js';
import type { words as english } from '../text/en/14-the-pump-stopped-at-night.js';

/** The hour that it begins, d: 21:00 of the third day; and how long it lasts, h. */
const [BEGINS, LASTS] = [2.875, 8];

/** Feed of each fish, g a day. */
const FEED = 2;

export const pumpStopped: Lesson<Words<typeof english>> = {
  id: '14-the-pump-stopped-at-night',
  open(kit, words) {
    const { labels, file, names } = words;
    const at = placed(words);
    const [oxygen, tan] = [at('oxygen@tank'), at('tan@tank')];
    const number = `fish-number@${names.fish}`;
    const systemOf = (fish: number, actions: readonly string[]): string =>
      smallSystem(
        { title: file, days: 4, every: '15 min', feed: FEED * fish, fish, base: 40, actions },
        names,
      );
    const pumpOff = (hours: number): string =>
      `{ at: ${BEGINS} d, for: ${hours} h, pump-off: ${names.pump} }`;
    /** Air goes when the battery is empty, until the power is back. */
    const airOff = (hours: number, battery: number): readonly string[] =>
      battery >= hours
        ? []
        : [names.tank, names.filter, names.bed].map(
            (vessel) => `{ at: ${BEGINS + battery / 24} d, for: ${hours - battery} h, air-off: ${vessel} }`,
          );
    const cut = (hours: number): string => `{ at: ${BEGINS} d, for: ${hours} h, power-cut: all }`;
    const first = runText(systemOf(60, [cut(LASTS)]));
    const onlyPump = runText(systemOf(60, [pumpOff(LASTS)]));
    const limit = first.model.parameters.number('fish.nile-tilapia.limit-oxygen').value;
    /** Hours from the cut until oxygen passes under a value; absent: it does not. */
    const hoursTo = (run: Run, value: number): number | undefined => {
      const { time, values } = kit.course(run, oxygen, '', 'water');
      const found = time.find((t, i) => t > BEGINS && values[i] < value);
      return found === undefined ? undefined : 24 * (found - BEGINS);
    };
    const late = hoursTo(first, limit);
    /** Only the hours around the cut: days before it show nothing. */
    const near = (
      run: Run,
      series: string,
      name: string,
      colour: 'fish' | 'soft' | 'water',
      dash?: string,
    ) => {
      const line = kit.course(run, series, name, colour, dash);
      const from = line.time.findIndex((t) => t >= BEGINS - 0.125);
      return {
        ...line,
        time: line.time.slice(from).map((t) => 24 * (t - BEGINS)),
        values: Array.from(line.values).slice(from),
      };
    };
    const dead = (run: Run): number =>
      100 * (1 - numberOf(run, 'last', number) / numberOf(run, 'first', number));
    const level = { text: labels.danger, value: limit, kind: 'limit' as const };
    return {
      system: first,
      ask: {
        ...{ kind: 'number', name: 'guess', from: 0, to: LASTS, step: 0.5, value: 6, decimals: 1, near: 0.5 },
        right: late ?? Infinity,
      },
      shown: ({ value }) => [
        kit.chart({
          ...{
            title: labels.oxygenChart,
            unit: labels.oxygenUnit,
            horizontal: labels.hours,
            levels: [level],
          },
          lines: [
            near(first, oxygen, labels.both, 'fish'),
            near(onlyPump, oxygen, labels.pump, 'water', '7 3'),
          ],
          moments: [{ text: kit.frame.yourGuess, time: value }],
        }),
        kit.chart({
          ...{ title: labels.ammoniaChart, unit: labels.ammoniaUnit, horizontal: labels.hours, atLeast: 1 },
          lines: [near(first, tan, labels.both, 'fish'), near(onlyPump, tan, labels.pump, 'water', '7 3')],
        }),
        ...kit.text(words.shown, {
          hours: [late ?? Number.NaN, 1],
          limit: [limit, 0],
          lowest: [numberOf(first, 'lowest', oxygen), 1],
          dead: [dead(first), 0],
          pump: [numberOf(onlyPump, 'lowest', oxygen), 1],
          'pump-tan': [numberOf(onlyPump, 'highest', tan), 1],
          'pump-dead': [dead(onlyPump), 0],
        }),
        kit.verdict(first),
      ],
      sliders: [
        { name: 'hours', from: 1, to: 12, step: 1, value: 8 },
        { name: 'fish', from: 10, to: 90, step: 5, value: 60 },
        { name: 'battery', from: 0, to: 12, step: 1, value: 4 },
      ],
      changed({ hours, fish, battery }) {
        const text = systemOf(fish, [pumpOff(hours), ...airOff(hours, battery)]);
        const run = runText(text);
        const passed = hoursTo(run, limit);
        return [
          kit.chart({
            ...{
              title: labels.oxygenNow,
              unit: labels.oxygenUnit,
              horizontal: labels.hours,
              levels: [level],
            },
            lines: [
              near(first, oxygen, labels.before, 'soft', '2 4'),
              near(run, oxygen, labels.yours, 'fish'),
            ],
          }),
          ...(passed === undefined ? kit.text(words.never) : kit.text(words.passes, { passed: [passed, 1] })),
          ...kit.text(words.changed, {
            lowest: kit.reading(file, run, 'lowest', oxygen, 2),
            tan: kit.reading(file, run, 'highest', tan, 2),
            left: kit.reading(file, run, 'last', number, 0),
            fish: [fish, 0],
          }),
          kit.verdict(run),
          kit.file(file, text),
        ];
      },
      answer() {
        const battery = Array.from({ length: LASTS + 1 }, (_, i) => i).find(
          (each) =>
            hoursTo(runText(systemOf(60, [pumpOff(LASTS), ...airOff(LASTS, each)])), limit) === undefined,
        );
        const half = hoursTo(runText(systemOf(30, [cut(LASTS)])), limit);
        return kit.text(words.answer, {
          battery: [battery ?? Number.NaN, 0],
          half: half === undefined ? labels.notAtAll : [half, 1],
        });
      },
      sources: () => [
        kit.sources(first, [
          'fish.nile-tilapia.limit-oxygen',
          'fish.nile-tilapia.lethal-oxygen',
          'oxygen',
          'gas',
        ]),
      ],
    };
  },
};
