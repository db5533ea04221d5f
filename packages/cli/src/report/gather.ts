import {
  bibliography,
  budgetsOf,
  type Cohort,
  fatesOver,
  manifestOf,
  nitrogenPaths,
  type Planting,
  type Run,
  type Scenario,
  type Vessel,
} from '@leat/core';
import type { DrawnFlow, DrawnVessel, LevelMark, Stand } from '@leat/view/pictures';
import { day, plain, shown, volumeText } from '@leat/view/text';
import { accountOf } from '../commands/shared/simulated.js';
import { openScenario, type ScenarioOptions } from '../commands/shared/referenced-files.js';
import { simulated, type SimulatedRun } from '../commands/shared/simulated.js';
import type { SavedEnsemble } from '../files/saved-ensemble.js';
import { FileError, textOf } from '../files/read.js';
import { savedRun } from '../files/saved-run.js';
import { questionOf } from '../files/shipped.js';
import type { Streams } from '../terminal/streams.js';
import type { RunSummary, SystemSummary } from './run-summary.js';
import { linesText } from '../terminal/columns.js';

/** Points of the picture of nitrogen over time. */
const timesDrawn = 90;

function fishText({ number, species, mass, name }: Cohort): string {
  return number > 0
    ? `${name}: ${number} ${plain(species)}, ${shown(mass)} g`
    : `${name}: ${plain(species)}, later`;
}

function cropText({ name, crop, area, batches, start }: Planting): string {
  const word = name === crop || plain(crop).startsWith(plain(name)) ? plain(crop) : `${name}: ${plain(crop)}`;
  const parts = batches > 1 ? `, ${batches} batches` : '';
  return `${word}, ${shown(area)} m²${parts}${start === 'empty' ? ', bare at first' : ''}`;
}

function drawnVessel(scenario: Scenario, vessel: Vessel): DrawnVessel {
  const { name, kind, volume, surface, capture } = vessel;
  return {
    name,
    kind: plain(kind),
    volume,
    life: [
      ...(scenario.fish.some((cohort) => cohort.vessel === name) ? (['fish'] as const) : []),
      ...(scenario.plantings.some((planting) => planting.vessel === name) ? (['plants'] as const) : []),
      ...(kind === 'media-bed' ? (['gravel'] as const) : []),
    ],
    holds: [
      ...scenario.fish.filter((cohort) => cohort.vessel === name).map(fishText),
      ...scenario.plantings.filter((planting) => planting.vessel === name).map(cropText),
      ...(kind === 'biofilter' || kind === 'media-bed' ? [`biofilm on ${shown(surface)} m²`] : []),
      ...(capture > 0 ? [`catches ${shown(capture * 100)} % of solids`] : []),
      ...(name === scenario.reservoir ? ['its level moves'] : []),
    ],
  };
}

/** Every stream that ran, with its mean over the run. */
function drawnFlows({ model, samples }: Run): DrawnFlow[] {
  const last = samples[samples.length - 1];
  const { vessels } = model.layout;
  const length = last.time - samples[0].time;
  return model.streams.flatMap(({ from, to, kind, water }, i) => {
    const rate = (last.carried[i] - samples[0].carried[i]) / length;
    if (!(rate > 0)) return [];
    return [
      {
        ...(from >= 0 && { from: vessels[from] }),
        ...(to >= 0 && { to: vessels[to] }),
        ...(kind === 'top-up' && water === model.scenario.rainTank?.water && { tank: true as const }),
        kind: kind === 'top-up' ? `top-up with ${water ?? 'water'}` : kind,
        rate,
      },
    ];
  });
}

function levelsOf({ vessels, reservoir, topUp, pumps, flows }: Scenario): LevelMark[] {
  const full = vessels.find(({ name }) => name === reservoir)?.volume;
  const inlets = pumps.flatMap(({ name, inlet }) =>
    flows.some((flow) => flow.kind === 'pumped' && flow.pump === name && flow.from === reservoir)
      ? [{ value: inlet, text: `pump ${name} sucks air` }]
      : [],
  );
  return [
    ...(full === undefined ? [] : [{ value: full, text: 'runs over' }]),
    ...(topUp === undefined ? [] : [{ value: topUp.level, text: 'float closes' }]),
    ...inlets.filter(({ value }) => value > 0),
  ];
}

/** What stands of every planting, batch by batch. */
function standsOf({ model, samples }: Run): Stand[] {
  const { scenario, layout } = model;
  return scenario.plantings.map(({ name }, index) => ({
    planting: name,
    batches: layout.batches
      .filter(({ planting }) => planting === index)
      .map(({ mass }) => samples.map(({ y }) => y[mass])),
  }));
}

function factsOf({ days, startDate, vessels, fish: cohorts, plantings, actions, rules }: Scenario): string[] {
  const total = (amounts: readonly number[]): number => amounts.reduce((sum, amount) => sum + amount, 0);
  const fish = total(cohorts.map(({ number }) => number));
  const area = total(plantings.map((planting) => planting.area));
  return [
    `${shown(days)} days from ${startDate}`,
    `${vessels.length} vessels, ${volumeText(total(vessels.map(({ volume }) => volume)))} of water`,
    `${fish} fish at the start`,
    `${shown(area)} m² for crops`,
    ...(actions.length > 0
      ? [`${actions.length} planned ${actions.length === 1 ? 'action' : 'actions'}`]
      : []),
    ...(rules.length > 0 ? [`${rules.length} ${rules.length === 1 ? 'rule' : 'rules'}`] : []),
  ];
}

/** What a report tells of a scenario and its run beyond what a saved document holds. */
function systemSummary(
  text: string,
  { run, notes }: SimulatedRun,
  changes: readonly string[],
): SystemSummary {
  const { scenario } = run.model;
  const { note, startDate, vessels } = scenario;
  const question = questionOf(text);
  return {
    note,
    startDate,
    question: question.endsWith('?') ? question : '',
    changes,
    facts: factsOf(scenario),
    vessels: vessels.map((vessel) => drawnVessel(scenario, vessel)),
    flows: drawnFlows(run),
    levels: levelsOf(scenario),
    stands: standsOf(run),
    nitrogen: fatesOver(run, 'nitrogen', timesDrawn),
    paths: nitrogenPaths(run),
    assumed: notes,
    run,
  };
}

function changesOf({ set, tables, days, every, fit }: ScenarioOptions): string[] {
  return [
    ...set,
    ...(tables ?? []).map((each) => `tables=${each}`),
    ...(fit === undefined ? [] : [`fit=${fit}`]),
    ...(days === undefined ? [] : [`days=${days}`]),
    ...(every === undefined ? [] : [`every=${every}`]),
  ];
}

/**
 * Reads a file of which a report is to tell: the run that it holds (a document of `leat run --json`), or the
 * scenario that it is. Throws as `openScenario` and `savedRun` do.
 * @returns simulates the scenario, where it is one, and gives what is told
 */
export function openGathering(
  file: string,
  letter: string,
  options: ScenarioOptions,
  streams: Streams,
): () => Promise<RunSummary> {
  const text = textOf(file);
  const saved = savedRun(file, text);
  const changes = changesOf(options);
  if (saved !== undefined) {
    if (changes.length > 0)
      streams.note(
        linesText([`${file}: a saved run: --set, --tables, --fit, --days and --every do not change it`]),
      );
    return () => Promise.resolve({ letter, file, ...saved });
  }
  const reading = openScenario(file, options);
  return async () => {
    const simulation = await simulated(reading, {}, streams);
    const { run, used } = simulation;
    const account = accountOf(run);
    return {
      letter,
      file,
      account,
      budgets: budgetsOf(run),
      events: run.events,
      manifest: manifestOf(run),
      system: systemSummary(text, simulation, changes),
      sources: bibliography(used(), run.model.parameters),
    };
  };
}

/** What a report tells of one file: see `openGathering`. */
export const gather = (...asked: Parameters<typeof openGathering>): Promise<RunSummary> =>
  openGathering(...asked)();

const lengthOf = (times: readonly number[]): string => `${day(times[times.length - 1])} days`;

function otherSystem({ file, title, result }: SavedEnsemble, summaries: readonly RunSummary[]): string {
  const runs = summaries.map(
    ({ file: name, account }) => `${name} ("${account.title}", ${lengthOf(account.time)})`,
  );
  return (
    `${file}: an ensemble of another system: "${title}", ${lengthOf(result.times)}; got with ${runs.join(', ')}; ` +
    'expected one of the same file with the same --set, --tables, --days and --every'
  );
}

/**
 * Runs with the ensembles that were made of them: by the hash of the scenario, in whatever order they came.
 * Throws FileError with every ensemble that is of none of the runs, or of one that has bands already.
 */
export function withBands(
  summaries: readonly RunSummary[],
  kept: readonly SavedEnsemble[],
): readonly RunSummary[] {
  const faults = kept.flatMap((ensemble, i) => {
    if (!summaries.some(({ manifest }) => manifest.scenario === ensemble.scenario))
      return [otherSystem(ensemble, summaries)];
    const before = kept.slice(0, i).find(({ scenario }) => scenario === ensemble.scenario);
    return before === undefined
      ? []
      : [`${ensemble.file}: of the same system as ${before.file}; give one of them`];
  });
  if (faults.length > 0) throw new FileError(faults);
  return summaries.map((run) => {
    const found = kept.find(({ scenario }) => scenario === run.manifest.scenario);
    return found === undefined ? run : { ...run, ensemble: found.result };
  });
}
