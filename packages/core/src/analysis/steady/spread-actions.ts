// Reads numbers as: steady state
import { waterComponents } from '../../processes/components.js';
import { waterState, type Layout } from '../../model/layout.js';
import type { Parameters } from '../../library/parameters.js';
import { concentrationsOf } from '../../run/ledger.js';
import type { Action, Deed, Scenario } from '../../scenario/scenario.js';

/** A deed that is done again and again, `every` so many days. */
export interface RepeatedDeed {
  readonly deed: Deed;
  readonly every: number;
}

/** Actions of a scenario by what a state that lasts can make of them. */
export interface SpreadDeeds {
  /** Doses, drainings and changes of water at equal intervals: spread evenly over time. */
  readonly spread: readonly RepeatedDeed[];
  /** Kinds of deeds that are left out, because they happen once or change stock or settings. */
  readonly leftOut: readonly Deed['kind'][];
}

/** What a state gains whatever it is, per day, and the share of it that goes per day. */
export interface EvenTerm {
  readonly state: number;
  readonly gain: number;
  readonly loss: number;
}

const spreadable: ReadonlySet<Deed['kind']> = new Set(['dose', 'drain-solids', 'change-water']);

/** Days between like deeds, where there are at least two at equal distances that go on to the end of the run. */
function interval(actions: readonly Action[], days: number): number | undefined {
  const times = actions.map(({ at }) => at).sort((a, b) => a - b);
  if (times.length < 2) return undefined;
  const every = (times[times.length - 1] - times[0]) / (times.length - 1);
  const even = times.every((time, i) => Math.abs(time - times[0] - i * every) < 1e-6);
  const goesOn = times[times.length - 1] + every >= days - 1e-6;
  return even && goesOn && every > 0 ? every : undefined;
}

/** Sorts the actions of a scenario into those that are spread evenly and those that are left out. */
export function spreadDeeds(scenario: Scenario): SpreadDeeds {
  const like = new Map<string, Action[]>();
  for (const action of scenario.actions) {
    const key = JSON.stringify(action.deed);
    like.set(key, [...(like.get(key) ?? []), action]);
  }
  const spread: RepeatedDeed[] = [];
  const leftOut = new Set<Deed['kind']>();
  for (const actions of like.values()) {
    const { deed } = actions[0];
    const every = spreadable.has(deed.kind) ? interval(actions, scenario.days) : undefined;
    if (every === undefined) leftOut.add(deed.kind);
    else spread.push({ deed, every });
  }
  return { spread, leftOut: [...leftOut] };
}

/** Water that repeated drainings take out of each vessel, m3 d-1; the float makes it good. */
export function drainedWater(spread: readonly RepeatedDeed[]): ReadonlyMap<string, number> {
  const drained = new Map<string, number>();
  for (const { deed, every } of spread) {
    if (deed.kind !== 'drain-solids' || deed.water === 0) continue;
    drained.set(deed.vessel, (drained.get(deed.vessel) ?? 0) + deed.water / every);
  }
  return drained;
}

/**
 * What repeated deeds do per day to the states. A share s drained every P days is spread as a loss of
 * 2 s / (P (2 - s)) a day: with a steady inflow the mean of what lies there is then the same.
 */
export function evenTerms(
  spread: readonly RepeatedDeed[],
  { layout, scenario, parameters }: { layout: Layout; scenario: Scenario; parameters: Parameters },
): readonly EvenTerm[] {
  return spread.flatMap(({ deed, every }): EvenTerm[] => {
    if (deed.kind === 'dose') {
      const cell = layout.cells.indexOf(deed.vessel);
      return (['tan', 'alkalinity', 'carbon', 'chloride'] as const).map((component) => ({
        state: waterState(cell, component),
        gain: (deed.mass * parameters.value(`dose.${deed.product}.${component}`)) / every,
        loss: 0,
      }));
    }
    if (deed.kind === 'drain-solids') {
      const state = layout.settled[layout.cells.indexOf(deed.vessel)];
      const loss = (2 * deed.share) / (every * (2 - deed.share));
      return state < 0 ? [] : [{ state, gain: 0, loss }];
    }
    if (deed.kind === 'change-water') {
      const cell = layout.cells.indexOf(deed.vessel);
      const there = scenario.vessels[cell].volume;
      const perDay = Math.min(there, deed.volume ?? (deed.share ?? 0) * there) / every;
      const water = scenario.waters.find(({ name }) => name === deed.water);
      if (water === undefined) throw new RangeError(`no water named ${deed.water}`);
      return concentrationsOf(water).map((concentration, c) => ({
        state: waterState(cell, waterComponents[c]),
        gain: concentration * perDay,
        loss: perDay / there,
      }));
    }
    throw new RangeError(`${deed.kind} is not spread`);
  });
}
