import {
  bibliography,
  budgetsOf,
  type Cohort,
  fatesOver,
  manifestOf,
  nitrogenPaths,
  type OpenModel,
  type Planting,
  type Run,
  type Scenario,
  type Vessel,
} from '@leat/core';
import { accountOf } from '../documents/index.js';
import type { DrawnFlow, DrawnVessel, LevelMark, Stand } from '../pictures/index.js';
import { plain, questionOf, shown, volumeText } from '../text/index.js';
import type { RunSummary, SystemSummary } from './run-summary.js';

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

/** What is known of a run beside the run itself. */
export interface Given extends Pick<OpenModel, 'notes' | 'used'> {
  /** Text of the system file, for the question that it opens with. */
  readonly text: string;
  /** What was put over the file, such as `days=90`. */
  readonly changes: readonly string[];
}

/** Vessels and mean flows of a run, to be drawn. */
export function drawnSystem(run: Run): Pick<SystemSummary, 'vessels' | 'flows'> {
  const { scenario } = run.model;
  return {
    vessels: scenario.vessels.map((vessel) => drawnVessel(scenario, vessel)),
    flows: drawnFlows(run),
  };
}

/** What a report tells of a scenario and its run beyond what a saved document holds. */
function systemSummary(run: Run, { text, notes, changes }: Given): SystemSummary {
  const { scenario } = run.model;
  const { note, startDate } = scenario;
  const question = questionOf(text);
  return {
    note,
    startDate,
    question: question.endsWith('?') ? question : '',
    changes,
    facts: factsOf(scenario),
    ...drawnSystem(run),
    levels: levelsOf(scenario),
    stands: standsOf(run),
    nitrogen: fatesOver(run, 'nitrogen', timesDrawn),
    paths: nitrogenPaths(run),
    assumed: notes,
    run,
  };
}

/**
 * What a report tells of a run that was simulated here.
 * @param letter A, B, ...
 * @param file what the system is called beside its title
 */
export function summarize(letter: string, file: string, run: Run, given: Given): RunSummary {
  return {
    ...{ letter, file },
    account: accountOf(run),
    budgets: budgetsOf(run),
    events: run.events,
    manifest: manifestOf(run),
    system: systemSummary(run, given),
    sources: bibliography(given.used(), run.model.parameters),
  };
}
