import type { Run } from '@leat/core';
import {
  adviceOutcome,
  handbookFilter,
  planAim,
  type PlanFound,
  type PlanRange,
  planTrial,
  planValue,
  searchPlan,
  type PlanTrial,
} from '@leat/core/analysis';
import { type Lesson, numberOf, runText } from '@leat/view/lesson';
import { smallSystem } from '../support/small-system.js';
import { placed, type Words } from '../support/words.js';
import type { words as english } from '../text/en/16-design-a-farm.js';

/** Water that there is, L/d; days of a run; feed of a fish of 150 g, g/d (1.3 % of its mass: chosen). */
const [WATER, DAYS, PER_FISH] = [40, 60, 2];

/** A farm by its four numbers. */
interface Farm {
  /** m2. */
  readonly beds: number;
  readonly fish: number;
  /** L of carriers. */
  readonly filter: number;
  /** L/d. */
  readonly water: number;
}

export const designAFarm: Lesson<Words<typeof english>> = {
  id: '16-design-a-farm',
  open(kit, words) {
    const { labels, file, names } = words;
    const at = placed(words);
    const [tan, nitrite, nitrate] = ['tan@tank', 'nitrite@tank', 'nitrate@sump'].map(at);
    const loss = 'evapotranspiration@system';
    const systemOf = ({ beds, fish, filter, water }: Farm, et0 = 5): string =>
      smallSystem(
        {
          ...{ title: file, days: DAYS, bed: Math.max(beds, 0.5), fish, feed: PER_FISH * fish, et0 },
          ...{
            media: Math.max(1, Math.round(filter)),
            cap: water,
            base: fish,
            tank: Math.max(0.5, fish / 60),
          },
        },
        names,
      );
    /** A farm around so many beds, all in proportion, with as much water as it wants. */
    const around = (beds: number): Farm => ({
      beds,
      fish: Math.round(10 * beds),
      filter: 15 * beds,
      water: 500,
    });
    const lossWith = (beds: number, et0: number): number =>
      1000 * numberOf(runText(systemOf(around(beds), et0)), 'highest', loss);
    /** Beds that so much water serves: loss grows straight with their area. */
    const bedsFor = (water: number, et0: number): number => {
      const [few, many] = [lossWith(2, et0), lossWith(8, et0)];
      return 2 + (6 * (water - few)) / (many - few);
    };
    const first = runText(systemOf(around(4)));
    const { parameters } = first.model;
    const rule = parameters.number('limit.feed-per-area-leafy-low.value').value;
    const filterFor = (feed: number): number =>
      1000 *
      handbookFilter({
        feed,
        ammoniaPerFeed:
          parameters.value('feed.grower-32.protein') * parameters.value('limit.tan-per-protein.value'),
        arealRate: parameters.value('limit.areal-rate-fao.value'),
        specificSurface: parameters.value('media.moving-bed-carrier.surface'),
      }).volume;
    const right = bedsFor(WATER, 5);
    /** The four sums, one after the other. */
    const farmOf = (water: number, perArea: number, et0: number): Farm => {
      const beds = Number(Math.max(0.5, bedsFor(water, et0)).toFixed(1));
      const fish = Math.max(1, Math.round((beds * perArea) / PER_FISH));
      return { beds, fish, filter: filterFor(PER_FISH * fish), water };
    };
    const sums = ({ beds, fish, filter, water }: Farm): HTMLElement =>
      kit.table(
        labels.sums,
        [labels.what, labels.howMuch, labels.unit],
        [
          [labels.water, kit.number(water, 0), 'L/d'],
          [labels.beds, kit.number(beds, 1), 'm²'],
          [labels.feed, kit.number(PER_FISH * fish, 0), 'g/d'],
          [labels.fish, kit.number(fish, 0), labels.number],
          [labels.filter, kit.number(filter, 0), 'L'],
        ],
        0,
      );
    const ranges: readonly PlanRange[] = [
      { from: 1, to: 12, steps: 22 },
      { from: 10, to: 120, steps: 22, whole: true },
    ];
    const farmAt = (steps: readonly number[], water: number): Farm => {
      const [beds, fish] = steps.map((step, i) => planValue(ranges[i], step));
      return { beds, fish, water, filter: 1.5 * fish };
    };
    const judged = (steps: readonly number[], water: number): PlanTrial => {
      const run = runText(systemOf(farmAt(steps, water)));
      return planTrial(steps, run, adviceOutcome(run, []), planAim('most harvest', run.model));
    };
    /** The library's search for the largest harvest that harms nothing, told as it goes. */
    function* plan(water: number): Generator<string, HTMLElement> {
      const search = searchPlan<PlanTrial>(ranges);
      let step = search.next();
      let runs = 0;
      while (step.done !== true) {
        const out: PlanTrial[] = [];
        for (const steps of step.value) {
          out.push(judged(steps, water));
          runs += 1;
          yield words.progress.replace('{runs}', String(runs));
        }
        step = search.next(out);
      }
      const { best }: PlanFound<PlanTrial> = step.value;
      if (!best.holds) return kit.html('div', {}, ...kit.text(words.noPlan, { runs: [runs, 0] }));
      const farm = farmAt(best.at, water);
      const text = systemOf(farm);
      const run = runText(text);
      return kit.html(
        'div',
        { class: 'planned' },
        sums(farm),
        ...kit.text(words.planned, { runs: [runs, 0], harvest: [best.aim, 1], water: [water, 0] }),
        kit.verdict(run),
        kit.file(labels.plannedFile, text),
      );
    }
    const courses = (run: Run) => [
      kit.chart({
        ...{ title: labels.poisonChart, unit: 'mg N/L', atLeast: 0.6 },
        lines: [
          kit.course(run, tan, labels.ammonia, 'fish'),
          kit.course(run, nitrite, labels.nitrite, 'biofilm', '7 3'),
        ],
      }),
      kit.chart({
        ...{ title: labels.nitrateChart, unit: labels.nitrateUnit },
        lines: [kit.course(run, nitrate, labels.nitrate, 'water')],
      }),
    ];
    let chosen = WATER;
    return {
      system: first,
      ask: {
        ...{ kind: 'number', name: 'guess', from: 1, to: 30, step: 0.5, value: 20 },
        ...{ right, decimals: 1, near: 1 },
      },
      shown() {
        const farm = farmOf(WATER, rule / 2, 5);
        const run = runText(systemOf(farm));
        return [
          ...kit.text(words.shown, {
            few: [lossWith(2, 5), 1],
            many: [lossWith(8, 5), 1],
            each: [(lossWith(8, 5) - lossWith(2, 5)) / 6, 1],
            beds: [right, 1],
            water: [WATER, 0],
            rule: [rule, 0],
            half: [rule / 2, 0],
            'per-fish': [PER_FISH, 0],
          }),
          sums(farm),
          kit.verdict(run),
        ];
      },
      sliders: [
        { name: 'water', from: 10, to: 120, step: 5, value: WATER },
        { name: 'perArea', from: 5, to: 60, step: 5, value: 20 },
        { name: 'et0', from: 3, to: 9, step: 0.5, value: 5 },
      ],
      changed({ water, perArea, et0 }) {
        chosen = water;
        const farm = farmOf(water, perArea, et0);
        const text = systemOf(farm, et0);
        const run = runText(text);
        return [
          sums(farm),
          ...courses(run),
          ...kit.text(words.changed, {
            tan: kit.reading(file, run, 'highest', tan, 2),
            nitrate: kit.reading(file, run, 'last', nitrate, 1),
            loss: [1000 * numberOf(run, 'highest', loss), 1],
          }),
          kit.verdict(run),
          kit.file(file, text),
        ];
      },
      further: () => [...kit.text(words.plan), kit.later(labels.planIt, () => plan(chosen))],
      answer: () =>
        kit.text(words.answer, { dry: [bedsFor(WATER, 7.5), 1], beds: [right, 1], water: [WATER, 0] }),
      sources: () => [
        kit.sources(first, [
          'limit.feed-per-area',
          'limit.areal',
          'limit.tan-per',
          'crop.lettuce-butterhead.k',
          'water.',
        ]),
      ],
    };
  },
};
