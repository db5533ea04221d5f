import { hazardsIn, rowsOfDeaths } from '../model/hazards.js';
import type { RunParts } from './run-state.js';

/** Fewer than half a fish: none is left. */
const NONE = 0.5;

/**
 * Opens the watch over the fish: at each day boundary it is said of a cohort whose last fish has died since the boundary
 * before, with what killed most at that moment. Fish that were taken out are no deaths.
 */
export function openFishWatch({ model, state, ledger }: RunParts): (time: number) => void {
  const { fish } = model.layout;
  const rows = rowsOfDeaths(model);
  const before = fish.map(({ number }, cohort) => ({ alive: state.y[number], died: state.x[rows[cohort]] }));
  return (time) => {
    fish.forEach(({ number }, cohort) => {
      const alive = state.y[number];
      const died = state.x[rows[cohort]];
      const was = before[cohort];
      const deaths = died - was.died;
      if (was.alive >= NONE && alive < NONE && deaths >= (was.alive - alive) / 2) {
        const [{ cause }] = hazardsIn(model, cohort, {
          y: state.y,
          volume: state.water.volume,
          temperature: state.day.temperature,
          ionic: state.day.ionic,
        });
        const { name } = model.scenario.cohorts[cohort];
        ledger.say(time, 'fish-death', name, `all fish of ${name} are dead; leading cause: ${cause}`);
      }
      before[cohort] = { alive, died };
    });
  };
}
