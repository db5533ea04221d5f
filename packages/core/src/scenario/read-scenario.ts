import { InputError, type Fault } from '../base/faults.js';
import type { Parameters } from '../library/parameters.js';
import { parseQuantity } from '../base/units.js';
import { boundedLoad } from './file/include-tree.js';
import { checkPlausible } from './checks/plausible.js';
import { checkNetwork } from './checks/network.js';
import { runRanges } from './checks/ranges.js';
import { checkKept } from './checks/run.js';
import { compact } from './file/reader.js';
import { present } from './file/report.js';
import { includeTree, type Load } from './file/include-tree.js';
import { readActions } from './sections/actions.js';
import { readControl } from './sections/control.js';
import { readFlows } from './sections/flows.js';
import { readOverrides } from './sections/parameters.js';
import { completePumps, parsePumps } from './sections/pumps.js';
import { withRoots } from './sections/roots.js';
import { readRules } from './sections/rules.js';
import { type FileDisplay, readDisplay } from './sections/display.js';
import { readPrices } from './sections/prices.js';
import { readRun } from './sections/run.js';
import { readStart } from './sections/start.js';
import { readSeasons } from './sections/seasons.js';
import { readCohorts, readPlantings } from './sections/stock.js';
import { readSupply } from './sections/top-up.js';
import { understood } from './sections/other-words.js';
import { readVessels } from './sections/vessels.js';
import { readWaters } from './sections/waters.js';
import { rememberRead } from './read-before.js';
import { ScenarioReader } from './sections/scenario-reader.js';
import { resolveTree, type ResolvedTree } from './file/resolve-tree.js';
import type { Scenario } from './scenario.js';
import { sectionKeys, topSchema } from './sections/whole-file.js';
import { setValue, type Setting } from './file/set-value.js';
import type { Tree } from './file/tree.js';

/** How a scenario is read. */
export interface ReadOptions {
  /** Name of the file, for messages and as the place that included paths are seen from. */
  readonly file: string;
  /** Reads included files and CSV files by path; throws where it cannot. */
  readonly load?: Load;
  /** Tables of numbers read after those that the file names, so that they win; paths as `load` takes them. */
  readonly tables?: readonly string[];
  /** Values put over those of the file, in order. */
  readonly set?: readonly Setting[];
  /** Length of the run in days, in place of the file's. */
  readonly days?: number;
  /** Output step such as `"6 h"`, in place of the file's. */
  readonly every?: string;
}

/** A scenario with the file it came from, completed. */
export interface ScenarioReading {
  readonly scenario: Scenario;
  readonly resolved: ResolvedTree;
  /** How the file wants its results told; absent: it does not say. */
  readonly display?: FileDisplay;
  /** Ids of the numbers of the tables that the reading used (surfaces, waters, lengths of crops ...). */
  readonly used: readonly string[];
  /** What was assumed for want of data, one line each. */
  readonly notes: readonly string[];
}

/** Faults in the order of the files and lines, each once. */
function ordered(faults: readonly Fault[]): Fault[] {
  const files = [...new Set(faults.map(({ file }) => file))];
  const once = new Map(faults.map((fault) => [JSON.stringify(fault), fault]));
  return [...once.values()].sort(
    (a, b) =>
      files.indexOf(a.file) - files.indexOf(b.file) ||
      (a.line ?? 0) - (b.line ?? 0) ||
      (a.column ?? 0) - (b.column ?? 0),
  );
}

function applySettings(tree: Tree, settings: readonly Setting[], faults: Fault[]): Tree {
  const sections = new Set(sectionKeys);
  let changed = tree;
  for (const setting of settings) {
    const answer = setValue(changed, setting, sections);
    changed = answer.tree;
    faults.push(...answer.faults);
  }
  return changed;
}

const isLength = (days: number | undefined): boolean =>
  days !== undefined && days > 0 && days <= runRanges.days.high;

function optionFaults(options: ReadOptions): Fault[] {
  const { days, every } = options;
  const faults: Fault[] = [];
  if (days !== undefined && !isLength(days)) {
    faults.push({
      file: '--days',
      problem: 'out of range',
      got: String(days),
      expected: 'a number of days above 0, at most 36525',
    });
  }
  const step = every === undefined ? undefined : parseQuantity(every, 'time');
  if (step !== undefined && 'problem' in step)
    faults.push({ file: '--every', got: JSON.stringify(every), ...step });
  return faults;
}

function readTree(text: string, options: ReadOptions, faults: Fault[]): Tree {
  const reading = includeTree(text, options.file, options.load);
  faults.push(...reading.faults, ...optionFaults(options));
  const { tree } = reading;
  if (!reading.whole && faults.length > 0) throw new InputError(ordered(faults));
  if (tree?.kind !== 'map') {
    if (faults.length === 0) {
      faults.push({
        file: options.file,
        line: 1,
        column: 1,
        problem: 'not a system file',
        expected: 'a map of title, days, vessels ...',
      });
    }
    throw new InputError(ordered(faults));
  }
  const step = options.every;
  const every =
    step === undefined || 'problem' in parseQuantity(step, 'time') ? [] : [{ path: 'every', value: step }];
  return applySettings(tree, [...(options.set ?? []), ...every], faults);
}

function readSections(
  reader: ScenarioReader,
  options: ReadOptions,
  overrides: Scenario['overrides'],
): Scenario {
  reader.parse(topSchema, []);
  const frame = readRun(reader, compact({ days: isLength(options.days) ? options.days : undefined }));
  const waters = readWaters(reader, frame);
  const bare = readVessels(reader, frame);
  checkKept(reader, frame, bare.size);
  const pumpsGiven = parsePumps(reader);
  const reading = readFlows(reader, bare, pumpsGiven);
  const pumps = completePumps(reader, pumpsGiven, reading, bare, frame.reservoir);
  checkNetwork(reader, bare, reading, frame.reservoir);
  const reservoir = frame.reservoir === undefined ? undefined : bare.get(frame.reservoir);
  const supply = readSupply(reader, frame, waters, reservoir);
  const cohorts = readCohorts(reader, bare);
  checkPlausible(reader, cohorts, bare);
  const plantings = readPlantings(reader, frame, bare);
  const vessels = withRoots(reader, bare, plantings);
  const { topUp, rainTank } = supply;
  const moved = { flows: reading.flows, pumps };
  const { start, saved } = readStart(reader, { frame, vessels, waters, topUp, cohorts, plantings, ...moved });
  const products = reader.names('dose');
  const dosers = readControl(reader, vessels);
  const cast = { vessels, waters, pumps, cohorts, plantings, products, topUp, rainTank, dosers };
  const seasons = readSeasons(reader, frame, plantings);
  const actions = [...readActions(reader, frame, cast), ...seasons].sort((a, b) => a.at - b.at);
  const rules = readRules(reader, cast);
  const prices = readPrices(reader, [...plantings.values()]);
  const { title, note, days, every, startDate, seed, et0, light, air, carbonDioxide, altitude } = frame;
  return {
    ...{ title, note, days, every, startDate, et0 },
    ...compact({ light, air, carbonDioxide }),
    altitude,
    waters: present(waters),
    vessels: present(vessels),
    reservoir: frame.reservoir ?? '',
    pumps: present(pumps),
    flows: reading.flows,
    ...supply,
    fish: present(cohorts),
    plantings: present(plantings),
    start,
    ...compact({ saved }),
    actions,
    ...(dosers.length === 0 ? {} : { dosers }),
    ...compact({ prices }),
    ...{ rules, seed },
    overrides,
  };
}

/** A system file that was read, to be read again with other numbers of the tables. */
export interface OpenScenario {
  readonly reading: ScenarioReading;
  /**
   * The scenario as these numbers make it: surfaces, waters, lengths of crops and whatever else reading
   * takes from the tables. Much faster than reading the text again. Throws InputError where they make none.
   */
  again(parameters: Parameters): Scenario;
}

/**
 * Reads a system file as `readScenarioFully` does and keeps it open. Throws InputError with every fault found.
 */
export function openScenarioText(text: string, given: ReadOptions): OpenScenario {
  const options = given.load === undefined ? given : { ...given, load: boundedLoad(given.load) };
  const faults: Fault[] = [];
  const { tree, notes: words } = understood(readTree(text, options, faults));
  const { overrides, parameters, faults: overrideFaults, notes } = readOverrides(tree, options);
  const reader = new ScenarioReader(tree, parameters, options.load);
  reader.notes.push(...words, ...notes);
  const scenario = readSections(reader, options, overrides);
  const display = readDisplay(reader);
  // The step of `--every` was put into the tree as a setting.
  const atOption = (fault: Fault): Fault => {
    const { key, ...rest } = fault;
    if (options.every === undefined || fault.file !== '--set' || key !== 'every') return fault;
    return { ...rest, file: '--every' };
  };
  const all = [...faults, ...overrideFaults, ...reader.faults].map(atOption);
  if (all.length > 0) throw new InputError(ordered(all));
  rememberRead(scenario);
  const resolved = resolveTree(tree, reader.defaults, compact({ days: options.days }));
  return {
    reading: {
      ...{ scenario, resolved, used: parameters.used(), notes: reader.notes },
      ...compact({ display }),
    },
    again: (others) => {
      const fresh = new ScenarioReader(tree, others, given.load);
      const read = readSections(fresh, options, overrides);
      if (fresh.faults.length > 0) throw new InputError(ordered(fresh.faults));
      return read;
    },
  };
}

/**
 * Reads a system file: YAML with line numbers, what it includes, values set beside it, checked as a whole.
 *
 * @returns the scenario in internal units, the file as completed by defaults, and the numbers used
 * @throws InputError with every fault found, each with file, line, column and key
 */
export function readScenarioFully(text: string, options: ReadOptions): ScenarioReading {
  return openScenarioText(text, options).reading;
}

/** The scenario of a system file, in internal units. Throws InputError with every fault found. */
export function readScenario(text: string, options: ReadOptions): Scenario {
  return readScenarioFully(text, options).scenario;
}

/** A system file after include, settings and defaults, with the origin of each value. Throws as readScenario does. */
export function resolvedTree(text: string, options: ReadOptions): ResolvedTree {
  return readScenarioFully(text, options).resolved;
}
