import { type Lesson, numberOf, runText } from '@leat/view/lesson';
import { smallSystem, type SystemNames } from '../support/small-system.js';
import { placed, type Words } from '../support/words.js';
import type { words as english } from '../text/en/13-reading-a-test-kit.js';

/** Water in a bucket with 1 mg/L of ammonia nitrogen: what part of it is free follows from pH and temperature. */
const bucket = ({ tank, tap, note }: SystemNames, pH: number, temperature: number): string => `title: ${tank}
note: ${note}
days: 1
climate: { water-temperature: ${temperature} degC, et0: 0 mm/d }
waters:
  ${tap}: { nitrate: 2 mg N/L, alkalinity: 140 mg/L as CaCO3, pH: 7.7, chloride: 35 mg/L }
vessels:
  ${tank}: { kind: vessel, volume: 1 m3, area: 1 m2, surface: 0 m2, floor: 0 m2 }
reservoir: ${tank}
top-up: { level: 1 m3, rate: 5 L/min, from: [{ water: ${tap} }] }
start: { biofilm: uncycled, water: { like: ${tap}, ammonia: 1 mg N/L, pH: ${pH} } }
`;

/** pH of the two tanks and their temperature, degC. */
const [LOW, HIGH, WARM] = [7, 8.5, 26];

/** Steps of a colour card for nitrate, mg/L as NO3 (common practice). */
const CARD = [0, 5, 10, 20, 40, 80, 160];

export const testKit: Lesson<Words<typeof english>> = {
  id: '13-reading-a-test-kit',
  open(kit, words) {
    const { labels, file, names } = words;
    const at = placed(words);
    const [free, tan, pHSeries] = ['un-ionised-ammonia@tank', 'tan@tank', 'pH@tank'].map(at);
    const freeAt = (pH: number, temperature: number): number =>
      numberOf(runText(bucket(names, pH, temperature)), 'first', free);
    const systemOf = (temperature: number): string =>
      smallSystem({ title: file, days: 30, feed: 60, temperature, base: 40 }, names);
    const first = runText(systemOf(WARM));
    const { parameters } = first.model;
    const limit = parameters.number('fish.nile-tilapia.limit-ammonia').value;
    const [low, high] = [freeAt(LOW, WARM), freeAt(HIGH, WARM)];
    const nitrogen = parameters.value('molar.nitrogen');
    /** g of nitrogen in a g of nitrate ion. */
    const share = nitrogen / (nitrogen + 1.5 * parameters.value('molar.oxygen-gas'));
    const steps = Array.from({ length: 13 }, (_, i) => 6 + i / 4);
    const curve = (temperature: number, name: string, colour: 'fish' | 'soft', dash?: string) => ({
      ...{ name, colour, time: steps, values: steps.map((pH) => 100 * freeAt(pH, temperature)) },
      ...(dash !== undefined && { dash }),
    });
    const warm = curve(WARM, labels.warm, 'fish');
    /** What a colour stands for: from half way to the one before to half way to the next. */
    const between = (card: number): readonly [number, number] => {
      const i = CARD.indexOf(card);
      return [i === 0 ? 0 : (CARD[i - 1] + card) / 2, (card + (CARD.at(i + 1) ?? 2 * card)) / 2];
    };
    return {
      system: first,
      ask: {
        ...{ kind: 'number', name: 'guess', from: 1, to: 60, step: 1, value: 2 },
        ...{ right: high / low, decimals: 0, near: 4 },
      },
      shown: () => [
        kit.chart({
          ...{ title: labels.chart, unit: labels.share, horizontal: 'pH', lines: [warm] },
          moments: [
            { text: labels.one, time: LOW },
            { text: labels.other, time: HIGH },
          ],
        }),
        ...kit.text(words.shown, {
          low: [1000 * low, 0],
          high: [1000 * high, 0],
          times: [high / low, 0],
          limit: [1000 * limit, 0],
        }),
        kit.table(
          labels.card,
          [labels.shows, labels.asN, labels.from, labels.to],
          CARD.slice(0, -1).map((card) => [
            kit.number(card, 0),
            [share * card, 1] as const,
            [share * between(card)[0], 1] as const,
            [share * between(card)[1], 1] as const,
          ]),
        ),
        ...kit.text(words.steps, { factor: [1 / share, 2] }),
        kit.verdict(first),
      ],
      sliders: [
        { name: 'tan', from: 0, to: 5, step: 0.25, value: 1 },
        { name: 'pH', from: 6, to: 9, step: 0.1, value: 7.8 },
        { name: 'temperature', from: 14, to: 32, step: 1, value: WARM },
        { name: 'nitrate', from: 0, to: 160, step: 5, value: 40 },
      ],
      changed({ tan: shows, pH, temperature, nitrate }) {
        const now = shows * freeAt(pH, temperature);
        const text = systemOf(temperature);
        const run = runText(text);
        return [
          kit.chart({
            ...{ title: labels.chartNow, unit: labels.share, horizontal: 'pH' },
            lines: [
              { ...warm, colour: 'soft', dash: '2 4' },
              curve(temperature, labels.yours.replace('{temperature}', kit.number(temperature, 0)), 'fish'),
            ],
            moments: [{ text: labels.yourPH, time: pH }],
          }),
          ...kit.text(words.changed, {
            free: [1000 * now, 0],
            times: [now / limit, 1],
            nitrate: [share * nitrate, 1],
          }),
          ...kit.text(words.inSystem, {
            temperature: [temperature, 0],
            tan: kit.reading(file, run, 'last', tan, 2),
            pH: kit.reading(file, run, 'last', pHSeries, 2),
            free: kit.reading(file, run, 'last', free, 4),
          }),
          kit.verdict(run),
          kit.file(file, text),
        ];
      },
      answer: () =>
        kit.text(words.answer, { nitrogen: [50 * share, 1], factor: [1 / share, 2], wrong: [50 / share, 0] }),
      sources: () => [kit.sources(first, ['ammonia', 'molar.', 'fish.nile-tilapia.limit', 'temperature'])],
    };
  },
};
