import {
  fatesOver,
  nitrogenPaths,
  type Cohort,
  type Planting,
  type Run,
  type Scenario,
  type ScenarioReading,
  type Vessel,
} from '@leat/core';
import { shown } from '../render/number.js';
import { questionOf } from '../shipped.js';
import { plain } from './words.js';
import type { ToldSystem } from './told-run.js';
import type { DrawnFlow, DrawnVessel, LevelMark } from '../picture/drawn-system.js';

/** Points of the picture of nitrogen over time. */
const timesDrawn = 90;

const litres = (volume: number): string => (volume < 1 ? `${shown(volume * 1000)} L` : `${shown(volume)} m³`);

function fishWords({ number, species, mass, name }: Cohort): string {
  return number > 0
    ? `${name}: ${number} ${plain(species)}, ${shown(mass)} g`
    : `${name}: ${plain(species)}, later`;
}

function cropWords({ name, crop, area, batches, start }: Planting): string {
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
    holds: [
      ...scenario.cohorts.filter((cohort) => cohort.vessel === name).map(fishWords),
      ...scenario.plantings.filter((planting) => planting.vessel === name).map(cropWords),
      ...(kind === 'biofilter' || kind === 'media-bed' ? [`biofilm on ${shown(surface)} m²`] : []),
      ...(capture > 0 ? [`catches ${shown(capture * 100)} % of solids`] : []),
      ...(name === scenario.reservoir ? ['its level moves'] : []),
    ],
  };
}

/** Every stream that ran, with its mean over the run. */
function drawnFlows({ model, samples }: Run): DrawnFlow[] {
  const last = samples[samples.length - 1];
  const { cells } = model.layout;
  const length = last.time - samples[0].time;
  return model.streams.flatMap(({ from, to, kind, water }, i) => {
    const rate = (last.carried[i] - samples[0].carried[i]) / length;
    if (!(rate > 0)) return [];
    return [
      {
        ...(from >= 0 && { from: cells[from] }),
        ...(to >= 0 && { to: cells[to] }),
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

function factsOf({ days, startDate, vessels, cohorts, plantings, actions, rules }: Scenario): string[] {
  const total = (amounts: readonly number[]): number => amounts.reduce((sum, amount) => sum + amount, 0);
  const fish = total(cohorts.map(({ number }) => number));
  const area = total(plantings.map((planting) => planting.area));
  return [
    `${shown(days)} days from ${startDate}`,
    `${vessels.length} vessels, ${litres(total(vessels.map(({ volume }) => volume)))} of water`,
    `${fish} fish at the start`,
    `${shown(area)} m² for crops`,
    ...(actions.length > 0
      ? [`${actions.length} planned ${actions.length === 1 ? 'action' : 'actions'}`]
      : []),
    ...(rules.length > 0 ? [`${rules.length} ${rules.length === 1 ? 'rule' : 'rules'}`] : []),
  ];
}

/** What a report tells of a scenario and its run beyond what a saved document holds. */
export function toldSystem(
  text: string,
  { scenario, notes }: ScenarioReading,
  run: Run,
  changes: readonly string[],
): ToldSystem {
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
    nitrogen: fatesOver(run, 'nitrogen', timesDrawn),
    paths: nitrogenPaths(run),
    assumed: [...notes, ...run.model.parameters.warnings],
    run,
  };
}
