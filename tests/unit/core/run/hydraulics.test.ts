import { describe, expect, it } from 'vitest';
import type { TimedAction, Scenario } from '../../../../packages/core/src/scenario/scenario.js';
import type { Run } from '../../../../packages/core/src/run/run.js';
import { endStateOf } from '../../../../packages/core/src/run/saved.js';
import { doneRun, lastOf } from '../../../support/run-of.js';
import { constant, float, gravity, pumped, scenarioOf, vessel } from '../../../support/scenario-builder.js';

const SECOND = 1 / 86_400;
const pump = { name: 'main', inlet: 0.3, restart: 0.5 };
const tank = vessel('tank', 2);
const topUp = (at: number, stopped: boolean): TimedAction => ({ at, action: { kind: 'top-up', stopped } });
const power = (at: number, running: boolean): TimedAction => ({
  at,
  action: { kind: 'pump', pump: 'main', running },
});

/** A tank above a sump that loses 0.17 m3 a day. */
function loop(other: Partial<Scenario>): Run {
  const sump = vessel('sump', 1, { exchange: 0.17 });
  const flows = [pumped('sump', 'tank', 20), gravity('tank', 'sump')];
  return doneRun(scenarioOf([tank, sump], { pumps: [pump], flows, topUp: float(1), days: 9, ...other }));
}

const times = (run: Run, kind: string): number[] =>
  run.events.filter((event) => event.kind === kind).map(({ time }) => time);
const levels = (run: Run, vessel: number): number[] => run.samples.map(({ volume }) => volume[vessel]);

/** Water in less water out less water gained, m3, by streams and postings. */
function residual(run: Run): number {
  const { streams } = run.model;
  const last = lastOf(run);
  const crossed = streams.reduce(
    (sum, stream, s) => sum + (stream.from < 0 ? last.carried[s] : 0) - (stream.to < 0 ? last.carried[s] : 0),
    0,
  );
  const posted = run.postings.filter(({ component }) => component === 'water');
  const jumped = posted.reduce((sum, { amount }) => sum + amount, 0);
  const held = (sample: Run['samples'][number]): number =>
    sample.volume.reduce((sum, volume) => sum + volume, 0);
  return crossed + jumped - (held(last) - held(run.samples[0]));
}

describe('a sump without top-up', () => {
  // Exact: straight lines. Stopped at 1.25; 0.7 m3 to the inlet at 0.17 a day.
  const run = loop({ actions: [topUp(1.25, true), topUp(6.5, false)], topUp: float(1, 3), every: 0.5 });

  it('falls to the pump inlet and trips the pump at the exact time, within a second', () => {
    expect(times(run, 'pump-trip')).toHaveLength(1);
    expect(Math.abs(times(run, 'pump-trip')[0] - (1.25 + 0.7 / 0.17))).toBeLessThan(SECOND);
  });

  it('refills and restarts the pump at the exact time, within a second', () => {
    const left = 1 - 0.17 * (6.5 - 1.25);
    expect(times(run, 'pump-restart')).toHaveLength(1);
    expect(Math.abs(times(run, 'pump-restart')[0] - (6.5 + (0.5 - left) / (3 - 0.17)))).toBeLessThan(SECOND);
  });

  it('stands at every sample where the straight lines say', () => {
    const exact = run.samples.map(({ time }) => {
      if (time <= 1.25) return 1;
      if (time <= 6.5) return 1 - 0.17 * (time - 1.25);
      return Math.min(1, 1 - 0.17 * 5.25 + (3 - 0.17) * (time - 6.5));
    });
    levels(run, 1).forEach((level, i) => {
      expect(level).toBeCloseTo(exact[i], 11);
    });
  });

  it('moves no water through the pump between trip and restart, and loses none', () => {
    const [trip] = times(run, 'pump-trip');
    const [restart] = times(run, 'pump-restart');
    expect(lastOf(run).carried[0]).toBeCloseTo(20 * (9 - (restart - trip)), 8);
    expect(Math.abs(residual(run))).toBeLessThan(1e-12);
  });
});

describe('top-up', () => {
  it('holds the level at the float against a steady loss', () => {
    const run = loop({ topUp: float(0.8) });
    run.samples.forEach(({ time, volume }) => {
      expect(volume[1]).toBeCloseTo(Math.max(0.8, 1 - 0.17 * time), 11);
    });
  });

  it('gives no more than the daily cap of the mains (exact: 0.17 lost, 0.1 given a day)', () => {
    const source = { kind: 'mains', water: 'mains', dailyCap: 0.1 } as const;
    const run = loop({ topUp: { level: 1, rate: 50, sources: [source] }, days: 6 });
    run.samples.forEach(({ time, volume }) => {
      expect(volume[1]).toBeCloseTo(1 - 0.07 * time, 11);
    });
    const top = run.model.streams.findIndex(({ kind }) => kind === 'top-up');
    expect(lastOf(run).carried[top]).toBeCloseTo(0.6, 12);
  });

  it('takes rain first and the mains when the rain tank is empty (exact: after 0.5 / 0.17 d)', () => {
    const run = loop({
      topUp: {
        level: 1,
        rate: 50,
        sources: [{ kind: 'rain-tank' }, { kind: 'mains', water: 'mains', dailyCap: 9 }],
      },
      rainTank: { capacity: 1, volume: 0.5, roof: 0, rain: constant(0), water: 'mains' },
      every: 0.25,
    });
    const [rain, mains] = run.model.streams.flatMap(({ kind }, s) => (kind === 'top-up' ? [s] : []));
    run.samples.forEach(({ time, rain: held, carried }) => {
      expect(held).toBeCloseTo(Math.max(0, 0.5 - 0.17 * time), 11);
      expect(carried[rain]).toBeCloseTo(Math.min(0.5, 0.17 * time), 11);
      expect(carried[mains]).toBeCloseTo(Math.max(0, 0.17 * time - 0.5), 11);
    });
  });

  it('stopped by the keeper brings neither mains nor rain', () => {
    const run = loop({
      topUp: {
        level: 1,
        rate: 50,
        sources: [{ kind: 'rain-tank' }, { kind: 'mains', water: 'mains', dailyCap: 9 }],
      },
      rainTank: { capacity: 1, volume: 0.5, roof: 0, rain: constant(0), water: 'mains' },
      actions: [topUp(0, true)],
      days: 3,
    });
    expect(lastOf(run).rain).toBe(0.5);
    expect(lastOf(run).volume[1]).toBeCloseTo(1 - 3 * 0.17, 11);
  });
});

describe('a vessel below its standpipe', () => {
  it('fills first when the pump runs again, and only then gives water on', () => {
    const open = vessel('tank', 2, { open: 10 });
    const flows = [pumped('sump', 'tank', 4), gravity('tank', 'sump')];
    const run = doneRun(
      scenarioOf([open, vessel('sump', 3)], {
        pumps: [{ name: 'main', inlet: 0.1, restart: 0.2 }],
        flows,
        et0: constant(0.01),
        days: 5,
        every: 0.125,
        actions: [power(1, false), power(3, true)],
      }),
    );
    const loss = 10 * 0.01 * run.model.parameters.value('water.open-coefficient');
    const full = 3 + (2 * loss) / (4 - loss);
    run.samples.forEach(({ time, volume }) => {
      const wanted =
        time <= 1 ? 2 : time <= 3 ? 2 - loss * (time - 1) : 2 - 2 * loss + (4 - loss) * (time - 3);
      expect(volume[0]).toBeCloseTo(Math.min(2, wanted), 11);
    });
    const back = run.model.streams.findIndex(({ kind }) => kind === 'gravity');
    expect(lastOf(run).carried[back]).toBeCloseTo((4 - loss) * (1 + (5 - full)), 9);
    expect(Math.abs(residual(run))).toBeLessThan(1e-12);
  });

  it('run dry keeps its last water, loses no more than it receives, and says so', () => {
    const open = vessel('sump', 1, { open: 20 });
    const actions = [topUp(0, true), topUp(6, false)];
    const run = doneRun(scenarioOf([open], { et0: constant(0.01), days: 8, topUp: float(1, 2), actions }));
    const loss = 20 * 0.01 * run.model.parameters.value('water.open-coefficient');
    const dry = run.model.parameters.value('vessel.dry');
    expect(Math.abs(times(run, 'dry')[0] - (1 - dry) / loss)).toBeLessThan(SECOND);
    expect(levels(run, 0)[5]).toBeCloseTo(dry, 12);
    expect(levels(run, 0)[6]).toBeCloseTo(dry, 12);
    expect(levels(run, 0)[8]).toBeCloseTo(1, 12);
    expect(times(run, 'wet')).toHaveLength(1);
    expect(lastOf(run).y[7]).toBeGreaterThan(run.samples[0].y[7]);
    expect(Math.abs(residual(run))).toBeLessThan(1e-12);
  });

  it('drawn by a second pump while the first is off trips that pump before it is empty', () => {
    const run = doneRun(
      scenarioOf([vessel('tank', 1), vessel('sump', 2)], {
        pumps: [pump, { name: 'lift', inlet: 0, restart: 1 }],
        flows: [
          pumped('sump', 'tank', 2),
          { kind: 'pumped', from: 'tank', to: 'sump', pump: 'lift', rate: 1 },
          gravity('tank', 'sump'),
        ],
        days: 5,
        actions: [power(1, false)],
      }),
    );
    expect(run.events.filter(({ kind, place }) => kind === 'pump-trip' && place === 'lift')).toHaveLength(1);
    expect(levels(run, 0).at(-1)).toBeCloseTo(run.model.parameters.value('vessel.dry'), 12);
    expect(levels(run, 1).at(-1)).toBeCloseTo(2, 12);
  });
});

/** A bed of a m3 whose siphon passes 30 m3/d down to 0.4 m3, over a sump; 10 m3/d are pumped while the pump runs. */
function siphonBed(other: Partial<Parameters<typeof scenarioOf>[1]> = {}, rate = 30) {
  const bed = vessel('bed', 1, { drain: { rate, to: 0.4, by: 'siphon' } });
  return scenarioOf([bed, vessel('sump', 3)], {
    pumps: [pump],
    flows: [pumped('sump', 'bed', 10), gravity('bed', 'sump')],
    days: 1,
    every: 0.01,
    ...other,
  });
}

describe('a siphon', () => {
  it('starts by itself when the bed is full, drains it to its level, and lets it fill again', () => {
    const run = doneRun(siphonBed());
    // Down by 30 - 10 m3/d in 0.03 d, up by 10 in 0.06 d.
    const wanted = (time: number): number => {
      const since = time % 0.09;
      return since < 0.03 ? 1 - 20 * since : 0.4 + 10 * (since - 0.03);
    };
    expect(run.samples).toHaveLength(101);
    run.samples.forEach(({ time, volume }) => {
      expect(volume[0]).toBeCloseTo(wanted(time), 9);
    });
    expect(Math.abs(residual(run))).toBeLessThan(1e-12);
  });

  it('drains to its level where the pump stops meanwhile, and stands where it stops before', () => {
    const stops = (at: number) => levels(doneRun(siphonBed({ actions: [power(at, false)] })), 0);
    expect(stops(0.02).at(-1)).toBeCloseTo(0.4, 12);
    expect(stops(0.06).at(-1)).toBeCloseTo(0.7, 9);
  });

  it.each([0.02, 0.05])('goes on from a saved state of day %s as it would have gone on', (day) => {
    const whole = siphonBed({ days: 0.2 });
    const saved = endStateOf(doneRun(siphonBed({ days: day })));
    expect(saved.siphoning ?? []).toEqual(day === 0.02 ? ['bed'] : []);
    const rest = doneRun({ ...whole, saved });
    expect(lastOf(rest).volume[0]).toBeCloseTo(lastOf(doneRun(whole)).volume[0], 9);
  });

  it('never ends where it passes less than comes in: the bed stays full, and the rest runs over', () => {
    const run = doneRun(siphonBed({}, 8));
    expect(new Set(levels(run, 0))).toEqual(new Set([1]));
    expect(Math.abs(residual(run))).toBeLessThan(1e-12);
  });
});

describe('a lower outlet', () => {
  it('drains the vessel to its level while the pump is off and lets it fill while on', () => {
    const bed = vessel('bed', 1, { drain: { rate: 4, to: 0.4 } });
    const run = doneRun(
      scenarioOf([bed, vessel('sump', 3)], {
        pumps: [{ ...pump, timer: { on: 0.5, off: 0.5, offset: 0 } }],
        flows: [pumped('sump', 'bed', 10), gravity('bed', 'sump')],
        days: 2,
        every: 0.05,
      }),
    );
    const wanted = (time: number): number => {
      const hour = time % 1;
      if (time < 0.5) return 1;
      return hour < 0.5 ? Math.min(1, 0.4 + 6 * hour) : Math.max(0.4, 1 - 4 * (hour - 0.5));
    };
    const inside = run.samples.filter(({ time }) => Math.abs(time * 20 - Math.round(time * 20)) < 1e-9);
    expect(inside.length).toBe(41);
    inside.slice(0, -1).forEach(({ time, volume }) => {
      expect(volume[0]).toBeCloseTo(wanted(Math.round(time * 20) / 20), 9);
    });
    expect(Math.abs(residual(run))).toBeLessThan(1e-12);
  });
});
