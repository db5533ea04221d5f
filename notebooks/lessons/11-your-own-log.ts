import type { Fit, Run, WaterLog } from '@leat/core';
import { type Lesson, runText } from '@leat/view/lesson';
import { fitToLog } from '../support/fit-to-log.js';
import { inventedLog } from '../support/invented-log.js';
import { logOf, logPoints, misfit } from '../support/log-points.js';
import { smallSystem } from '../support/small-system.js';
import { placed, type Words } from '../support/words.js';
import type { words as english } from '../text/en/11-your-own-log.js';

/** What the invented log was made with, and where the sliders stand first: feed g/d, biofilm %, water degC. */
const TOLD = { feed: 35, seeded: 0.4, temperature: 22 };
const SET = { feed: 30, seeded: 1, temperature: 26 };

type Settings = typeof TOLD;

/** What is tried of each setting alone, the other two as the sliders stand. */
const TRIED: Readonly<Record<keyof Settings, readonly number[]>> = {
  temperature: [18, 20, 22, 24],
  seeded: [0.1, 0.2, 0.4, 0.6],
  feed: [15, 25, 40, 55],
};

/** A setting alone explains a log when it takes away so much of the misfit. */
const EXPLAINS = 0.5;

export const ownLog: Lesson<Words<typeof english>> = {
  id: '11-your-own-log',
  open(kit, words) {
    const { labels, file, names } = words;
    const at = placed(words);
    const [tan, nitrite, nitrate] = ['tan@tank', 'nitrite@tank', 'nitrate@tank'].map(at);
    const systemOf = ({ feed, seeded, temperature }: Settings): string =>
      smallSystem(
        {
          ...{ title: file, days: 90, feed, temperature, base: 60, planted: 0, biofilm: `${seeded} %` },
          start: `{ like: ${names.tap}, ammonia: 0.1 mg N/L, pH: 7.7 }`,
        },
        names,
      );
    const first = runText(systemOf(SET));
    const written = inventedLog(runText(systemOf(TOLD)), names.tank, words.logColumns, 5, 11);
    const field = kit.html('textarea', { rows: 9, 'aria-label': labels.log, spellcheck: 'false' });
    field.textContent = written;
    const said = kit.html('p', { role: 'status' });
    let log: WaterLog = logOf(written, names, words.logColumns);
    const say = (): void => {
      said.replaceChildren(
        ...kit.text(words.read, { readings: [log.readings.length, 0], odd: [log.oddities.length, 0] }),
      );
    };
    field.addEventListener('change', () => {
      try {
        log = logOf((field as HTMLTextAreaElement).value, names, words.logColumns);
        say();
      } catch (error) {
        said.replaceChildren(error instanceof Error ? error.message : String(error));
      }
    });
    const points = (run: Run) => {
      const { startDate } = run.model.scenario;
      return {
        ammonia: logPoints(log, 'ammonia', startDate),
        nitrite: logPoints(log, 'nitrite', startDate),
        nitrate: logPoints(log, 'nitrate', startDate),
      };
    };
    const offOf = (run: Run) => ({
      ammonia: misfit(run, tan, points(run).ammonia),
      nitrite: misfit(run, nitrite, points(run).nitrite),
      nitrate: misfit(run, nitrate, points(run).nitrate),
    });
    const poisonsOff = (run: Run): number => offOf(run).ammonia + offOf(run).nitrite;
    /** Which settings alone bring the lines of ammonia and nitrite near the readings, by trying some of each. */
    const explaining = (): ReadonlySet<keyof Settings> => {
      const before = poisonsOff(first);
      const best = (name: keyof Settings): number =>
        Math.min(...TRIED[name].map((value) => poisonsOff(runText(systemOf({ ...SET, [name]: value })))));
      const all = Object.keys(TRIED) as (keyof Settings)[];
      return new Set(all.filter((name) => best(name) < EXPLAINS * before));
    };
    const borneOut = (found: ReadonlySet<keyof Settings>): number => {
      if (found.has('temperature') && found.has('seeded')) return 2;
      return found.has('temperature') ? 0 : found.has('seeded') ? 1 : 3;
    };
    let right: number | undefined;
    const pictures = (run: Run): readonly Element[] => {
      const read = points(run);
      return [
        kit.chart({
          ...{ title: labels.ammoniaChart, unit: labels.ammoniaUnit, points: read.ammonia },
          lines: [kit.course(run, tan, labels.model, 'fish')],
        }),
        kit.chart({
          ...{ title: labels.nitriteChart, unit: labels.nitriteUnit, points: read.nitrite },
          lines: [kit.course(run, nitrite, labels.model, 'biofilm')],
        }),
        kit.chart({
          ...{ title: labels.nitrateChart, unit: labels.nitrateUnit, points: read.nitrate },
          lines: [kit.course(run, nitrate, labels.model, 'water')],
        }),
      ];
    };
    const wordOf: Readonly<Record<string, string>> = {
      [`fish.${names.fish}.ration`]: labels.feed,
      'start.biofilm': labels.biofilm,
      'climate.water-temperature': labels.waterTemperature,
    };
    const verdicts: Readonly<Record<string, string>> = {
      stays: labels.stays,
      narrowed: labels.narrowed,
      moved: labels.moved,
    };
    const fitted = (caption: string, { numbers }: Fit): HTMLElement =>
      kit.table(
        caption,
        [labels.fitted, labels.best, labels.band, labels.says],
        numbers.map(({ name, unit, value, low, high, verdict }) => [
          wordOf[name] ?? name,
          `${kit.number(value, 2)} ${unit.replace('degC', '°C')}`,
          `${kit.number(low, 2)} – ${kit.number(high, 2)}`,
          verdicts[verdict] ?? verdict,
        ]),
        0,
      );
    const free = [
      `fish.${names.fish}.ration=10..60 g/d`,
      'start.biofilm=0.1..5 %',
      'climate.water-temperature=16..30 degC',
    ];
    function* fitIt(): Generator<string, HTMLElement> {
      yield labels.blind;
      const blind = fitToLog(systemOf(SET), log, free);
      yield labels.measured;
      const measured = fitToLog(systemOf({ ...SET, temperature: TOLD.temperature }), log, free.slice(0, 2));
      const pair = blind.entangled.at(0);
      return kit.html(
        'div',
        {},
        fitted(labels.blind, blind),
        ...(pair === undefined
          ? kit.text(words.apart)
          : kit.text(words.entangled, {
              a: wordOf[pair.a] ?? pair.a,
              b: wordOf[pair.b] ?? pair.b,
              correlation: [pair.correlation, 2],
            })),
        fitted(labels.measured, measured),
        ...kit.text(words.spoilt, {
          blind: [blind.spoilt.length, 0],
          measured: [measured.spoilt.length, 0],
          readings: [blind.readings, 0],
        }),
      );
    }
    return {
      system: first,
      given() {
        say();
        return [field, said];
      },
      ask: {
        kind: 'pick',
        // Many runs: only when somebody has answered.
        get right() {
          return (right ??= borneOut(explaining()));
        },
      },
      shown: () => [...pictures(first), ...kit.text(words.shown), kit.verdict(first)],
      sliders: [
        { name: 'feed', from: 10, to: 60, step: 1, value: SET.feed },
        { name: 'seeded', from: 0.1, to: 5, step: 0.1, value: SET.seeded },
        { name: 'temperature', from: 16, to: 30, step: 0.5, value: SET.temperature },
      ],
      changed({ feed, seeded, temperature }) {
        const text = systemOf({ feed, seeded, temperature });
        const run = runText(text);
        const off = offOf(run);
        return [
          ...pictures(run),
          ...kit.text(words.changed, {
            ammonia: [off.ammonia, 2],
            nitrite: [off.nitrite, 2],
            nitrate: [off.nitrate, 1],
            day: kit.reading(file, run, 'day-of-highest', nitrite, 0),
            high: kit.reading(file, run, 'highest', nitrite, 2),
          }),
          kit.verdict(run),
          kit.file(file, text),
        ];
      },
      further: () => [...kit.text(words.fit), kit.later(labels.fitIt, fitIt)],
      answer: () =>
        kit.text(words.answer, {
          feed: [TOLD.feed, 0],
          seeded: [TOLD.seeded, 1],
          temperature: [TOLD.temperature, 0],
        }),
      sources: () => [kit.sources(first, ['aob.', 'nob.', 'biofilm.'])],
    };
  },
};
