import { waterComponents, type WaterComponent } from '../model/component.js';
import { waterState } from '../model/layout.js';
import type { Course, Sample } from '../run/run.js';
import type { SeriesSource } from './series-source.js';
import { openWaterChemistry, type WaterChemistry } from '../model/water-chemistry.js';

const units: Record<WaterComponent, string> = {
  tan: 'mg N/L',
  nitrite: 'mg N/L',
  nitrate: 'mg N/L',
  solids: 'mg/L',
  alkalinity: 'meq/L',
  carbon: 'mmol/L',
  oxygen: 'mg/L',
  chloride: 'mg/L',
};

type ChemistryOf = ReturnType<typeof openWaterChemistry>;

/** Water chemistry of one vessel at each sample, worked out once. */
function chemistry(
  { samples }: Course,
  cell: number,
  chemistryOf: () => ChemistryOf,
): (index: number) => WaterChemistry {
  const known: WaterChemistry[] = [];
  return (index) => (known[index] ??= chemistryOf()(samples[index], cell));
}

function derived(
  run: Course,
  cell: number,
  chemistryOf: () => ChemistryOf,
): readonly (Omit<SeriesSource, 'name'> & { quantity: string })[] {
  const at = chemistry(run, cell, chemistryOf);
  const { parameters } = run.model;
  let molar: number | undefined;
  const gramsPerMol = (): number =>
    (molar ??= parameters.value('molar.carbon') + parameters.value('molar.oxygen-gas'));
  return [
    { quantity: 'pH', unit: 'pH', value: (_, i) => at(i).pH },
    { quantity: 'un-ionised-ammonia', unit: 'mg N/L', value: (_, i) => at(i).ammonia },
    { quantity: 'carbon-dioxide', unit: 'mg/L', value: (_, i) => at(i).carbonDioxide * gramsPerMol() },
    { quantity: 'temperature', unit: 'degC', value: (sample) => sample.temperature[cell] },
    { quantity: 'volume', unit: 'm3', value: (sample) => sample.volume[cell] },
  ];
}

/** What sits on the surfaces and the floor, where the vessel has any. */
function fixed(run: Course, cell: number): readonly (Omit<SeriesSource, 'name'> & { quantity: string })[] {
  const { layout, scenario } = run.model;
  const { surface } = scenario.vessels[cell];
  const held = (quantity: string, state: number, unit: string, per: number) =>
    state < 0 ? [] : [{ quantity, unit, value: (sample: Sample) => sample.y[state] / per }];
  return [
    ...held('aob', layout.aob[cell], 'g COD/m2', surface),
    ...held('nob', layout.nob[cell], 'g COD/m2', surface),
    ...held('settled', layout.settled[cell], 'g dry', 1),
  ];
}

/** Series of every vessel: what is in its water, what follows from that, what sits on its surfaces. */
export function vesselSources(run: Course): readonly SeriesSource[] {
  let opened: ChemistryOf | undefined;
  const chemistryOf = (): ChemistryOf => (opened ??= openWaterChemistry(run.model.parameters));
  return run.model.layout.cells.flatMap((vessel, cell) => {
    const water = waterComponents.map((component) => {
      const state = waterState(cell, component);
      return {
        quantity: component,
        unit: units[component],
        value: (sample: Sample) => sample.y[state] / sample.volume[cell],
      };
    });
    return [...water, ...derived(run, cell, chemistryOf), ...fixed(run, cell)].map(
      ({ quantity, unit, value }) => ({
        name: `${quantity}@${vessel}`,
        unit,
        value,
      }),
    );
  });
}
