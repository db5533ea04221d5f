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
import { type Display, plain, plainDisplay, questionOf, volumeText } from '../text/index.js';
import type { RunSummary, SystemSummary } from './run-summary.js';

/** Points of the picture of nitrogen over time. */
const timesDrawn = 90;

function fishText({ number, species, mass, name }: Cohort, display: Display): string {
  const { later } = display.words.report.system;
  return number > 0
    ? `${name}: ${number} ${plain(species, display)}, ${display.amount(mass, 'g')}`
    : `${name}: ${plain(species, display)}, ${later}`;
}

function cropText({ name, crop, area, batches, start }: Planting, display: Display): string {
  const words = display.words.report.system;
  const own = plain(crop, display);
  const word = name === crop || plain(crop).startsWith(plain(name)) ? own : `${name}: ${own}`;
  const parts = batches > 1 ? words.batches(batches) : '';
  const bare = start === 'empty' ? words.bare : '';
  return `${word}, ${display.amount(area, 'm²')}${parts}${bare}`;
}

function drawnVessel(scenario: Scenario, vessel: Vessel, display: Display): DrawnVessel {
  const words = display.words.report.system;
  const { name, kind, volume, surface, capture } = vessel;
  return {
    name,
    kind: plain(kind, display),
    volume,
    life: [
      ...(scenario.fish.some((cohort) => cohort.vessel === name) ? (['fish'] as const) : []),
      ...(scenario.plantings.some((planting) => planting.vessel === name) ? (['plants'] as const) : []),
      ...(kind === 'media-bed' ? (['gravel'] as const) : []),
    ],
    holds: [
      ...scenario.fish.filter((cohort) => cohort.vessel === name).map((cohort) => fishText(cohort, display)),
      ...scenario.plantings
        .filter((planting) => planting.vessel === name)
        .map((planting) => cropText(planting, display)),
      ...(kind === 'biofilter' || kind === 'media-bed' ? [words.biofilm(display.amount(surface, 'm²'))] : []),
      ...(capture > 0 ? [words.catches(display.number(capture * 100))] : []),
      ...(name === scenario.reservoir ? [words.levelMoves] : []),
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

function levelsOf({ vessels, reservoir, topUp, pumps, flows }: Scenario, { words }: Display): LevelMark[] {
  const told = words.report.system;
  const full = vessels.find(({ name }) => name === reservoir)?.volume;
  const inlets = pumps.flatMap(({ name, inlet }) =>
    flows.some((flow) => flow.kind === 'pumped' && flow.pump === name && flow.from === reservoir)
      ? [{ value: inlet, text: told.sucksAir(name) }]
      : [],
  );
  return [
    ...(full === undefined ? [] : [{ value: full, text: told.runsOver }]),
    ...(topUp === undefined ? [] : [{ value: topUp.level, text: told.floatCloses }]),
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

function factsOf(
  { days, startDate, vessels, fish: cohorts, plantings, actions, rules }: Scenario,
  display: Display,
): string[] {
  const words = display.words.report.facts;
  const total = (amounts: readonly number[]): number => amounts.reduce((sum, amount) => sum + amount, 0);
  const fish = total(cohorts.map(({ number }) => number));
  const area = total(plantings.map((planting) => planting.area));
  return [
    words.days(display.number(days), startDate),
    words.vessels(vessels.length, volumeText(total(vessels.map(({ volume }) => volume)), display)),
    words.fish(fish),
    words.area(display.amount(area, 'm²')),
    ...(actions.length > 0 ? [words.actions(actions.length)] : []),
    ...(rules.length > 0 ? [words.rules(rules.length)] : []),
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
export function drawnSystem(
  run: Run,
  display: Display = plainDisplay,
): Pick<SystemSummary, 'vessels' | 'flows'> {
  const { scenario } = run.model;
  return {
    vessels: scenario.vessels.map((vessel) => drawnVessel(scenario, vessel, display)),
    flows: drawnFlows(run),
  };
}

/** What a report says of a system in words, so that it may be said anew in others. */
export function wordedSystem(
  run: Run,
  display: Display = plainDisplay,
): Pick<SystemSummary, 'facts' | 'vessels' | 'flows' | 'levels'> {
  const { scenario } = run.model;
  return {
    facts: factsOf(scenario, display),
    ...drawnSystem(run, display),
    levels: levelsOf(scenario, display),
  };
}

/** What a report tells of a scenario and its run beyond what a saved document holds. */
function systemSummary(run: Run, { text, notes, changes }: Given, display: Display): SystemSummary {
  const { scenario } = run.model;
  const { note, startDate } = scenario;
  const question = questionOf(text);
  return {
    note,
    startDate,
    question: question.endsWith('?') ? question : '',
    changes,
    ...wordedSystem(run, display),
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
export function summarize(
  letter: string,
  file: string,
  run: Run,
  given: Given,
  display: Display = plainDisplay,
): RunSummary {
  return {
    ...{ letter, file },
    account: accountOf(run),
    budgets: budgetsOf(run),
    events: run.events,
    manifest: manifestOf(run),
    system: systemSummary(run, given, display),
    sources: bibliography(given.used(), run.model.parameters),
  };
}
