import { givenParameters, type Parameters } from '../library/parameters.js';
import { processes } from '../processes/index.js';
import { checkScenario } from '../scenario/check-scenario.js';
import type { Scenario } from '../scenario/scenario.js';
import type { Values } from '../library/values.js';
import { type Component, contentOf, type Content, unitOf, waterComponents } from '../processes/components.js';
import type { Process } from '../processes/process.js';
import { checkSavedComponents } from './check-saved-components.js';
import { metabolismsOf } from './feed-conversion.js';
import { readingsOf, waterRead, type Instance } from './instance.js';
import { layOut, ownInWater, stateOf, waterState, type Layout } from './layout.js';
import type { Entry, Model, Row } from './model.js';
import { asOurs, contentWith, type Extension, ownContent, ownProcesses } from './own.js';
import { scopeTo } from './scope.js';
import { sitesOf, sitesWithOwn, type Site } from './sites.js';
import { packPattern, packRows } from '../solve/sparse-rows.js';
import { checkAtDraws, closedRow, type ClosedTerm, type ContentIn } from './stoichiometry.js';
import { layStreams, type Stream } from './streams.js';

/** How a model is compiled. */
export interface CompileOptions {
  /** Components, processes and numbers of a user's own, made by `extension`. */
  readonly extension?: Extension;
  /**
   * Parameter draws at which every row must close, besides the given values; default 20. 0 is for the
   * members of an ensemble, whose rows were checked at random draws when the first was compiled.
   */
  readonly closureDraws?: number;
  /** Vessels that may hold lime, where the draws of a member do not decide it: as `limedVessels` finds them of the file as it stands. */
  readonly limed?: ReadonlySet<string>;
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

/** Something that streams carry: its state in a vessel, what it holds and is counted in. */
interface Carried {
  readonly component: Component;
  readonly unit: string;
  readonly content: Content;
  readonly stateIn: (vessel: number) => number;
}

/** The rows of a stream: one for each thing that it carries. */
function transportRows(stream: Stream, layout: Layout, carried: readonly Carried[]): readonly Row[] {
  const outside = stream.account ?? 'discharge';
  return carried.map(({ component, unit, content, stateIn }): Row => {
    const end = (vessel: number, coefficient: number): Entry => ({
      component,
      coefficient,
      content,
      state: vessel < 0 ? -1 : stateIn(vessel),
      place: vessel < 0 ? outside : layout.vessels[vessel],
    });
    return {
      id: `${component}: ${stream.id}`,
      process: 'transport',
      place: stream.from < 0 ? outside : layout.vessels[stream.from],
      unit,
      entries: [end(stream.from, -1), end(stream.to, 1)],
    };
  });
}

/** Adds the rows of every stream that a test lets through; the first row of each, or -1. */
function addTransport(
  work: Work,
  carried: readonly Carried[],
  carries: (stream: Stream) => boolean,
): readonly number[] {
  return work.streams.map((stream) => {
    if (carried.length === 0 || !carries(stream)) return -1;
    const first = work.rows.length;
    work.rows.push(...transportRows(stream, work.layout, carried));
    if (stream.from >= 0)
      carried.forEach(({ stateIn }, c) => (work.dependence[first + c] = [stateIn(stream.from)]));
    return first;
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
 * parameters and at random draws (20). An `extension` is checked too.
 * @throws InputError with every fault of the scenario, then of what the user added (`processes.uptake.reads[1]`);
 *   RangeError when a row makes or destroys something conserved.
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
 * @throws InputError with every fault of what the user added, or with every measured feed conversion that cannot be;
 *   RangeError when a row makes or destroys something conserved.
 */
export function compileChecked(scenario: Scenario, given: Parameters, options: CompileOptions = {}): Model {
  const { closureDraws = 20, extension } = options;
  return assembled(scenario, given, options, {
    ours: checkAtDraws(closureDraws, scenario.overrides),
    own: (content) =>
      checkAtDraws(closureDraws, scenario.overrides, { content, numbers: extension?.numbers ?? [] }),
  });
}

/** Checks of rows at random draws: of ours, and of a user's own by what their components hold. */
interface DrawChecks {
  readonly ours: CheckRow;
  readonly own: (content: ContentIn) => CheckRow;
}

type CheckRow = ReturnType<typeof checkAtDraws>;

/** No check at random draws. */
const noDraws: DrawChecks = { ours: () => undefined, own: () => () => undefined };

/**
 * The model of a scenario that was checked before: by `checkScenario`, by a reader, or by the tests of a program that holds it. It is
 * `compileModel` with the numbers that the scenario gives and without its checks, for a program that is to be small. What a
 * check would have found goes on unseen: a pump that is not there pumps nothing, a species that is not there is a bare RangeError.
 */
export function compileUnchecked(scenario: Scenario): Model {
  return assembled(scenario, givenParameters(scenario.overrides), {}, noDraws);
}

/** A model made of a scenario as it stands; rows are checked to close at the given numbers, and as `checks` says. */
function assembled(
  scenario: Scenario,
  given: Parameters,
  { extension, limed }: Pick<CompileOptions, 'extension' | 'limed'>,
  checks: DrawChecks,
): Model {
  const components = extension?.components ?? [];
  checkSavedComponents(scenario, components);
  const parameters = extension?.check(scenario, given) ?? given;
  const layout = layOut(scenario, parameters, components, limed);
  const plain = scopeTo(parameters, {});
  const metabolisms = metabolismsOf(scenario, parameters);
  const content = contentWith(components);
  const work: Work = {
    ...{ scenario, parameters, layout, streams: layStreams(scenario), content },
    ...{ rows: [], dependence: [], instances: [], scopes: new Map() },
  };
  const ours = waterComponents.map((component): Carried => ({
    ...{ component, unit: unitOf[component], content: contentOf(component, plain) },
    stateIn: (vessel) => waterState(vessel, component),
  }));
  const own = ownInWater(layout).map(({ component, states }): Carried => ({
    ...{ component: asOurs(component), unit: component.unit, content: ownContent(component, plain) },
    stateIn: (vessel) => states[vessel],
  }));
  const streamRow = addTransport(work, ours, ({ carries }) => carries);
  for (const process of processes)
    addProcess(work, process, sitesOf(process, scenario, layout, metabolisms), checks.ours);
  const ownAtDraws = checks.own(content);
  for (const process of ownProcesses(extension ?? {}))
    addProcess(work, process, sitesWithOwn(process, scenario, layout, plain, metabolisms), ownAtDraws);
  const ownStreamRow = addTransport(work, own, ({ carries, from }) => carries && from >= 0);
  const { rows, dependence, instances, streams } = work;
  return {
    ...{ scenario, parameters, layout, streams, rows, streamRow, ownStreamRow, instances },
    ...(extension && { extension }),
    contents: contentsOf(work),
    stoichiometry: packRows(
      rows.map((row) =>
        row.entries
          .filter((entry) => entry.state >= 0)
          .map((entry) => [entry.state, entry.coefficient] as const),
      ),
    ),
    dependence: packPattern(rows.map((_, row) => dependence[row] ?? [])),
  };
}

/** A model in the making. */
interface Work extends Pick<Model, 'scenario' | 'parameters' | 'layout' | 'streams'> {
  readonly content: ContentIn;
  readonly rows: Row[];
  /** States that the rate of each row depends on, where it depends on any. */
  readonly dependence: (readonly number[] | undefined)[];
  readonly instances: Instance[];
  /** The tables as seen from each subject. */
  readonly scopes: Map<string, Values>;
}

/** Adds the rows of a process at its places, its stoichiometry closed once for each subject. */
function addProcess(
  { parameters, layout, content, rows, dependence, instances, scopes }: Work,
  process: Process,
  sites: readonly Site[],
  checkDraws: ReturnType<typeof checkAtDraws>,
): void {
  const closed = new Map<string, readonly ClosedTerm[]>();
  for (const site of sites) {
    const key = JSON.stringify(site.subject);
    const values = scopes.get(key) ?? scopeTo(parameters, site.subject);
    scopes.set(key, values);
    let terms = closed.get(key);
    if (terms === undefined) {
      terms = closedRow(process, values, content);
      checkDraws(process, site.subject);
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
    const { place, vessel, cohort, batch, doser, probe, feed } = site;
    const reads = readingsOf(process, layout, site);
    // All of one shape: each run walks them at every change of forcing.
    const instance: Instance = {
      process,
      row,
      place,
      vessel,
      cohort,
      batch,
      doser,
      probe,
      feed,
      values,
      reads,
    };
    instances.push(instance);
    dependence[row] = statesRead(instance);
  }
}

/** Content of every state; fish by their species. */
function contentsOf({ scenario, layout, parameters, content }: Work): readonly Content[] {
  const species = new Map(scenario.fish.map((cohort) => [cohort.name, cohort.species]));
  return layout.states.map((state) => {
    const name = species.get(state.place);
    const subject = state.component.startsWith('fish') && name !== undefined ? { species: name } : {};
    return content(state.component, scopeTo(parameters, subject));
  });
}
