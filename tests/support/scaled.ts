import type { Action, Ration, Scenario } from '../../packages/core/src/scenario/scenario.js';

function scaledRation(ration: Ration, factor: number): Ration {
  return ration.kind === 'mass' ? { ...ration, gramsPerDay: ration.gramsPerDay * factor } : ration;
}

function scaledAction(action: Action, factor: number): Action {
  switch (action.kind) {
    case 'dose':
      return { ...action, mass: action.mass * factor };
    case 'drain-solids':
      return { ...action, water: action.water * factor };
    case 'stock':
      return { ...action, number: action.number * factor };
    default:
      return action;
  }
}

/** The same system so many times as large: volumes, areas, flows, stock, feed, stores and doses. */
export function scaled(scenario: Scenario, factor: number): Scenario {
  const { topUp, rainTank } = scenario;
  return {
    ...scenario,
    vessels: scenario.vessels.map((vessel) => ({
      ...vessel,
      volume: vessel.volume * factor,
      surface: vessel.surface * factor,
      floor: vessel.floor * factor,
      open: vessel.open * factor,
      covered: vessel.covered * factor,
      leak: vessel.leak * factor,
      exchange: vessel.exchange * factor,
    })),
    pumps: scenario.pumps.map((pump) => ({
      ...pump,
      inlet: pump.inlet * factor,
      restart: pump.restart * factor,
    })),
    flows: scenario.flows.map((flow) =>
      flow.kind === 'pumped' ? { ...flow, rate: flow.rate * factor } : flow,
    ),
    ...(topUp && {
      topUp: {
        level: topUp.level * factor,
        rate: topUp.rate * factor,
        sources: topUp.sources.map((source) =>
          source.kind === 'mains' ? { ...source, dailyCap: source.dailyCap * factor } : source,
        ),
      },
    }),
    ...(rainTank && {
      rainTank: {
        ...rainTank,
        capacity: rainTank.capacity * factor,
        volume: rainTank.volume * factor,
        roof: rainTank.roof * factor,
      },
    }),
    fish: scenario.fish.map((cohort) => ({
      ...cohort,
      number: cohort.number * factor,
      ration: scaledRation(cohort.ration, factor),
    })),
    plantings: scenario.plantings.map((planting) => ({ ...planting, area: planting.area * factor })),
    start: scenario.start.map((start) => ({
      ...start,
      volume: start.volume * factor,
      settled: start.settled * factor,
      ...(start.settledRefractory !== undefined && { settledRefractory: start.settledRefractory * factor }),
    })),
    actions: scenario.actions.map(({ at, action, ...rest }) => ({
      at,
      action: scaledAction(action, factor),
      ...rest,
    })),
    rules: scenario.rules.map((rule) => ({
      ...rule,
      doing: rule.doing.map((action) => scaledAction(action, factor)),
      undoing: rule.undoing.map((action) => scaledAction(action, factor)),
    })),
  };
}
