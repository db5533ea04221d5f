import {
  compileModel,
  createParameters,
  endStateOf,
  InputError,
  readScenario,
  readScenarioFully,
  sealed,
  type ResumableRun,
  simulate,
} from '@leat/core';
import { actionOrder } from '../../../packages/core/src/scenario/action-kinds.js';
import { describe, expect, it } from 'vitest';

/** An invented system in which everything that a saved state holds has work to do. */
const system = (
  actions: readonly string[] = [],
  rest = '',
): string => `title: A season in two halves (invented)
days: 10
start-date: 2026-03-28
reservoir: sump
climate:
  water-temperature:
    monthly: [19 degC, 20 degC, 21 degC, 24 degC, 25 degC, 26 degC, 27 degC, 27 degC, 25 degC, 23 degC, 21 degC, 19 degC]
  et0: 5 mm/d
waters:
  mains: { nitrate: 1 mg N/L, alkalinity: 2 meq/L, pH: 7.6, chloride: 30 mg/L }
  rain: { nitrate: 0.5 mg N/L, alkalinity: 0.2 meq/L, pH: 6.5, chloride: 3 mg/L }
vessels:
  tank: { kind: fish-tank, volume: 2 m3, area: 2 m2, aeration: 60 1/d }
  filter: { kind: biofilter, volume: 0.3 m3, area: 0.4 m2, surface: 60 m2, aeration: 100 1/d }
  bed: { kind: raft-bed, volume: 1 m3, area: 4 m2 }
  sump: { kind: sump, volume: 0.6 m3, area: 0.8 m2 }
pumps: { main: { inlet: 100 L, restart: 200 L, timer: { on: 7 h, off: 90 min, offset: 1 h } } }
flows:
  - { from: sump, to: tank, pump: main, rate: 2 m3/h }
  - { from: tank, to: filter }
  - { from: filter, to: bed }
  - { from: bed, to: sump }
top-up: { level: 0.4 m3, rate: 1 m3/d, from: [rain-tank, { water: mains, cap: 120 L/week }] }
rain-tank: { capacity: 60 L, volume: 20 L, roof: 4 m2, rain: 1 mm/d, water: rain }
fish:
  tilapia:
    in: tank
    species: nile-tilapia
    number: 60
    mass: 120 g
    feed: grower-32
    hours: 08:00-18:00
    ration: [{ mass: 50 g, ration: 2 %/d }, { mass: 123 g, ration: 1.2 %/d }]
  small: { in: tank, species: nile-tilapia, number: 20, mass: 40 g, ration: 2 %/d, feed: grower-32 }
plantings:
  lettuce: { in: bed, crop: lettuce-butterhead, area: 3 m2, batches: 2, age: 26 d }
  basil: { in: bed, crop: basil, area: 1 m2, start: empty }
control:
  - { hold: pH, in: sump, at: 7.6, with: potassium-hydroxide, most: 10 g/d }
start:
  biofilm: 60 %
  water: { like: mains, pH: 7.4, ammonia: 0.5 mg N/L, nitrate: 20 mg N/L }
actions:
${actions.map((action) => `  - { ${action} }\n`).join('')}${actions.length === 0 ? '  []\n' : ''}${rest}`;

type Set = readonly { readonly path: string; readonly value: string }[];

function run(text: string, days: number, saved?: string, set: Set = []): ResumableRun {
  const load = (): string => saved ?? '';
  const start = saved === undefined ? [] : [{ path: 'start', value: '{ saved: state.json }' }];
  const scenario = readScenario(text, { file: 'season.yaml', load, set: [...start, ...set], days });
  return simulate(compileModel(scenario, createParameters(scenario.overrides)));
}

/** All that is in a run at a time. */
function at({ samples }: ResumableRun, time: number): unknown {
  const { y, volume, rain, temperature, fed, evapotranspiration } = samples.filter(
    (each) => each.time === time,
  )[0];
  return {
    y: [...y],
    volume: [...volume],
    rain,
    temperature: [...temperature],
    fed: [...fed],
    evapotranspiration,
  };
}

const saved = (of: ResumableRun): string => JSON.stringify(sealed(endStateOf(of)));

/** The largest difference of any state, as a share of 1e-4 of it and a millionth. */
function apart(one: ResumableRun, other: ResumableRun): number {
  const [a, b] = [one, other].map(({ samples }) => samples[samples.length - 1].y);
  return Math.max(...a.map((value, i) => Math.abs(value - b[i]) / (1e-4 * Math.abs(value) + 1e-6)));
}

/** One line of each kind of action, so that its effect or its undoing lies on either side of day 5. */
const actions: Readonly<Record<(typeof actionOrder)[number], readonly string[]>> = {
  'lose-fish': [
    'at: 2 d, lose-fish: { cohort: tilapia, number: 5 }',
    'at: 7 d, lose-fish: { cohort: small, share: 10 % }',
  ],
  'harvest-fish': ['at: 5 d, harvest-fish: { cohort: tilapia, share: 20 % }'],
  grade: ['at: 2 d, every: 4 d, grade: { cohort: tilapia, to: small, share: 20 %, relative-mass: 0.8 }'],
  'harvest-crop': ['at: 3 d, harvest-crop: { planting: lettuce, replant: true }'],
  'leave-empty': ['at: 3 d, leave-empty: lettuce'],
  'drain-solids': ['at: 1 d, every: 3 d, drain-solids: { vessel: tank, share: 90 %, water: 20 L }'],
  clean: ['at: 4.3 d, clean: { vessel: filter, biofilm: 30 %, solids: 90 % }'],
  medicate: ['at: 5 d, medicate: { vessel: filter, kills: 40 % }'],
  'change-water': ['at: 2.5 d, every: 2.5 d, change-water: { vessel: tank, share: 10 %, water: mains }'],
  'cart-water': ['at: 3 d, every: 2 d, cart-water: { volume: 90 L, into: rain-tank }'],
  dose: ['at: 2 d, every: 3 d, dose: { into: sump, product: potassium-bicarbonate, mass: 20 g }'],
  stock: ['at: 4 d, stock: { cohort: small, number: 20, mass: 30 g }'],
  plant: ['at: 2 d, plant: basil'],
  'source-water': ['from: 1 d, until: 8 d, source-water: { water: mains, to: rain }'],
  'top-up': ['at: 2 d, top-up: { cap: 12 L/d }', 'from: 4 d, until: 7 d, top-up: stopped'],
  feed: [
    'at: 2 d, feed: { cohort: tilapia, factor: 0.25 }',
    'at: 3 d, feed: { cohort: small, ration: 30 g/d, feed: grower-32, protein: 40 % }',
  ],
  aeration: ['from: 3 d, until: 6 d, air-off: tank', 'at: 4 d, air-off: filter'],
  control: ['at: 4 d, control-off: sump', 'at: 8 d, control-on: sump'],
  pump: ['from: 4.8 d, for: 12 h, pump-off: main', 'at: 8 d, for: 2 h, power-cut: all'],
};

const rules = `rules:
  - when: { read: ammonia, in: tank, above: 0.5 mg N/L, until: 0.3 mg N/L }
    kit: { resolution: 0.1 mg N/L, error: 40 %, every: 2 d }
    do: { feed: { cohort: tilapia, factor: 0.3 } }
    undo: { feed: { cohort: tilapia, factor: 1 } }
  - when: { read: alkalinity, in: sump, below: 6 dKH }
    kit: { error: 20 % }
    do: { dose: { into: sump, product: potassium-bicarbonate, mass: 10 g } }
    wait: 2 d
    most: 4
`;

describe('a run of ten days and one of five that is gone on from for five more', () => {
  it.each(actionOrder)('are the same to the byte, with %s', (kind) => {
    const text = system(actions[kind]);
    const whole = run(text, 10);
    expect(whole.events.some((event) => event.kind === kind)).toBe(true);
    const rest = run(text, 10, saved(run(text, 5)));
    for (const day of [6, 7, 8, 9, 10]) expect(at(rest, day)).toEqual(at(whole, day));
    expect(rest.events).toEqual(whole.events.filter(({ time }) => time >= 5));
  });

  it('are the same to the tolerance, split within a day', () => {
    const text = system(Object.values(actions).flat());
    const rest = run(text, 10, saved(run(text, 5.4)));
    expect(apart(run(text, 10), rest)).toBeLessThan(1);
    expect(rest.samples.map(({ time }) => time)).toEqual([5.4, 6, 7, 8, 9, 10]);
  });

  it('are the same with all of it at once, gone on from twice', () => {
    const text = system(Object.values(actions).flat());
    const third = run(text, 7, saved(run(text, 3)));
    const rest = run(text, 10, saved(third));
    expect(at(rest, 10)).toEqual(at(run(text, 10), 10));
  });
});

describe('a rule, a timer and what a source has given', () => {
  it('go on as they stood, kits with the errors that they would have had', () => {
    const text = system([], rules);
    const whole = run(text, 10);
    const fired = whole.events.filter(({ kind }) => kind === 'rule');
    expect(fired.some(({ time }) => time < 5) && fired.some(({ time }) => time >= 5)).toBe(true);
    const rest = run(text, 10, saved(run(text, 5)));
    expect(at(rest, 10)).toEqual(at(whole, 10));
    expect(rest.events).toEqual(whole.events.filter(({ time }) => time >= 5));
  });

  it('of another file begin anew: a rule that says something else has not yet acted', () => {
    const other = system([], rules.replace('below: 6 dKH', 'below: 6.1 dKH'));
    const state = endStateOf(run(system([], rules), 5));
    expect(state.rules.map(({ times }) => times > 0)).toContain(true);
    const first = run(other, 10, JSON.stringify(sealed(state))).events.find(({ kind }) => kind === 'rule');
    expect(first?.time).toBe(5);
  });
});

describe('what a later file says of its own', () => {
  it('counts: only what actions changed goes on from the saved state', () => {
    const state = saved(run(system(actions.feed), 5));
    const small = run(system(), 10, state, [{ path: 'fish.tilapia.ration', value: '2 %/d' }]);
    const mass = small.samples[0].y[small.model.layout.fish[0].mass];
    expect(small.samples[0].fed[0]).toBeCloseTo(0.25 * 0.02 * mass, 6);
    // The feed that an action brought is eaten, though the later file has no such action.
    expect(small.samples[0].fed[1]).toBeCloseTo(30, 9);
    const eaten = small.model.rows.flatMap(({ id }, row) =>
      id.startsWith('feeding@small') ? [[id, small.samples[5].x[row] > 0]] : [],
    );
    expect(eaten).toEqual([
      ['feeding@small (grower-32 0.32)', false],
      ['feeding@small (grower-32 0.4)', true],
    ]);
  });

  it('may begin anew on day 0 with what stood there, and with what was switched off', () => {
    const half = run(system(actions.aeration), 5);
    const text = system();
    const load = (): string => saved(half);
    const day = (value: string) => [{ path: 'start', value: `{ saved: state.json, day: ${value} }` }];
    const scenario = readScenario(text, { file: 'season.yaml', load, set: day('0') });
    const anew = simulate(compileModel(scenario, createParameters()));
    expect(anew.samples.map(({ time }) => time)).toEqual([0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10]);
    expect([...anew.samples[0].y]).toEqual([...half.samples[5].y]);
    const still = endStateOf(anew);
    expect(still.spent).toEqual(endStateOf(half).spent);
    expect(still.operation.airOff).toEqual(['tank', 'filter']);
    expect(() => readScenario(text, { file: 'season.yaml', load, set: day('-1') })).toThrow(InputError);
  });

  it('and says so where the calendar is another than that of the saved state', () => {
    const state = saved(run(system(), 5));
    const set = [
      { path: 'start', value: '{ saved: state.json }' },
      { path: 'start-date', value: '2026-06-01' },
    ];
    const { notes } = readScenarioFully(system(), { file: 'season.yaml', load: () => state, set });
    expect(notes).toContain('start.saved: was saved on 2026-04-02; day 5 of this run is 2026-06-06');
  });
});

describe('a saved state is refused', () => {
  const state = endStateOf(run(system(), 5));
  const text = JSON.stringify(sealed(state));
  const changed = (change: object): string => JSON.stringify(sealed({ ...state, ...change }));

  it.each([
    [
      'that was edited',
      text.replace('"rainTank":', '"rainTank":1'),
      'the file was changed after it was written',
    ],
    ['without a hash', JSON.stringify(state), 'the file has no hash over what it holds'],
    ['that is cut short', text.slice(0, -20), 'start.saved: not JSON'],
    ['that is not JSON', 'volumes: 3', 'start.saved: not JSON'],
    [
      'of another version',
      changed({ version: 9 }),
      'version 9 of leat-state, written by a later leat; got "state.json"; expected schema leat-state, version 3',
    ],
    ['of an earlier version', changed({ version: 1 }), 'version 1 of leat-state, written by an earlier leat'],
    [
      'of a vessel that this system has not',
      changed(JSON.parse(JSON.stringify(state).replaceAll('filter', 'filtre')) as object),
      'did you mean filter?',
    ],
    [
      'in which a state stands twice',
      changed({ states: [...state.states, state.states[0]] }),
      'tan@tank stands twice',
    ],
    ['in which a state is missing', changed({ states: state.states.slice(1) }), 'tan@tank is missing'],
    [
      'with fish of another species',
      changed({ species: { ...state.species, tilapia: 'rainbow-trout' } }),
      'tilapia is of another species than was saved',
    ],
    [
      'with another crop',
      changed({ crops: { ...state.crops, basil: 'tomato' } }),
      'basil is of another crop than was saved; got basil; expected tomato',
    ],
    [
      'with more water than a vessel holds',
      changed({ volumes: { ...state.volumes, tank: 2.1 } }),
      'tank is saved with more water than it holds; got 2.1 m3; expected at most 2 m3',
    ],
    ['of no rules', changed({ rules: 'none' }), 'not a saved state of version 3: rules does not fit'],
    [
      'of a day that is not before the end of the run',
      changed({ time: 10 }),
      'the run ends before it begins: the state is of day 10',
    ],
  ])('%s', (_what, given, words) => {
    expect(() => run(system(), 10, given)).toThrow(InputError);
    expect(() => run(system(), 10, given)).toThrow(words);
  });

  it('where the system has a vessel more, which then needs a start of its own', () => {
    const more = system().replace(
      '  sump: {',
      '  spare: { kind: vessel, volume: 0.1 m3, area: 0.1 m2 }\n  sump: {',
    );
    const linked = more.replace(
      '{ from: bed, to: sump }',
      '{ from: bed, to: spare }\n  - { from: spare, to: sump }',
    );
    expect(() => run(linked, 10, text)).toThrow(
      'start.biofilm: missing; expected what spare starts with, which the saved state does not hold',
    );
  });
});
