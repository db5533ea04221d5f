import type { Values } from '../library/values.js';
import type { Process } from '../processes/process.js';
import type { Feed, Scenario } from '../scenario/scenario.js';
import { feedKey } from './instance.js';
import type { Layout, PlaceIndex } from './layout.js';
import type { Metabolism, Subject } from './scope.js';

/** Lime that is no piece laid in: scale and what was dosed. */
const FINE = 'powder';

/** A place at which a process works. */
export interface Site extends PlaceIndex {
  readonly place: string;
  /** Feed for which the row holds (`feedKey`). */
  readonly feed?: string;
  readonly subject: Subject;
}

/**
 * Places at which a process works: those of its kind that its own rule (`where`) lets it work at.
 * @param metabolisms of cohorts with a measured feed conversion: `metabolismsOf`
 */
export function sitesOf(
  process: Process,
  scenario: Scenario,
  layout: Layout,
  metabolisms: ReadonlyMap<string, Metabolism>,
): readonly Site[] {
  const { where, bears } = process;
  const found = kindOf(process, scenario, layout, metabolisms);
  const all = bears === true ? found.filter(({ batch }) => layout.batches[batch].fruit >= 0) : found;
  return where === undefined ? all : all.filter(({ vessel }) => where(scenario.vessels[vessel]));
}

/** Places at which a process of a user's own works: those where all of their own components stand that it is about. */
export function sitesWithOwn(
  process: Process,
  scenario: Scenario,
  layout: Layout,
  values: Values,
  metabolisms: ReadonlyMap<string, Metabolism>,
): readonly Site[] {
  const about = new Set<string>([
    ...process.reads,
    ...process.stoichiometry(values).flatMap(({ component, outside }) => (outside ? [] : [component])),
  ]);
  const own = layout.own.filter(({ component }) => about.has(component.id));
  return sitesOf(process, scenario, layout, metabolisms).filter(({ vessel }) =>
    own.every(({ states }) => states[vessel] >= 0),
  );
}

/** All places of the kind that a process works at. */
function kindOf(
  process: Process,
  scenario: Scenario,
  layout: Layout,
  metabolisms: ReadonlyMap<string, Metabolism>,
): readonly Site[] {
  const inVessels = (has: (vessel: number) => boolean): readonly Site[] =>
    layout.vessels.flatMap((place, vessel) =>
      has(vessel) ? [{ place, vessel, cohort: -1, batch: -1, subject: {} }] : [],
    );
  switch (process.place) {
    case 'water':
      return inVessels(() => true);
    case 'surface':
      return inVessels((vessel) => layout.aob[vessel] >= 0);
    case 'floor':
      return inVessels((vessel) => layout.settled[vessel] >= 0);
    case 'lime':
      return inVessels((vessel) => layout.calcite[vessel] >= 0).map((site) => ({
        ...site,
        subject: { lime: scenario.vessels[site.vessel].lime?.kind ?? FINE },
      }));
    case 'cohort':
      return scenario.fish.flatMap((cohort, index) => {
        if (process.whose?.(cohort) === false) return [];
        const site = { place: cohort.name, vessel: layout.fish[index].vessel, cohort: index, batch: -1 };
        const { species, name } = cohort;
        const metabolism = metabolisms.get(name);
        const fish = { species, ...(metabolism !== undefined && { metabolism }) };
        if (process.perFeed === undefined) return [{ ...site, subject: fish }];
        const feeds = feedsOf(scenario, cohort.name);
        return feeds.map((feed) => ({
          ...site,
          place: feeds.length === 1 ? cohort.name : `${cohort.name} (${feedKey(feed)})`,
          feed: feedKey(feed),
          subject: { ...fish, feed },
        }));
      });
    case 'doser':
      return (scenario.dosers ?? []).flatMap(({ hold, vessel, probe, products }, doser) =>
        process.reads.includes(hold)
          ? products.map((product) => ({
              place: `${vessel} (${product})`,
              vessel: layout.vessels.indexOf(vessel),
              cohort: -1,
              batch: -1,
              doser,
              ...(probe === undefined ? {} : { probe: layout.vessels.indexOf(probe) }),
              subject: { product },
            }))
          : [],
      );
    case 'batch':
      return layout.batches.map((batch, index) => ({
        place: batch.name,
        vessel: batch.vessel,
        cohort: -1,
        batch: index,
        subject: { crop: scenario.plantings[batch.planting].crop },
      }));
  }
}

/** Every feed that a cohort gets in the course of a scenario. */
function feedsOf(scenario: Scenario, cohort: string): readonly Feed[] {
  const feeds = new Map<string, Feed>();
  for (const { name, feed } of scenario.fish) if (name === cohort) feeds.set(feedKey(feed), feed);
  const saved = scenario.saved?.operation.feeds[cohort];
  if (saved !== undefined) feeds.set(feedKey(saved), saved);
  const byRules = scenario.rules.flatMap(({ doing, undoing }) => [...doing, ...undoing]);
  for (const action of [...scenario.actions.map((timed) => timed.action), ...byRules]) {
    if (action.kind === 'feed' && action.cohort === cohort && action.feed)
      feeds.set(feedKey(action.feed), action.feed);
  }
  return [...feeds.values()];
}
