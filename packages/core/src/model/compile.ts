import type { Parameters } from '../library/parameters.js';
import { processes } from '../processes/index.js';
import { checkScenario } from '../scenario/check-scenario.js';
import type { Scenario } from '../scenario/scenario.js';
import type { Values } from '../library/values.js';
import { contentOf, type Content, unitOf, waterComponents } from '../processes/components.js';
import { metabolismsOf } from './feed-conversion.js';
import { readingsOf, waterRead, type Instance } from './instance.js';
import { layOut, stateOf, waterState, type Layout } from './layout.js';
import type { Entry, Model, Row } from './model.js';
import { scopeTo } from './scope.js';
import { sitesOf, type Site } from './sites.js';
import { packPattern, packRows } from '../solve/sparse-rows.js';
import { checkAtDraws, checkClosure, closeRow, type ClosedTerm } from './stoichiometry.js';
import { layStreams, type Stream } from './streams.js';

/** How a model is compiled. */
export interface CompileOptions {
  /**
   * Parameter draws at which every row must close, besides the given values; default 20. 0 is for the
   * members of an ensemble, whose rows were checked at random draws when the first was compiled.
   */
  readonly closureDraws?: number;
}

/** State of a component at a site. */
function stateAt({ component, outside }: ClosedTerm, site: Site, layout: Layout): number {
  if (outside !== undefined) return -1;
  const state = stateOf(layout, site, component);
  if (state === undefined) throw new RangeError(`${component} must name an account outside`);
  if (state < 0) throw new RangeError(`${component} has no place in ${layout.vessels[site.vessel]}`);
  return state;
}

/** The entries of a row at a site. */
function entriesAt(terms: readonly ClosedTerm[], site: Site, layout: Layout): readonly Entry[] {
  return terms.map((term) => ({
    component: term.component,
    coefficient: term.coefficient,
    content: term.content,
    state: stateAt(term, site, layout),
    place: term.outside ?? layout.vessels[site.vessel],
  }));
}

/** The rows of a stream that carries what is dissolved. */
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
      ? (['tan', 'alkalinity', 'carbon'] as const).map((component) =>
          waterState(waterRead(instance), component),
        )
      : [reading.state],
  );
  return [...new Set(states)].sort((a, b) => a - b);
}

/**
 * Makes a scenario into a model: states, streams, rows with their stoichiometry closed, and what each
 * rate depends on. The scenario is checked as `checkScenario` does; every process is checked to close at the given
 * parameters and at random draws (20).
 * @throws InputError with every fault of the scenario; RangeError when a row makes or destroys something conserved.
 */
export function compileModel(
  scenario: Scenario,
  parameters: Parameters,
  options: CompileOptions = {},
): Model {
  checkScenario(scenario, parameters);
  return compileChecked(scenario, parameters, options);
}

/**
 * As `compileModel`, of a scenario that was checked: read from a file, or made of one that was, such as the member of
 * an ensemble.
 * @throws RangeError when a row makes or destroys something conserved; InputError with every measured feed conversion that
 * cannot be.
 */
export function compileChecked(
  scenario: Scenario,
  parameters: Parameters,
  { closureDraws = 20 }: CompileOptions = {},
): Model {
  const layout = layOut(scenario, parameters);
  const streams = layStreams(scenario);
  const plain = scopeTo(parameters, {});
  const metabolisms = metabolismsOf(scenario, parameters);
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
    for (const site of sitesOf(process, scenario, layout, metabolisms)) {
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
        entries: entriesAt(terms, site, layout),
      });
      const { place, vessel, cohort, batch, doser, probe } = site;
      const reads = readingsOf(process, layout, site);
      instances.push({
        ...{ process, row, place, vessel, cohort, batch, feed: site.feed, values, reads },
        ...(doser === undefined ? {} : { doser }),
        ...(probe === undefined ? {} : { probe }),
      });
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
