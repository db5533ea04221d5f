import { processes } from '../processes/index.js';
import { checkScenario } from '../scenario/check-scenario.js';
import { contentOf, unitOf, waterComponents } from '../processes/components.js';
import { checkSavedComponents } from './check-saved-components.js';
import { metabolismsOf } from './feed-conversion.js';
import { readingsOf, waterRead } from './instance.js';
import { layOut, ownInWater, stateOf, waterState } from './layout.js';
import { asOurs, contentWith, ownContent, ownProcesses } from './own.js';
import { scopeTo } from './scope.js';
import { sitesOf, sitesWithOwn } from './sites.js';
import { packPattern, packRows } from '../solve/sparse-rows.js';
import { checkAtDraws, checkClosure, closeRow } from './stoichiometry.js';
import { layStreams } from './streams.js';
/** State of a component at a site. */
function stateAt({ component, outside }, site, layout) {
    if (outside !== undefined)
        return -1;
    const state = stateOf(layout, site, component);
    if (state === undefined)
        throw new RangeError(`${component} must name an account outside`);
    if (state < 0)
        throw new RangeError(`${component} has no place in ${layout.vessels[site.vessel]}`);
    return state;
}
/** The entries of a row at a site. */
function entriesAt(terms, site, layout) {
    return terms.map((term) => ({
        component: term.component,
        coefficient: term.coefficient,
        content: term.content,
        state: stateAt(term, site, layout),
        place: term.outside ?? layout.vessels[site.vessel],
    }));
}
/** The rows of a stream: one for each thing that it carries. */
function transportRows(stream, layout, carried) {
    const outside = stream.account ?? 'discharge';
    return carried.map(({ component, unit, content, stateIn }) => {
        const end = (vessel, coefficient) => ({
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
function addTransport(work, carried, carries) {
    return work.streams.map((stream) => {
        if (carried.length === 0 || !carries(stream))
            return -1;
        const first = work.rows.length;
        work.rows.push(...transportRows(stream, work.layout, carried));
        if (stream.from >= 0)
            carried.forEach(({ stateIn }, c) => (work.dependence[first + c] = [stateIn(stream.from)]));
        return first;
    });
}
function statesRead(instance) {
    const states = instance.reads.flatMap((reading) => reading.kind === 'chemistry'
        ? ['tan', 'alkalinity', 'carbon'].map((component) => waterState(waterRead(instance), component))
        : [reading.state]);
    return [...new Set(states)].sort((a, b) => a - b);
}
/**
 * Makes a scenario into a model: states, streams, rows with their stoichiometry closed, and what each
 * rate depends on. The scenario is checked as `checkScenario` does; every process is checked to close at the given
 * parameters and at random draws (20). An `extension` is checked too.
 * @throws InputError with every fault of the scenario, then of what the user added (`processes.uptake.reads[1]`);
 *   RangeError when a row makes or destroys something conserved.
 */
export function compileModel(scenario, parameters, options = {}) {
    checkScenario(scenario, parameters);
    return compileChecked(scenario, parameters, options);
}
/**
 * As `compileModel`, of a scenario that was checked: read from a file, or made of one that was, such as the member of
 * an ensemble.
 * @throws InputError with every fault of what the user added, or with every measured feed conversion that cannot be;
 *   RangeError when a row makes or destroys something conserved.
 */
export function compileChecked(scenario, given, options = {}) {
    const { closureDraws = 20, extension } = options;
    const { components, numbers } = extension ?? { components: [], numbers: [] };
    checkSavedComponents(scenario, components);
    const parameters = extension?.check(scenario, given) ?? given;
    const layout = layOut(scenario, parameters, components);
    const plain = scopeTo(parameters, {});
    const metabolisms = metabolismsOf(scenario, parameters);
    const content = contentWith(components);
    const work = {
        ...{ scenario, parameters, layout, streams: layStreams(scenario), content },
        ...{ rows: [], dependence: [], instances: [], scopes: new Map() },
    };
    const ours = waterComponents.map((component) => ({
        ...{ component, unit: unitOf[component], content: contentOf(component, plain) },
        stateIn: (vessel) => waterState(vessel, component),
    }));
    const own = ownInWater(layout).map(({ component, states }) => ({
        ...{ component: asOurs(component), unit: component.unit, content: ownContent(component, plain) },
        stateIn: (vessel) => states[vessel],
    }));
    const streamRow = addTransport(work, ours, ({ carries }) => carries);
    const atDraws = checkAtDraws(closureDraws, scenario.overrides);
    for (const process of processes)
        addProcess(work, process, sitesOf(process, scenario, layout, metabolisms), atDraws);
    const ownAtDraws = checkAtDraws(closureDraws, scenario.overrides, { content, numbers });
    for (const process of ownProcesses(extension ?? {}))
        addProcess(work, process, sitesWithOwn(process, scenario, layout, plain, metabolisms), ownAtDraws);
    const ownStreamRow = addTransport(work, own, ({ carries, from }) => carries && from >= 0);
    const { rows, dependence, instances, streams } = work;
    return {
        ...{ scenario, parameters, layout, streams, rows, streamRow, ownStreamRow, instances },
        ...(extension && { extension }),
        contents: contentsOf(work),
        stoichiometry: packRows(rows.map((row) => row.entries
            .filter((entry) => entry.state >= 0)
            .map((entry) => [entry.state, entry.coefficient]))),
        dependence: packPattern(rows.map((_, row) => dependence[row] ?? [])),
    };
}
/** Adds the rows of a process at its places, its stoichiometry closed once for each subject. */
function addProcess({ parameters, layout, content, rows, dependence, instances, scopes }, process, sites, checkDraws) {
    const closed = new Map();
    for (const site of sites) {
        const key = JSON.stringify(site.subject);
        const values = scopes.get(key) ?? scopeTo(parameters, site.subject);
        scopes.set(key, values);
        let terms = closed.get(key);
        if (terms === undefined) {
            checkClosure(process, [values], content);
            checkDraws(process, site.subject);
            terms = closeRow(process, values, content);
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
        const instance = {
            ...{ process, row, place, vessel, cohort, batch, feed: site.feed, values },
            reads: readingsOf(process, layout, site),
            ...(doser === undefined ? {} : { doser }),
            ...(probe === undefined ? {} : { probe }),
        };
        instances.push(instance);
        dependence[row] = statesRead(instance);
    }
}
/** Content of every state; fish by their species. */
function contentsOf({ scenario, layout, parameters, content }) {
    const species = new Map(scenario.cohorts.map((cohort) => [cohort.name, cohort.species]));
    return layout.states.map((state) => {
        const name = species.get(state.place);
        const subject = state.component.startsWith('fish') && name !== undefined ? { species: name } : {};
        return content(state.component, scopeTo(parameters, subject));
    });
}
//# sourceMappingURL=compile.js.map