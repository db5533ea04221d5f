import { dateAfter } from '../calendar.js';
import { endStateOf } from '../result/end-state.js';
import type { Run } from '../run/run.js';
import type { Action, DailyValue, Deed, Pump, Scenario } from '../scenario/scenario.js';

/** Deeds that set something which then stands. */
const settings: ReadonlySet<Deed['kind']> = new Set(['feed', 'top-up', 'source-water', 'pump', 'aeration']);

function later(value: DailyValue, day: number): DailyValue {
  return value.kind === 'daily'
    ? { kind: 'daily', values: value.values.slice(Math.min(day, value.values.length - 1)) }
    : value;
}

function turned(pump: Pump, day: number): Pump {
  return pump.timer === undefined
    ? pump
    : { ...pump, timer: { ...pump.timer, offset: pump.timer.offset - day } };
}

/** Dated deeds from a day on; what was set before stands from the first moment. */
function actionsFrom(actions: readonly Action[], day: number): readonly Action[] {
  return actions.flatMap((action): Action[] => {
    if (action.at >= day) return [{ ...action, at: action.at - day }];
    return settings.has(action.deed.kind) ? [{ ...action, at: 0 }] : [];
  });
}

/**
 * A scenario from a whole day of its run on, with what stands there at the end of a run up to that day. Places that the
 * run does not know start as the scenario says. Whether a rule was holding, and what a weekly cap has let in, is not
 * carried over.
 */
export function goOn(past: Run, scenario: Scenario, day: number): Scenario {
  const { rainTank, air } = scenario;
  return {
    ...scenario,
    startDate: dateAfter(scenario.startDate, day),
    days: scenario.days - day,
    et0: later(scenario.et0, day),
    ...(air === undefined ? {} : { air: later(air, day) }),
    ...(rainTank === undefined ? {} : { rainTank: { ...rainTank, rain: later(rainTank.rain, day) } }),
    vessels: scenario.vessels.map((vessel) => ({ ...vessel, temperature: later(vessel.temperature, day) })),
    pumps: scenario.pumps.map((pump) => turned(pump, day)),
    actions: actionsFrom(scenario.actions, day),
    saved: endStateOf(past),
  };
}
