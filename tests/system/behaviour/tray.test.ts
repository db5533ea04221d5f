import { describe, expect, it } from 'vitest';
import { createParameters } from '../../../packages/core/src/library/parameters.js';
import { compileModel } from '../../../packages/core/src/model/compile.js';
import { budgetsOf, worstResidual } from '../../../packages/core/src/result/budget.js';
import type { ResumableRun } from '../../../packages/core/src/run/run-state.js';
import { endStateOf } from '../../../packages/core/src/run/saved.js';
import { simulate } from '../../../packages/core/src/run/stepping.js';
import { readScenario } from '../../../packages/core/src/scenario/read-scenario.js';
import type { Scenario } from '../../../packages/core/src/scenario/scenario.js';
import { edited, messagesOf } from '../../product/faults/small-system.js';

const lettuce = 'lettuce: { in: bed, crop: lettuce-butterhead, area: 4 m2, light: 30 mol/m2/d }';

/** The small system with a bed of lettuce that is planted out of a tray, both as said. */
const trayed = (bed: string, tray: string): string =>
  edited([
    lettuce,
    `lettuce: { in: bed, crop: lettuce-butterhead, area: 3 m2, tray: nursery, ${bed} }
  nursery: { in: bed, crop: lettuce-butterhead, area: 0.5 m2, ${tray} }`,
  ]).replace('et0: 4 mm/d', 'et0: 4 mm/d\n  light: 30 mol/m2/d');

const scenarioOf = (text: string): Scenario => readScenario(text, { file: 'small.yaml' });
const runOf = (scenario: Scenario): ResumableRun => simulate(compileModel(scenario, createParameters()));
const eventsOf = (run: ResumableRun, place: string) =>
  run.events.filter((event) => event.place === place).map(({ time, kind, text }) => ({ time, kind, text }));

/** Dry mass and nitrogen that stand in a planting at a day. */
function standing(run: ResumableRun, place: string, day: number): readonly [number, number] {
  const batch = run.model.layout.batches.find(({ name }) => name === place);
  const sample = run.samples.find(({ time }) => time === day);
  if (batch === undefined || sample === undefined) throw new Error(`nothing of ${place} on day ${day}`);
  return [sample.y[batch.mass], sample.y[batch.nitrogen]];
}

describe('a bed that is planted out of a tray', () => {
  const run = runOf(scenarioOf(trayed('from: 14 d', 'harvest: 12 d')));

  it('gets what stood in the tray, nitrogen too, which waited there beyond its age; the tray is sown again', () => {
    expect(eventsOf(run, 'lettuce')).toEqual([{ time: 14, kind: 'plant', text: 'planted out of nursery' }]);
    expect(eventsOf(run, 'nursery')).toEqual([]);
    const moved = run.postings.filter(({ account }) => account === 'transplants');
    expect(moved).toHaveLength(4);
    for (const component of ['crop-mass', 'crop-nitrogen']) {
      const own = moved.filter((posting) => posting.component === component).map(({ amount }) => amount);
      expect(own).toEqual([-own[1], own[1]]);
      expect(own[1]).toBeGreaterThan(0);
    }
    const [before] = standing(run, 'nursery', 13);
    const [set] = moved.filter(({ component, amount }) => component === 'crop-mass' && amount > 0);
    expect(set.amount).toBeGreaterThan(before);
    expect(set.amount).toBeLessThan(before * 1.5);
    expect(standing(run, 'nursery', 15)[0]).toBeLessThan(0.2 * before);
    expect(worstResidual(budgetsOf(run)).share).toBeLessThan(1e-9);
  });

  it('is further on than one that is planted with seedlings of the table', () => {
    const other = runOf(scenarioOf(trayed('from: 14 d', 'harvest: 12 d').replace('tray: nursery, ', '')));
    expect(standing(run, 'lettuce', 30)[0]).toBeGreaterThan(1.3 * standing(other, 'lettuce', 30)[0]);
  });

  it('gets seedlings from elsewhere where none in the tray are of age, and says so', () => {
    const early = runOf(scenarioOf(trayed('from: 14 d', 'harvest: 20 d')));
    expect(eventsOf(early, 'lettuce')[0].text).toBe(
      'planted with seedlings from elsewhere: none in nursery are of age',
    );
    expect(early.postings.some(({ account }) => account === 'transplants')).toBe(false);
  });

  it('takes one batch after another as its own batches are harvested', () => {
    const text = trayed('batches: 2, harvest: 16 d', 'batches: 2, harvest: 10 d, after: empty');
    const events = runOf(scenarioOf(text)).events.filter(({ kind }) => kind === 'harvest');
    expect(events.map(({ text }) => text.replace(/^.*dry, /, ''))).toEqual([
      'replanted out of nursery#1',
      'replanted out of nursery#2',
      'replanted with seedlings from elsewhere: none in nursery are of age',
    ]);
  });

  it('goes on from a saved state as it would have gone on', () => {
    const scenario = scenarioOf(trayed('from: 14 d', 'harvest: 12 d'));
    const actions = scenario.actions.filter(({ at }) => at < 13);
    const saved = endStateOf(runOf({ ...scenario, days: 13, actions }));
    const rest = runOf({ ...scenario, saved });
    expect(standing(rest, 'lettuce', 30)[0]).toBeCloseTo(standing(run, 'lettuce', 30)[0], 4);
  });

  it.each([
    ['tray: nursry', 'did you mean nursery?'],
    ['tray: lettuce', 'plants set out in a circle; got lettuce > lettuce'],
  ])('%s is refused', (key, message) => {
    const text = trayed('from: 14 d', 'harvest: 12 d').replace('tray: nursery', key);
    expect(messagesOf(text).join()).toContain(message);
  });
});
