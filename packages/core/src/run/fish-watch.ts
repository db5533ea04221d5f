import { hazardsIn } from '../model/hazards.js';
import type { RunParts } from './run-state.js';

/** Fewer than half a fish: none is left. */
const NONE = 0.5;

/** Books what is left of a cohort, less than half a fish, as dead: taken out, or to those that lie in the water. */
function clear({ model, state, ledger }: RunParts, cohort: number): void {
  const { mass, number, fat, dead, deadFat } = model.layout.fish[cohort];
  for (const [from, to] of [
    [number, -1],
    [mass, dead],
    [fat, deadFat],
  ]) {
    const amount = state.y[from];
    ledger.post('dead fish', from, -amount);
    if (to >= 0) ledger.post('dead fish', to, amount);
  }
}

/** The watch over the fish of a run. */
export interface FishWatch {
  /**
   * To be asked at each day boundary, and before actions: says of a cohort whose last fish has died since `noted` what killed
   * most at that moment, and books the part of a fish that is left as dead. Answers whether anything was booked.
   */
  readonly told: (time: number) => boolean;
  /** To be called after actions: what was stocked or graded in is there from now on, what was taken out is no death. */
  readonly noted: () => void;
}

/** Opens the watch over the fish as they stand. */
export function openFishWatch(parts: RunParts): FishWatch {
  const { model, state, ledger } = parts;
  const { fish } = model.layout;
  const before = fish.map(({ number }) => state.y[number]);
  return {
    told: (time) => {
      let cleared = false;
      fish.forEach(({ number }, cohort) => {
        if (before[cohort] < NONE || state.y[number] >= NONE) return;
        const [{ cause }] = hazardsIn(model, cohort, {
          y: state.y,
          volume: state.water.volume,
          temperature: state.day.temperature,
          ionic: state.day.ionic,
        });
        const { name } = model.scenario.fish[cohort];
        ledger.say(time, 'fish-death', name, `all fish of ${name} are dead; leading cause: ${cause}`);
        clear(parts, cohort);
        before[cohort] = state.y[number];
        cleared = true;
      });
      return cleared;
    },
    noted: () => {
      fish.forEach(({ number }, cohort) => {
        before[cohort] = state.y[number];
      });
    },
  };
}
