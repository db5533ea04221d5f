import { dateAfter } from '../base/calendar.js';
import { INSTANT } from '../base/instant.js';
import { unitIn } from '../model/layout.js';
import type { Component } from '../processes/components.js';
import type { Model } from '../model/model.js';
import type {
  SavedMemory,
  SavedMorning,
  SavedOperation,
  SavedSource,
  SavedState,
} from '../scenario/saved-state.js';
import type { Doser, Rule, Scenario, TopUp } from '../scenario/scenario.js';
import { type Operation, openOperation } from './operation.js';
import type { ResumableRun, RunState } from './run-state.js';
import { fatOf } from './stock.js';

/** Everything that stands in a system at the end of a run, by name; `start: { saved: FILE }` goes on from it. */
export interface EndState extends SavedState {
  readonly schema: 'leat-state';
  readonly version: 3;
  readonly title: string;
  readonly states: readonly {
    readonly component: Component;
    /** Vessel, cohort or batch of a planting. */
    readonly place: string;
    readonly vessel: string;
    /** In `unit`. */
    readonly amount: number;
    readonly unit: string;
  }[];
}

/** The state of a run before its numerical methods are opened. */
type Started = Omit<RunState, 'memory'>;

const finite = (value: number): number | null => (Number.isFinite(value) ? value : null);
const number = (value: number | null): number => value ?? Number.NaN;
const same = (a: unknown, b: unknown): boolean => JSON.stringify(a) === JSON.stringify(b);

/** The names of those for which something holds. */
function namesOf(
  list: readonly { readonly name: string }[],
  holds: (index: number) => boolean,
): readonly string[] {
  return list.filter((_, index) => holds(index)).map(({ name }) => name);
}

/** What holds of each of some, by name, but for those of which it is undefined. */
function byName<T>(
  list: readonly { readonly name: string }[],
  value: (index: number) => T | undefined,
): Record<string, T> {
  return Object.fromEntries(
    list.flatMap(({ name }, index) => {
      const held = value(index);
      return held === undefined ? [] : [[name, held] as const];
    }),
  );
}

/** What actions have changed of an operation. */
function changesOf(scenario: Scenario, now: Operation, own: Operation): SavedOperation {
  const { fish: cohorts, pumps, vessels, waters, dosers = [] } = scenario;
  const changed = <T>(a: T, b: T): T | undefined => (same(a, b) ? undefined : a);
  return {
    rations: byName(cohorts, (i) => changed(now.ration[i], own.ration[i])),
    factors: byName(cohorts, (i) => changed(now.factor[i], own.factor[i])),
    feeds: byName(cohorts, (i) => changed(now.feed[i], own.feed[i])),
    pumpsOff: namesOf(pumps, (i) => !now.pumpOn[i]),
    airOff: namesOf(vessels, (i) => !now.aerating[i]),
    dosersOff: namesOf(vessels, (i) =>
      dosers.some(({ vessel }, doser) => vessel === vessels[i].name && !now.dosing[doser]),
    ),
    waters: byName(waters, (i) => {
      const water = now.waters.get(waters[i].name);
      return water === undefined ? undefined : changed(water, own.waters.get(waters[i].name));
    }),
    topUpStopped: now.topUpStopped,
  };
}

const sourceName = (source: TopUp['sources'][number]): string =>
  source.kind === 'mains' ? source.water : 'rain-tank';

function sourcesOf({ topUp }: Scenario, { water, operation }: RunState, own: Operation): SavedSource[] {
  const cap = (now: number, before: number): number | null | undefined =>
    now === before ? undefined : finite(now);
  return (topUp?.sources ?? []).map((source, i) => {
    const dailyCap = cap(operation.caps[i], own.caps[i]);
    const weeklyCap = cap(operation.weeklyCaps[i], own.weeklyCaps[i]);
    return {
      name: sourceName(source),
      today: water.spent[i],
      thisWeek: water.spentInWeek[i],
      ...(dailyCap !== undefined && { dailyCap }),
      ...(weeklyCap !== undefined && { weeklyCap }),
    };
  });
}

const doserKey = ({ hold, vessel, sign }: Doser): string => `${hold}@${vessel} ${sign}`;

/** What a rule says, in one line: by this it is known again. */
const said = (rule: Rule): string => JSON.stringify(rule);

function memoryOf({ memory: { steps, pH } }: RunState): SavedMemory {
  const list = (values: Float64Array): (number | null)[] => Array.from(values, finite);
  return {
    ...(steps?.natural !== undefined && { natural: steps.natural }),
    opening: finite(steps?.opening ?? Infinity),
    refusedBefore: steps?.refusedBefore ?? false,
    hydrogen: list(pH.hydrogen),
    origin: list(pH.origin),
    slope: list(pH.slope),
  };
}

/**
 * The state of a run at its end, to go on from: whatever the rest of it depends on. Two runs in a row are one: to the
 * same bytes where the first ends with a day.
 */
export function endStateOf({ model, state }: Pick<ResumableRun, 'model' | 'state'>): EndState {
  const { layout, scenario } = model;
  const { vessels, fish: cohorts, plantings } = scenario;
  const own = openOperation(model);
  const { water, day } = state;
  return {
    schema: 'leat-state',
    version: 3,
    title: scenario.title,
    time: state.time,
    date: dateAfter(scenario.startDate, Math.floor(state.time + INSTANT)),
    volumes: byName(vessels, (i) => water.volume[i]),
    rainTank: water.rain,
    ages: byName(layout.batches, (i) =>
      Number.isNaN(state.planted[i]) ? undefined : state.time - state.planted[i],
    ),
    species: byName(cohorts, (i) => cohorts[i].species),
    crops: byName(layout.batches, (i) => plantings[layout.batches[i].planting].crop),
    operation: changesOf(scenario, state.operation, own),
    tripped: namesOf(scenario.pumps, (i) => water.tripped[i]),
    parched: namesOf(vessels, (i) => water.parched[i]),
    ...(water.siphoning.includes(true) && { siphoning: namesOf(vessels, (i) => water.siphoning[i]) }),
    spent: (scenario.dosers ?? []).filter((_, i) => state.spent[i]).map(doserKey),
    sources: sourcesOf(scenario, state, own),
    rules: scenario.rules.map((rule, i) => {
      const { active, last, times, turns, chatters, random } = state.controls[i];
      return {
        rule: said(rule),
        active,
        last: finite(last),
        times,
        turns,
        chatters,
        random: { ...random },
      };
    }),
    morning: {
      offered: byName(cohorts, (i) => day.offered[i]),
      evaporation: byName(vessels, (i) => day.evaporation[i]),
      ionic: byName(vessels, (i) => day.ionic[i]),
      transpiration: byName(plantings, (i) => day.transpiration[i]),
    },
    memory: memoryOf(state),
    states: layout.states.map(({ component, place, vessel }, index) => ({
      component,
      place,
      vessel: layout.vessels[vessel],
      amount: state.y[index],
      unit: unitIn(layout, component),
    })),
  };
}

/** Puts what stood in a saved state in place of what the scenario says; places that it does not know stay as they are. */
function putAmounts(model: Model, saved: SavedState, { y, planted }: Started): void {
  const { layout } = model;
  const amounts = new Map(saved.states.map((state) => [`${state.component}@${state.place}`, state.amount]));
  layout.states.forEach((state, index) => {
    y[index] = amounts.get(`${state.component}@${state.place}`) ?? y[index];
  });
  // A state saved before fat was followed holds fish as fat as usual.
  layout.fish.forEach(({ mass, number, fat }, cohort) => {
    const { place } = layout.states[mass];
    if (!amounts.has(`fish-mass@${place}`) || amounts.has(`fish-fat@${place}`)) return;
    y[fat] = y[number] > 0 ? fatOf(model, cohort, y[number], y[mass] / y[number]) : 0;
  });
  layout.batches.forEach(({ name }, index) => {
    if (name in saved.crops) planted[index] = saved.time - (saved.ages[name] ?? Number.NaN);
  });
}

function putOperation({ scenario }: Model, saved: SavedState, { operation }: Started): void {
  const { rations, factors, feeds, pumpsOff, airOff, dosersOff, waters, topUpStopped } = saved.operation;
  scenario.fish.forEach(({ name }, i) => {
    operation.ration[i] = rations[name] ?? operation.ration[i];
    operation.factor[i] = factors[name] ?? operation.factor[i];
    operation.feed[i] = feeds[name] ?? operation.feed[i];
  });
  scenario.pumps.forEach(({ name }, i) => (operation.pumpOn[i] = !pumpsOff.includes(name)));
  scenario.vessels.forEach(({ name }, i) => (operation.aerating[i] = !airOff.includes(name)));
  for (const [name, water] of Object.entries(waters)) {
    if (operation.waters.has(name)) operation.waters.set(name, water);
  }
  (scenario.dosers ?? []).forEach(({ vessel }, i) => (operation.dosing[i] = !dosersOff.includes(vessel)));
  operation.topUpStopped = topUpStopped;
}

function putWater({ scenario }: Model, saved: SavedState, { water, operation }: Started): void {
  scenario.pumps.forEach(({ name }, i) => (water.tripped[i] = saved.tripped.includes(name)));
  scenario.vessels.forEach(({ name }, i) => {
    water.parched[i] = saved.parched.includes(name);
    water.siphoning[i] = saved.siphoning?.includes(name) ?? false;
  });
  const left = [...saved.sources];
  (scenario.topUp?.sources ?? []).forEach((source, i) => {
    const found = left.findIndex(({ name }) => name === sourceName(source));
    if (found < 0) return;
    const [{ today, thisWeek, dailyCap, weeklyCap }] = left.splice(found, 1);
    water.spent[i] = today;
    water.spentInWeek[i] = thisWeek;
    if (dailyCap !== undefined) operation.caps[i] = dailyCap ?? Infinity;
    if (weeklyCap !== undefined) operation.weeklyCaps[i] = weeklyCap ?? Infinity;
  });
}

/** Rules that say the same go on as they stood; others begin anew. */
function putRules({ scenario }: Model, saved: SavedState, { controls }: Started): void {
  const left = [...saved.rules];
  scenario.rules.forEach((rule, i) => {
    const own = said(rule);
    const found = left.findIndex((each) => each.rule === own);
    if (found < 0) return;
    const [{ active, last, times, turns, chatters, random }] = left.splice(found, 1);
    Object.assign(controls[i], { active, last: last ?? -Infinity, times, turns, chatters });
    Object.assign(controls[i].random, random);
  });
}

/** The morning of a saved state, where it knows every place of a scenario; else it is to be found anew. */
export function savedMorning({ scenario }: Model): SavedMorning | undefined {
  const morning = scenario.saved?.morning;
  if (morning === undefined) return undefined;
  const { offered, evaporation, ionic, transpiration } = morning;
  const knows = (list: readonly { readonly name: string }[], of: object): boolean =>
    list.every(({ name }) => name in of);
  const { fish: cohorts, vessels, plantings } = scenario;
  const whole =
    knows(cohorts, offered) &&
    knows(vessels, evaporation) &&
    knows(vessels, ionic) &&
    knows(plantings, transpiration);
  return whole ? morning : undefined;
}

function putMorning(model: Model, { day }: Started): void {
  const morning = savedMorning(model);
  if (morning === undefined) return;
  const { fish: cohorts, vessels, plantings } = model.scenario;
  cohorts.forEach(({ name }, i) => (day.offered[i] = morning.offered[name]));
  vessels.forEach(({ name }, i) => (day.evaporation[i] = morning.evaporation[name]));
  vessels.forEach(({ name }, i) => (day.ionic[i] = morning.ionic[name]));
  plantings.forEach(({ name }, i) => (day.transpiration[i] = morning.transpiration[name]));
}

/** Lays a saved state over the state of a run that is about to begin at its time. */
export function goOn(model: Model, saved: SavedState, state: Started): void {
  putAmounts(model, saved, state);
  putOperation(model, saved, state);
  putWater(model, saved, state);
  putRules(model, saved, state);
  (model.scenario.dosers ?? []).forEach(
    (doser, i) => (state.spent[i] = saved.spent.includes(doserKey(doser))),
  );
  putMorning(model, state);
}

/** What the numerical methods remembered, where a saved state is of just the states of a model. */
export function rememberedIn(
  { layout }: Model,
  saved: SavedState | undefined,
): RunState['memory'] | undefined {
  if (saved?.memory === undefined) return undefined;
  const { natural, opening, refusedBefore, hydrogen, origin, slope } = saved.memory;
  const own = layout.states.map(({ component, place }) => [component, place]);
  if (
    !same(
      own,
      saved.states.map(({ component, place }) => [component, place]),
    )
  )
    return undefined;
  const list = (values: readonly (number | null)[]): Float64Array => Float64Array.from(values, number);
  return {
    steps: { natural, opening: opening ?? Infinity, refusedBefore },
    pH: { hydrogen: list(hydrogen), origin: list(origin), slope: list(slope) },
  };
}
