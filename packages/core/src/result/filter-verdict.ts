// Reads numbers as: filter verdict
import { bareShare } from '../processes/kernels/rate-terms.js';
import { pow, pow10 } from '../base/elementary.js';
import { waterState } from '../model/layout.js';
import type { Run } from '../run/run.js';
import { runningMean } from './judge.js';
import type { Series } from './series.js';

/** What holds back a filter. */
export type FilterHeld = 'oxygen' | 'carbon' | 'acid' | 'cold' | 'young' | 'covered' | 'stunned' | 'load';

/**
 * Whether the filter kept up with the fish: it falls behind while more ammonia and nitrite stand in the water than a day
 * brings, and either of them is above its guide in a vessel with fish.
 */
export interface FilterVerdict {
  readonly state: 'keeps-up' | 'falls-behind' | 'caught-up';
  /** What stands out more, as a multiple of its guide. */
  readonly by: 'ammonia' | 'nitrite';
  /**
   * What held back the ammonia oxidisers most when they first fell behind, in the vessel with most of their surface:
   * `young` they were not grown in, `covered` by what grows on organic matter, `stunned` by a bath or lack of air, `load` nothing but how much there was to do.
   */
  readonly held?: FilterHeld;
  /** d: when it first fell behind; absent where it did not. */
  readonly from?: number;
  /** d: when it last caught up; absent where it did not. */
  readonly until?: number;
  /** Most TAN in a vessel with fish, mean of a day, mg N/L. */
  readonly ammonia: number;
  /** The same of nitrite, mg N/L. */
  readonly nitrite: number;
}

/** Days over which what the system brings is taken. */
const WEEK = 7;

/** g N of ammonia that came into the water up to each output time, by every row that makes it. */
function broughtIn({ model, samples }: Run): readonly number[] {
  const rows = model.rows.flatMap(({ process, entries }, row) =>
    process === 'transport'
      ? []
      : entries
          .filter((entry) => entry.component === 'tan' && entry.state >= 0 && entry.coefficient > 0)
          .map(({ coefficient }) => [row, coefficient]),
  );
  return samples.map(({ x }) => rows.reduce((total, [row, per]) => total + per * x[row], 0));
}

/** g N of ammonia and nitrite in all the water. */
function standing({ model, samples }: Run): readonly number[] {
  const states = model.layout.vessels.flatMap((_, vessel) => [
    waterState(vessel, 'tan'),
    waterState(vessel, 'nitrite'),
  ]);
  return samples.map(({ y }) => states.reduce((total, state) => total + y[state], 0));
}

/** The largest of several courses at each time, NaN where there is none. */
function largest(courses: readonly ArrayLike<number>[], count: number): Float64Array {
  return Float64Array.from({ length: count }, (_, i) =>
    courses.reduce((most, values) => (values[i] > most ? values[i] : most), 0),
  );
}

/** What held the oxidisers back at an output time. */
function heldBy(run: Run, series: readonly Series[], at: number): FilterHeld {
  const { parameters, scenario } = run.model;
  const surface = scenario.vessels.reduce((most, vessel) => (vessel.surface > most.surface ? vessel : most));
  const all = (quantity: string): Float64Array =>
    series.find(({ name }) => name === `${quantity}@${surface.name}`)?.values ?? new Float64Array(0);
  const value = (quantity: string): number => all(quantity)[at];
  const monod = (quantity: string, id: string): number =>
    Math.max(0, value(quantity)) / (Math.max(0, value(quantity)) + parameters.value(id));
  const film = all('aob');
  const most = film.reduce((top, each) => Math.max(top, each), 0);
  // A film that has been fuller is not growing in: something else made it shrink.
  const grown = film.indexOf(most) <= at ? 1 : value('aob') / most;
  const shares = [
    ['young', grown],
    ['stunned', value('awake')],
    [
      'covered',
      bareShare(
        value('heterotrophs'),
        parameters.value('heterotroph.cover'),
        parameters.value('heterotroph.cover-most'),
      ),
    ],
    ['oxygen', monod('oxygen', 'aob.k-oxygen')],
    ['carbon', monod('carbon', 'aob.k-carbon')],
    ['acid', 1 / (1 + pow10(value('flank') - value('pH')))],
    ['cold', Math.min(1, pow(parameters.value('aob.growth-theta'), value('temperature') - 20))],
  ] as const;
  const [name, least] = shares.reduce((low, each) => (each[1] < low[1] ? each : low));
  return least < HELD ? name : 'load';
}

/** Share of the full rate below which something is said to hold the oxidisers back. */
const HELD = 0.7;

/** Whether the filter of a run kept up; undefined where the system has neither fish nor anything given to the filter. */
export function filterVerdict(run: Run, series: readonly Series[]): FilterVerdict | undefined {
  const { parameters, scenario, layout } = run.model;
  if (layout.aob.every((state) => state < 0)) return undefined;
  const times = run.samples.map(({ time }) => time);
  const homes = [...new Set(scenario.fish.map(({ vessel }) => vessel))];
  const places = homes.length > 0 ? homes : [scenario.reservoir];
  const course = (quantity: string): Float64Array => {
    const all = places.flatMap((place) => series.find(({ name }) => name === `${quantity}@${place}`) ?? []);
    const window = Math.max(1, scenario.every) === scenario.every ? 0 : 1;
    return largest(
      all.map(({ values }) => runningMean(times, values, window)),
      times.length,
    );
  };
  const [ammonia, nitrite] = [course('tan'), course('nitrite')];
  const guides = [parameters.value('limit.tan-guide.value'), parameters.value('limit.nitrite-guide.value')];
  const held = parameters.value('limit.filter-behind.value');
  const brought = broughtIn(run);
  const stands = standing(run);
  const behind = times.map((time, i) => {
    const since = times.findIndex((each) => each >= time - WEEK);
    const days = time - times[since];
    const perDay = days > 0 ? (brought[i] - brought[since]) / days : 0;
    const over = ammonia[i] > guides[0] || nitrite[i] > guides[1];
    return i > 0 && over && stands[i] > held * perDay;
  });
  const from = behind.indexOf(true);
  const last = behind.lastIndexOf(true);
  const until = from >= 0 && last < times.length - 1 ? times[last + 1] : undefined;
  const most = (values: Float64Array): number => values.reduce((top, value) => Math.max(top, value), 0);
  const [highAmmonia, highNitrite] = [most(ammonia), most(nitrite)];
  return {
    state: from < 0 ? 'keeps-up' : until === undefined ? 'falls-behind' : 'caught-up',
    by: highNitrite / guides[1] > highAmmonia / guides[0] ? 'nitrite' : 'ammonia',
    ...(from >= 0 && { from: times[from], held: heldBy(run, series, from) }),
    ...(until !== undefined && { until }),
    ammonia: highAmmonia,
    nitrite: highNitrite,
  };
}
