// Reads numbers as: why a size differs from handbooks
import { waterState } from '../../model/layout.js';
import { scopeTo } from '../../model/scope.js';
import type { Component, WaterComponent } from '../../processes/components.js';
import { openWaterChemistry } from '../../model/water-chemistry.js';
import { reached } from '../../processes/kernels/film.js';
import { aobCoefficients } from '../../processes/kernels/oxidiser.js';
import { bareShare, arrhenius, bell, inhibition, monod } from '../../processes/kernels/rate-terms.js';
import { anyConditions } from '../../processes/process.js';
import type { Run, Sample } from '../../run/run.js';
import { sum } from '../../base/sum.js';
import type { Values } from '../../library/values.js';

/** Where TAN went, and how the biofilm of some vessels worked: what the areal rates of tables leave out. */
export interface SizeReasons {
  /** TAN that fish, solids and dead cells released, g N d-1: `mean` of the run, and of the output step of `most`. */
  readonly released: { readonly mean: number; readonly most: number };
  /** Of all TAN that went, the `share` (0..1) oxidised in each vessel, taken up by crops, lost to air or with water. */
  readonly went: readonly { readonly to: string; readonly share: number }[];
  /** Areal rate in those vessels, g N m-2 d-1: `mean` of the run, and of the output step of `most`. */
  readonly arealRate: { readonly mean: number; readonly most: number };
  /** Mean `value` of each condition there, and the `factor` that it leaves of the rate at 20 degC without any lack. */
  readonly factors: readonly {
    readonly name: string;
    readonly value: number;
    readonly unit: string;
    readonly factor: number;
  }[];
  /** Share of the room on those surfaces that biofilm fills, 0..1: at the `start` and at the `end`. */
  readonly filled: { readonly start: number; readonly end: number };
}

/** Rates over output steps of a sum of rows, each times a coefficient. */
function ratesOf(
  run: Run,
  terms: readonly { row: number; times: number }[],
): { mean: number; most: number; whole: number } {
  const { samples } = run;
  const at = ({ x }: Sample): number => sum(terms.map(({ row, times }) => times * x[row]));
  const steps = samples
    .slice(1)
    .map((sample, i) => (at(sample) - at(samples[i])) / (sample.time - samples[i].time));
  const whole = at(samples[samples.length - 1]);
  return { whole, mean: whole / samples[samples.length - 1].time, most: Math.max(...steps) };
}

/** A row that moves TAN, with how much of it per unit and what else it makes. */
interface TanRow {
  readonly row: number;
  readonly times: number;
  readonly process: string;
  readonly place: string;
  readonly makes: readonly Component[];
}

/** Rows that move TAN, other than by water between vessels. */
function tanRows(run: Run): readonly TanRow[] {
  return run.model.rows.flatMap(({ process, place, entries }, row) => {
    const times = sum(
      entries
        .filter(({ component, state }) => component === 'tan' && state >= 0)
        .map(({ coefficient }) => coefficient),
    );
    const makes = entries.filter(({ coefficient }) => coefficient > 0).map(({ component }) => component);
    return times === 0 ? [] : [{ row, times, process, place, makes }];
  });
}

const oxidises = ({ makes }: TanRow): boolean => makes.includes('nitrite');

/** Where the TAN that a row uses up goes, by what it is made into. */
function fateOf(row: TanRow): string {
  if (oxidises(row)) return `oxidised in ${row.place}`;
  if (row.makes.includes('crop-nitrogen')) return 'taken up by crops';
  if (row.makes.includes('ammonia-gas')) return 'lost to air';
  if (row.makes.includes('heterotrophs') || row.makes.includes('solids'))
    return 'built into bacteria that live on organic matter';
  return row.process === 'transport' ? 'carried out with water' : row.process;
}

function wentTo(run: Run): SizeReasons['went'] {
  const amounts = new Map<string, number>();
  for (const each of tanRows(run)) {
    if (each.times >= 0) continue;
    const to = fateOf(each);
    const { whole } = ratesOf(run, [{ row: each.row, times: -each.times }]);
    amounts.set(to, (amounts.get(to) ?? 0) + whole);
  }
  const whole = sum(amounts.values());
  return [...amounts]
    .map(([to, amount]) => ({ to, share: amount / whole }))
    .filter(({ share }) => share > 0)
    .sort((a, b) => b.share - a.share);
}

/** Mean over samples and vessels. */
function meanOf(
  run: Run,
  vessels: readonly number[],
  of: (sample: Sample, vessel: number) => number,
): number {
  return (
    sum(run.samples.flatMap((sample) => vessels.map((vessel) => of(sample, vessel)))) /
    (run.samples.length * vessels.length)
  );
}

/** Shares of what ammonia oxidisers could do that are left by the oxygen, and then by the TAN, that come to a film. */
function comingTo(run: Run, values: Values, { y, volume, temperature }: Sample, vessel: number) {
  const { layout, scenario } = run.model;
  const { surface } = scenario.vessels[vessel];
  const k = aobCoefficients(values, { ...anyConditions, temperature: temperature[vessel], surface });
  const level = (component: WaterComponent): number => y[waterState(vessel, component)] / volume[vessel];
  // Of a bare surface: what its first cells would find.
  const most = k[0] * (y[layout.aob[vessel]] > 0 ? y[layout.aob[vessel]] : 1e-9 * surface);
  const supplied = reached(level('oxygen'), most, k[2], k[11]);
  return { oxygen: supplied / most, tan: reached(level('tan'), supplied, k[1], k[12]) / supplied };
}

function factorsIn(run: Run, vessels: readonly number[]): SizeReasons['factors'] {
  const values = scopeTo(run.model.parameters, {});
  const water = (component: WaterComponent): number =>
    meanOf(run, vessels, ({ y, volume }, vessel) => y[waterState(vessel, component)] / volume[vessel]);
  const tan = water('tan');
  const oxygen = water('oxygen');
  const carbon = water('carbon');
  const chemistry = openWaterChemistry(run.model.parameters);
  const pH = meanOf(run, vessels, (sample, vessel) => chemistry(sample, vessel).pH);
  const ammonia = meanOf(run, vessels, (sample, vessel) => chemistry(sample, vessel).ammonia);
  const { acclimation, heterotrophs } = run.model.layout;
  const covered = meanOf(
    run,
    vessels,
    ({ y }, vessel) => y[heterotrophs[vessel]] / run.model.scenario.vessels[vessel].surface,
  );
  const coming = (of: 'oxygen' | 'tan'): number =>
    meanOf(run, vessels, (sample, vessel) => comingTo(run, values, sample, vessel)[of]);
  const flank = meanOf(run, vessels, ({ y }, vessel) => y[acclimation[vessel]]);
  const temperature = meanOf(run, vessels, (sample, vessel) => sample.temperature[vessel]);
  const k = (id: string): number => values.value(id);
  return [
    { name: 'TAN', value: tan, unit: 'mg N/L', factor: coming('tan') },
    { name: 'oxygen', value: oxygen, unit: 'mg/L', factor: coming('oxygen') },
    {
      name: 'organic matter, by heterotrophs that cover the film',
      value: covered,
      unit: 'g COD/m2',
      factor: bareShare(covered, k('heterotroph.cover'), k('heterotroph.cover-most')),
    },
    {
      name: 'inorganic carbon',
      value: carbon,
      unit: 'mmol/L',
      factor: monod(carbon, k('aob.k-carbon')),
    },
    { name: 'pH', value: pH, unit: '', factor: bell(pH, flank, k('aob.ph-high')) },
    {
      name: 'free ammonia',
      value: ammonia,
      unit: 'mg N/L',
      factor: inhibition(ammonia, k('aob.ki-ammonia')),
    },
    {
      name: 'temperature',
      value: temperature,
      unit: 'degC',
      factor: arrhenius(k('aob.growth-theta'), temperature),
    },
  ];
}

/**
 * Why the model does not agree with an areal rate: what a run says of TAN and of the biofilm of some vessels (`vessels`, by
 * index).
 */
export function sizeReasons(run: Run, vessels: readonly number[]): SizeReasons {
  const { layout, scenario, parameters } = run.model;
  const rows = tanRows(run);
  const surface = sum(vessels.map((vessel) => scenario.vessels[vessel].surface));
  const places = new Set(vessels.map((vessel) => layout.vessels[vessel]));
  const released = ratesOf(
    run,
    rows.filter(({ times, process }) => times > 0 && process !== 'transport'),
  );
  const oxidised = ratesOf(
    run,
    rows
      .filter((row) => row.times < 0 && oxidises(row) && places.has(row.place))
      .map(({ row, times }) => ({ row, times: -times / surface })),
  );
  const room = parameters.value('biofilm.capacity') * surface;
  const filled = ({ y }: Sample): number =>
    sum(vessels.map((vessel) => y[layout.aob[vessel]] + y[layout.nob[vessel]])) / room;
  return {
    released: { mean: released.mean, most: released.most },
    went: wentTo(run),
    arealRate: { mean: oxidised.mean, most: oxidised.most },
    factors: factorsIn(run, vessels),
    filled: { start: filled(run.samples[0]), end: filled(run.samples[run.samples.length - 1]) },
  };
}
