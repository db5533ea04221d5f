// Reads numbers as: series
import { dateAt } from '../base/calendar.js';
import { InputError } from '../base/faults.js';
import { sum } from '../base/sum.js';
import { openConductivity } from '../chemistry/conductivity.js';
import { waterState } from '../model/layout.js';
import type { Model } from '../model/model.js';
import type { StreamKind } from '../model/streams.js';
import { ionsIn, openWaterChemistry, type WaterChemistry } from '../model/water-chemistry.js';
import { type WaterComponent, waterComponents } from '../processes/components.js';
import type { SampledRun, Run, Sample } from '../run/run.js';
import { noSeriesNamed } from './no-series.js';

/** How the values of one series are read from the samples of a run. */
export interface SeriesSource {
  readonly name: string;
  readonly unit: string;
  /** Value at a sample and its index among the samples. */
  value(sample: Sample, index: number): number;
}

const units: Record<WaterComponent, string> = {
  tan: 'mg N/L',
  nitrite: 'mg N/L',
  nitrate: 'mg N/L',
  solids: 'mg/L',
  refractory: 'mg/L',
  dissolved: 'mg COD/L',
  'organic-nitrogen': 'mg N/L',
  alkalinity: 'meq/L',
  carbon: 'mmol/L',
  oxygen: 'mg/L',
  chloride: 'mg/L',
  calcium: 'mmol/L',
};

/** What the parts of all suspended solids are called; other components go by their own names. */
export const suspendedNames: Readonly<Partial<Record<WaterComponent, string>>> = {
  solids: 'degradable-solids',
  refractory: 'refractory-solids',
};

type ChemistryOf = ReturnType<typeof openWaterChemistry>;

/** Water chemistry of one vessel at each sample, worked out once. */
function chemistry(
  { samples }: SampledRun,
  vessel: number,
  chemistryOf: () => ChemistryOf,
): (index: number) => WaterChemistry {
  const known: WaterChemistry[] = [];
  return (index) => (known[index] ??= chemistryOf()(samples[index], vessel));
}

function derived(
  run: SampledRun,
  vessel: number,
  chemistryOf: () => ChemistryOf,
): readonly (Omit<SeriesSource, 'name'> & { quantity: string })[] {
  const at = chemistry(run, vessel, chemistryOf);
  const { parameters } = run.model;
  let molar: number | undefined;
  let conductivity: ReturnType<typeof openConductivity> | undefined;
  const conductivityOf = () => (conductivity ??= openConductivity(parameters));
  const gramsPerMol = (): number =>
    (molar ??= parameters.value('molar.carbon') + parameters.value('molar.oxygen-gas'));
  return [
    { quantity: 'pH', unit: 'pH', value: (_, i) => at(i).pH },
    { quantity: 'un-ionised-ammonia', unit: 'mg N/L', value: (_, i) => at(i).ammonia },
    { quantity: 'carbon-dioxide', unit: 'mg/L', value: (_, i) => at(i).carbonDioxide * gramsPerMol() },
    { quantity: 'saturation-index', unit: '1', value: (_, i) => at(i).saturationIndex },
    {
      quantity: 'conductivity',
      unit: 'mS/cm',
      value: ({ y, volume }) => conductivityOf()(ionsIn(y, volume[vessel], vessel)),
    },
    { quantity: 'temperature', unit: 'degC', value: (sample) => sample.temperature[vessel] },
    { quantity: 'volume', unit: 'm3', value: (sample) => sample.volume[vessel] },
  ];
}

/** What sits on the surfaces and the floor, where the vessel has any. */
function fixed(
  run: SampledRun,
  vessel: number,
): readonly (Omit<SeriesSource, 'name'> & { quantity: string })[] {
  const { layout, scenario } = run.model;
  const { surface } = scenario.vessels[vessel];
  const held = (quantity: string, state: number, unit: string, per: number) =>
    state < 0 ? [] : [{ quantity, unit, value: (sample: Sample) => sample.y[state] / per }];
  return [
    ...held('aob', layout.aob[vessel], 'g COD/m2', surface),
    ...held('nob', layout.nob[vessel], 'g COD/m2', surface),
    ...held('flank', layout.acclimation[vessel], 'pH', 1),
    ...held('awake', layout.awake[vessel], '1', 1),
    ...held('heterotrophs', layout.heterotrophs[vessel], 'g COD/m2', surface),
    ...held('calcite', layout.calcite[vessel], 'mol', 1),
    ...settledSources(layout.settled[vessel], layout.settledRefractory[vessel]),
  ];
}

/** All that has settled, and the parts of it that break down and that hardly do. */
function settledSources(
  degradable: number,
  refractory: number,
): readonly (Omit<SeriesSource, 'name'> & { quantity: string })[] {
  if (degradable < 0) return [];
  const unit = 'g dry';
  return [
    { quantity: 'settled', unit, value: ({ y }) => y[degradable] + y[refractory] },
    { quantity: 'degradable-settled', unit, value: ({ y }) => y[degradable] },
    { quantity: 'refractory-settled', unit, value: ({ y }) => y[refractory] },
  ];
}

/** Series of every vessel: what is in its water, what follows from that, what sits on its surfaces. */
export function vesselSources(run: SampledRun): readonly SeriesSource[] {
  let opened: ChemistryOf | undefined;
  const chemistryOf = (): ChemistryOf => (opened ??= openWaterChemistry(run.model.parameters));
  return run.model.layout.vessels.flatMap((vessel, index) => {
    const [degradable, refractory] = [waterState(index, 'solids'), waterState(index, 'refractory')];
    const solids = {
      quantity: 'solids',
      unit: units.solids,
      value: ({ y, volume }: Sample) => (y[degradable] + y[refractory]) / volume[index],
    };
    const water = waterComponents.flatMap((component) => {
      const state = waterState(index, component);
      const own = {
        quantity: suspendedNames[component] ?? component,
        unit: units[component],
        value: (sample: Sample) => sample.y[state] / sample.volume[index],
      };
      return component === 'solids' ? [solids, own] : [own];
    });
    return [...water, ...derived(run, index, chemistryOf), ...fixed(run, index)].map(
      ({ quantity, unit, value }) => ({
        name: `${quantity}@${vessel}`,
        unit,
        value,
      }),
    );
  });
}

/** Base that the dosers of a vessel gave, mean over the output step that ends at a sample (the first: 0); acid is below 0. */
function doserSources(run: SampledRun): readonly SeriesSource[] {
  const { model, samples } = run;
  const vessels = [...new Set((model.scenario.dosers ?? []).map(({ vessel }) => vessel))];
  return vessels.map((name) => {
    const rows = model.instances
      .filter(({ doser, vessel }) => doser !== undefined && model.layout.vessels[vessel] === name)
      .map(({ row, values }) => ({ row, strength: values.value('product.alkalinity') }));
    return {
      name: `dosed@${name}`,
      unit: 'eq/d',
      value: (now, index) => {
        if (index === 0) return 0;
        const before = samples[index - 1];
        const given = rows.map(({ row, strength }) => strength * (now.x[row] - before.x[row]));
        return sum(given) / (now.time - before.time);
      },
    };
  });
}

/**
 * Series of every fish cohort: whole mass, number, mean mass (NaN while there are none) and feed
 * offered on the day.
 */
function cohortSources(run: SampledRun): readonly SeriesSource[] {
  const { scenario, layout } = run.model;
  return scenario.fish.flatMap(({ name }, index): SeriesSource[] => {
    const { mass, number, fat, dead } = layout.fish[index];
    const lying = (): SeriesSource => ({ name: `fish-dead@${name}`, unit: 'g', value: ({ y }) => y[dead] });
    return [
      { name: `fish-mass@${name}`, unit: 'g', value: ({ y }) => y[mass] },
      { name: `fish-number@${name}`, unit: 'fish', value: ({ y }) => y[number] },
      { name: `fish-mean-mass@${name}`, unit: 'g', value: ({ y }) => y[mass] / y[number] },
      { name: `fish-fat@${name}`, unit: 'g COD', value: ({ y }) => y[fat] },
      { name: `feed@${name}`, unit: 'g/d', value: ({ fed }) => fed[index] },
      ...(dead < 0 ? [] : [lying()]),
    ];
  });
}

/** Series of every planting: dry mass and nitrogen of all its batches together. */
function plantingSources(run: SampledRun): readonly SeriesSource[] {
  const { scenario, layout } = run.model;
  return scenario.plantings.flatMap(({ name }, index): SeriesSource[] => {
    const batches = layout.batches.filter(({ planting }) => planting === index);
    return [
      {
        name: `crop-mass@${name}`,
        unit: 'g dry',
        value: ({ y }) => sum(batches.map((batch) => y[batch.mass])),
      },
      {
        name: `crop-nitrogen@${name}`,
        unit: 'g N',
        value: ({ y }) => sum(batches.map((batch) => y[batch.nitrogen])),
      },
      ...(batches.every(({ fruit }) => fruit < 0)
        ? []
        : [
            {
              name: `fruit-mass@${name}`,
              unit: 'g dry',
              value: ({ y }: Sample) => sum(batches.map(({ fruit }) => y[fruit])),
            },
          ]),
    ];
  });
}

/** Series of the components of a user's own: in water a concentration, elsewhere what there is in the vessel. */
function ownSources({ model }: SampledRun): readonly SeriesSource[] {
  const { own, vessels } = model.layout;
  return own.flatMap(({ component: { id, unit, place }, states }) =>
    states.flatMap((state, vessel): SeriesSource[] => {
      if (state < 0) return [];
      const name = `${id}@${vessels[vessel]}`;
      if (place !== 'water') return [{ name, unit, value: ({ y }) => y[state] }];
      return [{ name, unit: `${unit}/m3`, value: ({ y, volume }) => y[state] / volume[vessel] }];
    }),
  );
}

/** Mean flow of all streams of some kinds over the output step that ends at a sample (the first: 0), m3/d. */
function flow({ samples, model }: SampledRun, kinds: readonly StreamKind[]): (index: number) => number {
  const streams = model.streams.flatMap(({ kind }, i) => (kinds.includes(kind) ? [i] : []));
  return (index) => {
    if (index === 0) return 0;
    const before = samples[index - 1];
    const now = samples[index];
    return sum(streams.map((i) => now.carried[i] - before.carried[i])) / (now.time - before.time);
  };
}

/**
 * Series of the whole: feed offered, evapotranspiration of the day, water in all vessels, and top-up and
 * discharge as means over the output step that ends at the time (0 at the start). The rain tank stands
 * outside the water budget: what it holds, and what has run over its edge since the start, are told here.
 */
function systemSources(run: SampledRun): readonly SeriesSource[] {
  const source = (quantity: string, unit: string, value: SeriesSource['value']): SeriesSource => ({
    name: `${quantity}@system`,
    unit,
    value,
  });
  const topUp = flow(run, ['top-up']);
  const discharge = flow(run, ['exchange', 'leak', 'overflow']);
  return [
    source('feed', 'g/d', ({ fed }) => sum(fed)),
    source('evapotranspiration', 'm3/d', ({ evapotranspiration }) => evapotranspiration),
    source('top-up', 'm3/d', (_, index) => topUp(index)),
    source('discharge', 'm3/d', (_, index) => discharge(index)),
    source('volume', 'm3', ({ volume }) => sum(volume)),
    source('rain-tank', 'm3', ({ rain }) => rain),
    source('rain-tank-spilled', 'm3', ({ spilled }) => spilled),
  ];
}

/** The course of one quantity at one place. */
export interface Series {
  /** `quantity@place`, such as `nitrate@sump`; the whole system is `@system`. */
  readonly name: string;
  readonly unit: string;
  /** One value for each output time of the run. */
  readonly values: Float64Array;
  /** Those times, d since the start. */
  readonly times: readonly number[];
  /** The same by the calendar: `2026-03-01`, or within a day `2026-03-01 06:00`. */
  dates(): readonly string[];
  /**
   * Value at a time, d, on the straight line between output times.
   * Throws RangeError outside the run.
   */
  at(time: number): number;
}

function interpolate(times: readonly number[], values: Float64Array, name: string, time: number): number {
  const last = times.length - 1;
  if (!(time >= times[0] && time <= times[last])) {
    throw new RangeError(`${name}: no value at ${time} d; the run goes from ${times[0]} to ${times[last]} d`);
  }
  let after = times.findIndex((each) => each >= time);
  if (times[after] === time) return values[after];
  after = Math.max(after, 1);
  const share = (time - times[after - 1]) / (times[after] - times[after - 1]);
  return values[after - 1] + share * (values[after] - values[after - 1]);
}

function sourcesOf(run: SampledRun): readonly SeriesSource[] {
  return [
    ...vesselSources(run),
    ...doserSources(run),
    ...cohortSources(run),
    ...plantingSources(run),
    ...ownSources(run),
    ...systemSources(run),
  ];
}

const timesOf = ({ samples }: SampledRun): readonly number[] => samples.map(({ time }) => time);

function seriesFrom({ samples, model }: SampledRun, source: SeriesSource, times: readonly number[]): Series {
  const { startDate } = model.scenario;
  const values = new Float64Array(samples.length);
  for (let i = 0; i < samples.length; i++) values[i] = source.value(samples[i], i);
  const { name, unit } = source;
  return {
    name,
    unit,
    values,
    times,
    dates: () => times.map((time) => dateAt(startDate, time)),
    at: (time) => interpolate(times, values, name, time),
  };
}

/** Names of every series of a run: vessels, cohorts, plantings, the whole system. */
export function seriesNames(run: Run): readonly string[] {
  return sourcesOf(run).map(({ name }) => name);
}

/** Unit of every series that a run of a model will have, by name, in the order of `seriesNames`. */
export function seriesUnits(model: Model): ReadonlyMap<string, string> {
  return new Map(sourcesOf({ model, samples: [] }).map(({ name, unit }) => [name, unit]));
}

/** The source of a series by its name. Throws InputError with the nearest name when there is none. */
function sourceNamed(run: SampledRun, name: string): SeriesSource {
  const sources = sourcesOf(run);
  const source = sources.find((each) => each.name === name);
  if (source !== undefined) return source;
  const known = sources.map((each) => each.name);
  throw new InputError([noSeriesNamed(name, known)]);
}

/** One series by its name. Throws InputError with the nearest name when there is none. */
export function seriesOf(run: Run, name: string): Series {
  return seriesFrom(run, sourceNamed(run, name), timesOf(run));
}

/** The last value of one series, in its unit. Throws InputError with the nearest name when there is none. */
export function lastValue(run: SampledRun, name: string): number {
  const last = run.samples.length - 1;
  return sourceNamed(run, name).value(run.samples[last], last);
}

/** Every series of a run, in the order of `seriesNames`. */
export function allSeries(run: SampledRun): readonly Series[] {
  const times = timesOf(run);
  return sourcesOf(run).map((source) => seriesFrom(run, source, times));
}

/** Reads the values of series by their name, each worked out as it is first asked for; undefined where there is none. */
export function valuesByName(run: SampledRun): (name: string) => Float64Array | undefined {
  const sources = new Map(sourcesOf(run).map((source) => [source.name, source]));
  const times = timesOf(run);
  const known = new Map<string, Float64Array>();
  return (name) => {
    const source = sources.get(name);
    if (source === undefined) return undefined;
    const values = known.get(name) ?? seriesFrom(run, source, times).values;
    known.set(name, values);
    return values;
  };
}
