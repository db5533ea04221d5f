import { waterChemistry } from '../../packages/core/src/model/water-chemistry.js';
import { concentration, doneRun, lastOf } from './run-of.js';
import { constant, scenarioOf, startOf, stillWater, vessel } from './scenario-builder.js';

/** Water that stands on lime under air. */
interface Limed {
  /** degC. */
  readonly temperature: number;
  /** Carbon dioxide of the air, atm. */
  readonly air: number;
}

/** What is in water that is at rest with lime and air, mmol/L and meq/L. */
interface AtRest {
  readonly pH: number;
  readonly calcium: number;
  readonly alkalinity: number;
  readonly carbon: number;
}

/** Pure water that has stood on powdered lime, aired, for 200 days: at rest with both, by the model with its default numbers. */
export function limedWater({ temperature, air }: Limed): AtRest {
  const cell = vessel('cell', 1, {
    aeration: 100,
    temperature: constant(temperature),
    lime: { kind: 'powder', mass: 10_000 },
  });
  const water = stillWater(0.001, 6, { chloride: 0 });
  const run = doneRun(
    scenarioOf([cell], {
      start: [startOf(cell, { water })],
      overrides: [{ id: 'gas.carbon-dioxide-air', value: air }],
      days: 200,
      every: 200,
    }),
  );
  const last = lastOf(run);
  const of = (component: 'calcium' | 'alkalinity' | 'carbon'): number =>
    concentration(run, last, component, 'cell');
  return {
    pH: waterChemistry(run.model.parameters, last, 0).pH,
    calcium: of('calcium'),
    alkalinity: of('alkalinity'),
    carbon: of('carbon'),
  };
}
