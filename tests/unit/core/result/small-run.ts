import { waterComponents, type Component } from '../../../../packages/core/src/processes/components.js';
import { contentOf } from '../../../../packages/core/src/processes/components.js';
import { layOut, waterState } from '../../../../packages/core/src/model/layout.js';
import type { Entry, Model, Row } from '../../../../packages/core/src/model/model.js';
import { layStreams } from '../../../../packages/core/src/model/streams.js';
import { createParameters } from '../../../../packages/core/src/library/parameters.js';
import { scopeTo } from '../../../../packages/core/src/model/scope.js';
import type { Posting, Run, Sample } from '../../../../packages/core/src/run/run.js';
import type { Scenario, SourceWater, Vessel } from '../../../../packages/core/src/scenario/scenario.js';

const vessel = (name: string, kind: Vessel['kind'], volume: number, surface: number): Vessel => ({
  name,
  kind,
  volume,
  surface,
  floor: 0,
  open: 1,
  covered: 0,
  aeration: 20,
  capture: 0,
  temperature: { kind: 'constant', value: 20 },
  leak: 0,
  exchange: 0,
});

const mains: SourceWater = {
  name: 'mains',
  ammonia: 0,
  nitrite: 0,
  nitrate: 2,
  alkalinity: 2,
  carbon: 2.1,
  oxygen: 8,
  chloride: 20,
  calcium: 0.5,
};

/** An invented system of a tank and a sump: fish in one, lettuce in the other. */
export const smallScenario: Scenario = {
  title: 'Two vessels (invented)',
  note: '',
  days: 10,
  every: 1,
  startDate: '2025-03-01',
  et0: { kind: 'constant', value: 0.004 },
  waters: [mains],
  vessels: [vessel('tank', 'fish-tank', 2, 0), vessel('sump', 'sump', 1, 10)],
  reservoir: 'sump',
  pumps: [{ name: 'pump', inlet: 0.1, restart: 0.2 }],
  flows: [
    { kind: 'pumped', from: 'sump', to: 'tank', pump: 'pump', rate: 24 },
    { kind: 'gravity', from: 'tank', to: 'sump', share: 1 },
  ],
  topUp: { level: 1, rate: 1, sources: [{ kind: 'mains', water: 'mains', dailyCap: Infinity }] },
  fish: [
    {
      name: 'tilapia',
      vessel: 'tank',
      species: 'nile-tilapia',
      number: 50,
      mass: 100,
      ration: { kind: 'mass', gramsPerDay: 80 },
      feed: { name: 'grower-32', protein: 0.32 },
    },
  ],
  plantings: [
    {
      name: 'lettuce',
      vessel: 'sump',
      crop: 'lettuce-butterhead',
      area: 2,
      batches: 2,
      harvest: 28,
      after: 'replant',
      start: 'staggered',
      age: 20,
    },
  ],
  start: [],
  actions: [],
  rules: [],
  seed: 1,
  overrides: [],
};

const parameters = createParameters();
const layout = layOut(smallScenario, parameters);
const streams = layStreams(smallScenario);
const values = scopeTo(parameters, { species: 'nile-tilapia' });

const inside = (component: Component, state: number, coefficient: number): Entry => ({
  component,
  state,
  place: layout.vessels[layout.states[state].vessel],
  coefficient,
  content: contentOf(component, values),
});

const outside = (component: Component, account: string, coefficient: number): Entry => ({
  component,
  state: -1,
  place: account,
  coefficient,
  content: contentOf(component, values),
});

const row = (process: string, place: string, entries: readonly Entry[], at = place): Row => ({
  id: `${process}@${at}`,
  process,
  place,
  unit: 'g N',
  entries,
});

const tank = 0;
const sump = 1;
const perNitrogen = 1 / parameters.value('molar.nitrogen');

/** Rows enough for a budget: feed in, TAN to nitrate, nitrogen to air, and transport of TAN both ways. */
const rows: readonly Row[] = [
  row(
    'feeding',
    'tank',
    [
      outside('feed-nitrogen', 'feed', -1),
      inside('tan', waterState(tank, 'tan'), 1),
      inside('alkalinity', waterState(tank, 'alkalinity'), perNitrogen),
    ],
    'tilapia',
  ),
  row('nitrification', 'sump', [
    inside('tan', waterState(sump, 'tan'), -1),
    inside('nitrate', waterState(sump, 'nitrate'), 1),
    inside('alkalinity', waterState(sump, 'alkalinity'), -2 * perNitrogen),
    inside('oxygen', waterState(sump, 'oxygen'), -2 * perNitrogen * parameters.value('molar.oxygen-gas')),
  ]),
  row('ammonia-loss', 'sump', [
    inside('tan', waterState(sump, 'tan'), -1),
    outside('ammonia-gas', 'air', 1),
    inside('alkalinity', waterState(sump, 'alkalinity'), -perNitrogen),
  ]),
  row('transport', 'tank', [
    inside('tan', waterState(tank, 'tan'), -1),
    inside('tan', waterState(sump, 'tan'), 1),
  ]),
  row('transport', 'sump', [
    inside('tan', waterState(sump, 'tan'), -1),
    inside('tan', waterState(tank, 'tan'), 1),
  ]),
];

/** What each row has amounted to after ten days. */
export const extents = { feeding: 40, nitrification: 30, loss: 2, down: 500, up: 465 };

const postings: readonly Posting[] = [
  { account: 'dosing', component: 'base', vessel: 'sump', amount: 0, state: -1 },
  {
    account: 'harvested crop',
    component: 'crop-nitrogen',
    vessel: 'sump',
    amount: -1.5,
    state: layout.batches[0].nitrogen,
  },
  {
    account: 'source water',
    component: 'nitrate',
    vessel: 'sump',
    amount: 3,
    state: waterState(sump, 'nitrate'),
  },
  { account: 'source water', component: 'water', vessel: 'sump', amount: 0.2, state: -1 },
];

const model = {
  scenario: smallScenario,
  parameters,
  layout,
  streams,
  rows,
  contents: layout.states.map(({ component }) => contentOf(component, values)),
} as unknown as Model;

function startState(): Float64Array {
  const y = new Float64Array(layout.states.length);
  const water = {
    tan: 1,
    nitrite: 0.2,
    nitrate: 30,
    solids: 5,
    refractory: 3,
    dissolved: 2,
    'organic-nitrogen': 0.1,
    alkalinity: 2,
    carbon: 2.1,
    oxygen: 7,
    chloride: 40,
    calcium: 0.8,
  };
  smallScenario.vessels.forEach((each, vessel) => {
    for (const component of waterComponents)
      y[waterState(vessel, component)] = water[component] * each.volume;
  });
  y[layout.aob[sump]] = 5;
  y[layout.nob[sump]] = 2;
  y[layout.fish[0].mass] = 5000;
  y[layout.fish[0].number] = 50;
  for (const batch of layout.batches) {
    y[batch.mass] = 60;
    y[batch.nitrogen] = 2.5;
  }
  return y;
}

/** What can be wrong with a run, to see that it is found. */
export interface Flaw {
  /** Added to this state at the end, from nowhere. */
  readonly state?: number;
  readonly amount: number;
}

/**
 * A run of ten days made by hand: everything goes in a straight line, so every number of it is known.
 * The water of the sump rises by 0.2 m3 by the posting; top-up replaces evaporation.
 */
export function smallRun(flaw?: Flaw): Run {
  const start = startState();
  const x = Float64Array.from(Object.values(extents));
  const end = start.slice();
  rows.forEach((each, r) => {
    for (const entry of each.entries) if (entry.state >= 0) end[entry.state] += entry.coefficient * x[r];
  });
  for (const posting of postings) if (posting.state >= 0) end[posting.state] += posting.amount;
  if (flaw?.state !== undefined) end[flaw.state] += flaw.amount;
  const carried = streams.map(({ kind }) => {
    if (kind === 'pumped') return 240;
    if (kind === 'gravity') return 239.9;
    if (kind === 'top-up') return 0.3;
    return kind === 'evaporation' ? 0.1 : kind === 'transpiration' ? 0.1 : 0;
  });
  const times = Array.from({ length: 11 }, (_, day) => day);
  const samples = times.map((time): Sample => {
    const share = time / 10;
    return {
      time,
      y: start.map((value, i) => (time === 10 ? end[i] : value + share * (end[i] - value))),
      x: x.map((value) => share * value),
      volume: Float64Array.of(2, 1 + (time === 10 ? 0.2 : 0)),
      carried: Float64Array.from(carried, (value) => share * value),
      rain: 0,
      spilled: 0,
      posted: time === 10 ? postings.length : 0,
      temperature: Float64Array.of(20, 20),
      ionic: Float64Array.of(0, 0),
      fed: Float64Array.of(80),
      evapotranspiration: 0.03,
    };
  });
  return {
    model,
    outcome: { kind: 'done', time: 10 },
    samples,
    postings,
    doses: [],
    events: [],
    work: { steps: 1, rejected: 0, passed: 0, evaluations: 1, jacobians: 1, factorisations: 1, solves: 1 },
    integrator: 'rosenbrock',
    tolerance: 1e-6,
    ages: Float64Array.of(30, Number.NaN),
  };
}

/** Index of the TAN of the sump. */
export const sumpTan = waterState(sump, 'tan');
