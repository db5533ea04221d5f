import { type Plain } from '../../scenario/file/tree.js';
import type { ChangeContext, OpenChange } from './change.js';
import {
  daysText,
  entriesOf,
  isBox,
  type PlainFile,
  tidy,
  timesOf,
  valueAt,
  withAction,
  withActions,
  withoutTimes,
  withValue,
} from './file-edit.js';

/** The water that a system is topped up with, or that is known at all; undefined where none is. */
function freshWater({ scenario }: ChangeContext): string | undefined {
  const mains = scenario.topUp?.sources.find((source) => source.kind === 'mains');
  if (mains?.kind === 'mains') return mains.water;
  return (scenario.waters as readonly { readonly name: string }[]).at(0)?.name;
}

/** Fresh water for a share of that of the fish tanks every day, in percent. */
export const waterChange: OpenChange = (context) => {
  const { scenario, situation } = context;
  const water = freshWater(context);
  const tanks = [...new Set(scenario.fish.map(({ vessel }) => vessel))];
  const homes = tanks.length > 0 ? tanks : [scenario.reservoir];
  if (water === undefined) return undefined;
  const { from } = situation;
  return {
    ...{ name: 'change-water', effort: 3, most: 50, ends: true, from, unit: '%', at: homes },
    amount: (steps) => steps,
    apply: (file, steps, until) =>
      homes.reduce(
        (so, vessel) =>
          withAction(so, {
            at: daysText(from),
            every: '1 d',
            ...(until !== undefined && { until: daysText(until) }),
            'change-water': { vessel, share: `${steps} %`, water },
          }),
        file,
      ),
  };
};

/** Steps of the top-up, and how many times the thirst of the system the last is. */
const TOP_UP = { steps: 40, times: 1.5 };

/** Whether the file ends or begins top-up by this entry. */
const isTopUp = (entry: PlainFile): boolean => entry['top-up'] !== undefined;

/** Litres a day of a cap as it is written; undefined where it is none. */
function litresOf(cap: Plain | undefined): number | undefined {
  const match = typeof cap === 'string' ? /^\s*([\d.]+)\s*(m3|L)\/(d|day|week)\s*$/.exec(cap) : null;
  if (match === null) return undefined;
  const [, number, unit, time] = match;
  return (Number(number) * (unit === 'm3' ? 1000 : 1)) / (time === 'week' ? 7 : 1);
}

/** The top-up of the file itself with caps no lower than so much. */
function withCaps(file: PlainFile, litres: number): PlainFile {
  const from = valueAt(file, ['top-up', 'from']);
  if (!Array.isArray(from)) return file;
  const raised = (from as readonly Plain[]).map((source) => {
    const cap = isBox(source) ? litresOf(source['cap']) : undefined;
    return cap === undefined || cap >= litres ? source : { ...(source as PlainFile), cap: `${litres} L/d` };
  });
  return withValue(file, ['top-up', 'from'], raised);
}

/** More water by the float valve, where it is capped or shut: litres a day. */
export const moreTopUp: OpenChange = ({ scenario, situation, asked, file }) => {
  const { topUp, reservoir } = scenario;
  const { from, startDate, thirst } = situation;
  const capped = topUp?.sources.some(
    (source) =>
      source.kind === 'mains' && (Number.isFinite(source.dailyCap) || source.weeklyCap !== undefined),
  );
  const shut = entriesOf(file, 'actions').some(isTopUp);
  if (topUp === undefined || !(asked || situation.short) || !(capped === true || shut)) return undefined;
  const size = Math.max(1, tidy(Number(((thirst * 1000 * TOP_UP.times) / TOP_UP.steps).toPrecision(1))));
  return {
    ...{ name: 'top-up', effort: 2, most: TOP_UP.steps, ends: false, from, unit: 'L/d', at: [reservoir] },
    amount: (steps) => tidy(steps * size),
    apply: (before, steps) => {
      const litres = tidy(steps * size);
      const cap = { cap: `${litres} L/d` };
      return withActions(withCaps(before, litres), (entry) => {
        if (!isTopUp(entry)) return [entry];
        const what = entry['top-up'];
        const { at } = timesOf(entry, startDate);
        if (isBox(what)) {
          const had = litresOf(what['cap']);
          return had === undefined || had >= litres ? [entry] : [{ ...entry, 'top-up': cap }];
        }
        if (what !== 'stopped') return [entry];
        if (at >= from - 1e-6) return [{ ...entry, 'top-up': cap }];
        const rest = withoutTimes(entry);
        return [
          { from: daysText(at), until: daysText(from), ...rest },
          { at: daysText(from), 'top-up': cap },
        ];
      });
    },
  };
};

/** Crops cleared early and beds left empty, the thirstiest first: how many of them. */
export const emptyBeds: OpenChange = ({ scenario, situation, asked }) => {
  if (!(asked || situation.short) || scenario.plantings.length === 0) return undefined;
  const order = [...scenario.plantings].sort((a, b) => b.area - a.area).map(({ name }) => name);
  return {
    ...{
      name: 'leave-empty',
      effort: 2,
      most: order.length,
      ends: false,
      from: situation.from,
      unit: 'beds',
    },
    at: order,
    amount: (steps) => steps,
    apply: (file, steps) =>
      order
        .slice(0, steps)
        .reduce((so, name) => withAction(so, { at: daysText(situation.from), 'leave-empty': name }), file),
  };
};
