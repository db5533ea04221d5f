import type { Parameters } from '../library/parameters.js';
import { processes } from '../processes/index.js';
import type { Process } from '../processes/process.js';
import type { Feed, Scenario } from '../scenario/scenario.js';
import { checkAtDraws } from './stoichiometry.js';
import { checkClosure } from './stoichiometry.js';
import { unitOf, waterComponents } from '../processes/components.js';
import type { Values } from '../library/values.js';
import { contentOf, type Content } from '../processes/components.js';
import { feedKey, readingsOf, type Instance } from './instance.js';
import { layOut, waterState, type Layout } from './layout.js';
import type { Entry, Model, Row } from './model.js';
import { scopeTo, type Subject } from './scope.js';
import { packPattern, packRows } from '../solve/sparse-rows.js';
import { closeRow, type ClosedTerm } from './stoichiometry.js';
import { layStreams, type Stream } from './streams.js';

/** How a model is compiled. */
export interface CompileOptions {
  /**
   * Parameter draws at which every row must close, besides the given values; default 20. 0 is for the
   * members of an ensemble, whose rows were checked at random draws when the first was compiled.
   */
  readonly closureDraws?: number;
}

interface Site {
  readonly place: string;
  readonly vessel: number;
  readonly cohort: number;
  readonly batch: number;
  readonly feed?: string;
  readonly subject: Subject;
}

/** Places at which a process works. */
function sitesOf(process: Process, scenario: Scenario, layout: Layout): readonly Site[] {
  const vessel = (vessel: number): Site => ({
    place: layout.vessels[vessel],
    vessel,
    cohort: -1,
    batch: -1,
    subject: {},
  });
  const vessels = layout.vessels.map((_, vessel) => vessel);
  switch (process.place) {
    case 'water':
      return vessels.map(vessel);
    case 'surface':
      return vessels.filter((vessel) => layout.aob[vessel] >= 0).map(vessel);
    case 'floor':
      return vessels
        .filter((vessel) => layout.settled[vessel] >= 0)
        .filter((vessel) => process.id !== 'capture' || scenario.vessels[vessel].capture > 0)
        .filter((vessel) => process.id !== 'settling' || scenario.vessels[vessel].floor > 0)
        .map(vessel);
    case 'cohort':
      return scenario.cohorts.flatMap((cohort, index) => {
        const site = { place: cohort.name, vessel: layout.fish[index].vessel, cohort: index, batch: -1 };
        if (!usesFeed(process)) return [{ ...site, subject: { species: cohort.species } }];
        const feeds = feedsOf(scenario, cohort.name);
        return feeds.map((feed) => ({
          ...site,
          place: feeds.length === 1 ? cohort.name : `${cohort.name} (${feedKey(feed)})`,
          feed: feedKey(feed),
          subject: { species: cohort.species, feed },
        }));
      });
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

/** Whether the row of a process depends on the feed given. */
function usesFeed(process: Process): boolean {
  return process.id === 'feeding' || process.id === 'uneaten-feed';
}

/** Every feed that a cohort gets in the course of a scenario. */
function feedsOf(scenario: Scenario, cohort: string): readonly Feed[] {
  const feeds = new Map<string, Feed>();
  for (const { name, feed } of scenario.cohorts) if (name === cohort) feeds.set(feedKey(feed), feed);
  const byRules = scenario.rules.flatMap(({ doing, undoing }) => [...doing, ...undoing]);
  for (const action of [...scenario.actions.map((timed) => timed.action), ...byRules]) {
    if (action.kind === 'feed' && action.cohort === cohort && action.feed)
      feeds.set(feedKey(action.feed), action.feed);
  }
  return [...feeds.values()];
}

/** State of a component at a site, by its place in the layout. */
function stateAt(term: ClosedTerm, site: Site, layout: Layout): number {
  if (term.outside !== undefined) return -1;
  switch (term.component) {
    case 'aob':
      return layout.aob[site.vessel];
    case 'nob':
      return layout.nob[site.vessel];
    case 'settled':
      return layout.settled[site.vessel];
    case 'fish-mass':
      return layout.fish[site.cohort].mass;
    case 'fish-number':
      return layout.fish[site.cohort].number;
    case 'crop-mass':
      return layout.batches[site.batch].mass;
    case 'crop-nitrogen':
      return layout.batches[site.batch].nitrogen;
    default: {
      const component = waterComponents.find((name) => name === term.component);
      if (component === undefined) throw new RangeError(`${term.component} must name an account outside`);
      return waterState(site.vessel, component);
    }
  }
}

/** The eight rows of a stream that carries what is dissolved. */
function transportRows(stream: Stream, layout: Layout, values: Values): readonly Row[] {
  const outside = stream.account ?? 'discharge';
  return waterComponents.map((component): Row => {
    const content = contentOf(component, values);
    const end = (vessel: number, coefficient: number): Entry => ({
      component,
      coefficient,
      content,
      state: vessel < 0 ? -1 : waterState(vessel, component),
      place: vessel < 0 ? outside : layout.vessels[vessel],
    });
    return {
      id: `${component}: ${stream.id}`,
      process: 'transport',
      place: stream.from < 0 ? outside : layout.vessels[stream.from],
      unit: unitOf[component],
      entries: [end(stream.from, -1), end(stream.to, 1)],
    };
  });
}

function statesRead(instance: Instance): readonly number[] {
  const states = instance.reads.flatMap((reading) =>
    reading.kind === 'chemistry'
      ? (['tan', 'alkalinity', 'carbon'] as const).map((component) => waterState(instance.vessel, component))
      : [reading.state],
  );
  return [...new Set(states)].sort((a, b) => a - b);
}

/**
 * Makes a scenario into a model: states, streams, rows with their stoichiometry closed, and what each
 * rate depends on. Every process is checked to close at the given parameters and at random draws (20).
 * @throws RangeError when a row makes or destroys something conserved.
 */
export function compileModel(
  scenario: Scenario,
  parameters: Parameters,
  { closureDraws = 20 }: CompileOptions = {},
): Model {
  const layout = layOut(scenario);
  const streams = layStreams(scenario);
  const plain = scopeTo(parameters, {});
  const checkDraws = checkAtDraws(closureDraws, scenario.overrides);

  const rows: Row[] = [];
  const streamRow = streams.map((stream) => {
    if (!stream.carries) return -1;
    const first = rows.length;
    rows.push(...transportRows(stream, layout, plain));
    return first;
  });

  const instances: Instance[] = [];
  const scopes = new Map<string, Values>();
  for (const process of processes) {
    const closed = new Map<string, readonly ClosedTerm[]>();
    for (const site of sitesOf(process, scenario, layout)) {
      const key = JSON.stringify(site.subject);
      const values = scopes.get(key) ?? scopeTo(parameters, site.subject);
      scopes.set(key, values);
      let terms = closed.get(key);
      if (terms === undefined) {
        checkClosure(process, [values]);
        checkDraws(process, site.subject);
        terms = closeRow(process, values);
        closed.set(key, terms);
      }
      const row = rows.length;
      rows.push({
        id: `${process.id}@${site.place}`,
        process: process.id,
        place: layout.vessels[site.vessel],
        unit: process.unit,
        entries: terms.map(({ component, outside, coefficient, content }) => ({
          component,
          coefficient,
          content,
          state: stateAt({ component, coefficient, content, ...(outside && { outside }) }, site, layout),
          place: outside ?? layout.vessels[site.vessel],
        })),
      });
      const { place, vessel, cohort, batch } = site;
      const reads = readingsOf(process, layout, site);
      instances.push({ process, row, place, vessel, cohort, batch, feed: site.feed, values, reads });
    }
  }

  const dependence: (readonly number[])[] = rows.map(() => []);
  streams.forEach((stream, index) => {
    if (streamRow[index] < 0 || stream.from < 0) return;
    waterComponents.forEach((component, offset) => {
      dependence[streamRow[index] + offset] = [waterState(stream.from, component)];
    });
  });
  for (const instance of instances) dependence[instance.row] = statesRead(instance);

  return {
    scenario,
    parameters,
    layout,
    streams,
    rows,
    streamRow,
    instances,
    contents: contentsOf(scenario, layout, parameters),
    stoichiometry: packRows(
      rows.map((row) =>
        row.entries
          .filter((entry) => entry.state >= 0)
          .map((entry) => [entry.state, entry.coefficient] as const),
      ),
    ),
    dependence: packPattern(dependence),
  };
}

/** Content of every state; fish by their species. */
function contentsOf(scenario: Scenario, layout: Layout, parameters: Parameters): readonly Content[] {
  const species = new Map(scenario.cohorts.map((cohort) => [cohort.name, cohort.species]));
  return layout.states.map((state) => {
    const name = species.get(state.place);
    const subject = state.component.startsWith('fish') && name !== undefined ? { species: name } : {};
    return contentOf(state.component, scopeTo(parameters, subject));
  });
}
