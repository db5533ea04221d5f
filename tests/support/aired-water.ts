import { waterChemistry } from '../../packages/core/src/model/water-chemistry.js';
import { doneRun, lastOf } from './run-of.js';
import { constant, scenarioOf, startOf, stillWater, vessel } from './scenario-builder.js';

/** Water that is aired, and with what. */
interface AiredWater {
  /** eq m-3. */
  readonly alkalinity: number;
  /** degC. */
  readonly temperature: number;
  /** Carbon dioxide of the air, atm; absent: that of the tables. */
  readonly air?: number;
}

/** pH and dissolved CO2 (mol m-3) of water that has been aired for 30 days, by the model's gas exchange, at ionic strength 0. */
export function airedWater({ alkalinity, temperature, air }: AiredWater): {
  pH: number;
  carbonDioxide: number;
} {
  const cell = vessel('cell', 1, { aeration: 1000, temperature: constant(temperature) });
  const water = { ...stillWater(2, 7.5), alkalinity, carbon: alkalinity + 0.01 };
  // What is published was reckoned at ionic strength 0: without activities.
  const plain = { id: 'davies.a', value: 1e-9 };
  const overrides = [plain, ...(air === undefined ? [] : [{ id: 'gas.carbon-dioxide-air', value: air }])];
  const run = doneRun(
    scenarioOf([cell], { start: [startOf(cell, { water })], overrides, days: 30, every: 30 }),
    { tolerance: 1e-8 },
  );
  return waterChemistry(run.model.parameters, lastOf(run), 0);
}
