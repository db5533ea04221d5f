// Reads numbers as: handbook sizes
import { sum } from '../../base/sum.js';
import { rowOf } from '../../library/rows-in-use.js';
import type { TableRow } from '../../library/table-row.js';
import type { Model } from '../../model/model.js';
import { areaByClass } from '../../result/limits-for-crops.js';
import type { Run } from '../../run/run.js';
import { feedAtStart } from './design-loads.js';

/** What the handbook sizes a filter from; masses of ammonia and of the areal rate in the same form (N, or NH3). */
export interface FilterDemand {
  /** Feed given, g d-1. */
  readonly feed: number;
  /** Ammonia made per g of feed, g g-1: 0.03, or protein x 0.092 (Timmons & Ebeling). */
  readonly ammoniaPerFeed: number;
  /** Ammonia that goes with exchanged water and never reaches the filter, g d-1; absent: none. */
  readonly dilution?: number;
  /** What a m2 of grown-in surface removes, g d-1. */
  readonly arealRate: number;
  /** Surface of the media, m2 per m3 of bulk. */
  readonly specificSurface: number;
}

/** A filter by the handbook. */
export interface FilterSize {
  /** Ammonia to remove, g d-1. */
  readonly load: number;
  /** m2. */
  readonly surface: number;
  /** Of media in bulk, m3. */
  readonly volume: number;
}

/**
 * Sizes a filter as handbooks do: ammonia from feed, less dilution, over an areal rate, over a specific surface.
 * It knows no temperature, pH, oxygen or start-up but what the areal rate was taken at; it stands beside the
 * model's answer for comparison. FAO 589 Appendix 4; Miller, Florida A&M training slides.
 * Throws RangeError where a number is not finite, feed, ammonia or dilution is below 0, rate or surface is not above
 * 0, or dilution takes more than is made.
 */
export function handbookFilter(demand: FilterDemand): FilterSize {
  const { feed, ammoniaPerFeed, dilution = 0, arealRate, specificSurface } = demand;
  const fromZero = { feed, ammoniaPerFeed, dilution };
  for (const [name, value] of Object.entries(fromZero)) {
    if (!(value >= 0 && value < Infinity)) throw new RangeError(`${name} is ${value}; expected 0 or more`);
  }
  for (const [name, value] of Object.entries({ arealRate, specificSurface })) {
    if (!(value > 0 && value < Infinity)) throw new RangeError(`${name} is ${value}; expected more than 0`);
  }
  const made = feed * ammoniaPerFeed;
  if (dilution > made) {
    throw new RangeError(`dilution is ${dilution} g/d; expected no more than the ${made} g/d made`);
  }
  const load = made - dilution;
  const surface = load / arealRate;
  return { load, surface, volume: surface / specificSurface };
}

/** One `value` that a handbook gives, in the unit of what is varied. */
export interface HandbookValue {
  readonly value: number;
  /** The published number that it rests on, with its source. */
  readonly rate: number;
  readonly rateUnit: string;
  readonly conditions: string;
  readonly source: string;
  readonly page: string;
  readonly mark: TableRow['mark'];
  /** Whether it is published for the temperature here (true where it names none). */
  readonly applies: boolean;
}

/** What handbooks say of a size: by areal rate for a filter, by feed per area for beds, by surface for a load. */
export interface Handbook {
  readonly rule: 'surface' | 'planted-area' | 'load';
  /** Feed on the day of most feed, g. */
  readonly feed: number;
  /** Protein in it, g. */
  readonly protein: number;
  /** TAN that comes of it by its protein, g N d-1. */
  readonly tanByProtein: number;
  /** TAN that comes of it by its mass, g N d-1. */
  readonly tanByFeed: number;
  /** m2 (or g d-1 of feed) for one of what is varied. */
  readonly perUnit: number;
  /** Mean of the water there, degC. */
  readonly temperature: number;
  readonly values: readonly HandbookValue[];
}

/** The two ends of what is varied, `from` and `to` in its unit, each as it makes the model. */
export interface SizeEnds {
  readonly from: number;
  readonly to: number;
  readonly atFrom: Model;
  readonly atTo: Model;
}

/** Temperatures up to and from which the two published pairs of areal rates are stated, degC. */
const COOL = 20;
const WARM = 25;

const plantedIn = (model: Model, vessel: number): number =>
  sum(
    model.scenario.plantings
      .filter((planting) => planting.vessel === model.layout.vessels[vessel])
      .map(({ area }) => area),
  );

/**
 * Vessels whose surface for biofilm depends on what is varied, as indices: media, not the walls that come with a
 * larger vessel, nor the roots of a larger planted area.
 */
export function surfacesVaried({ atFrom, atTo }: Pick<SizeEnds, 'atFrom' | 'atTo'>): readonly number[] {
  return atFrom.scenario.vessels.flatMap(({ surface, volume }, vessel) => {
    const other = atTo.scenario.vessels[vessel];
    const roots = plantedIn(atFrom, vessel) !== plantedIn(atTo, vessel);
    return other.surface === surface || other.volume !== volume || roots ? [] : [vessel];
  });
}

const surfaceOf = (model: Model, vessels: readonly number[]): number =>
  sum(vessels.map((vessel) => model.scenario.vessels[vessel].surface));

const plantedOf = (model: Model): number => {
  const { leafy, fruiting } = areaByClass(model.scenario.plantings);
  return leafy + fruiting;
};

/** Feed and protein, g, on the day on which most protein is given. */
function mostFed({ samples, model }: Run): { feed: number; protein: number } {
  const { fish: cohorts } = model.scenario;
  return samples
    .map(({ fed }) => ({
      feed: sum(fed),
      protein: sum(cohorts.map(({ feed }, i) => fed[i] * feed.protein)),
    }))
    .reduce((a, b) => (b.protein > a.protein ? b : a));
}

function meanTemperature({ samples, model }: Run, vessels: readonly number[]): number {
  const some = vessels.length > 0 ? vessels : model.layout.vessels.map((_, vessel) => vessel);
  return (
    sum(samples.flatMap(({ temperature }) => some.map((vessel) => temperature[vessel]))) /
    (samples.length * some.length)
  );
}

/** A value by a row of the tables. */
function valueBy(run: Run, id: string, applies: boolean, valueAt: (rate: number) => number): HandbookValue {
  const { unit, conditions, source, page, mark } = rowOf(run.model.parameters, id);
  const rate = run.model.parameters.value(id);
  return { value: valueAt(rate), rate, rateUnit: unit, conditions, source, page, mark, applies };
}

const arealRates = (temperature: number): readonly (readonly [id: string, applies: boolean])[] => [
  ['limit.areal-rate-low.value', temperature <= COOL],
  ['limit.areal-rate-high.value', temperature <= COOL],
  ['limit.areal-rate-fao.value', true],
  ['limit.areal-rate-warm-low.value', temperature >= WARM],
  ['limit.areal-rate-warm-high.value', temperature >= WARM],
];

/**
 * What handbooks would give for what is varied, from the feed of the day of most feed: surface by areal rate where it
 * changes a surface for biofilm, planted area by feed per area, a load by the surface of filters. Undefined where no
 * handbook rule is known here (water, doses, volumes without media).
 * @param run at the answer, or wherever the search came nearest
 */
export function handbookOf(ends: SizeEnds, run: Run): Handbook | undefined {
  const { from, to, atFrom, atTo } = ends;
  const { parameters } = run.model;
  const vessels = surfacesVaried(ends);
  const temperature = meanTemperature(run, vessels);
  const most = mostFed(run);
  const perProtein = parameters.value('limit.tan-per-protein.value');
  const base = {
    ...most,
    tanByProtein: most.protein * perProtein,
    tanByFeed: most.feed * parameters.value('limit.tan-per-feed.value'),
    temperature,
  };
  const per = (of: (model: Model) => number): number => (of(atTo) - of(atFrom)) / (to - from);
  const surface = per((model) => surfaceOf(model, vessels));
  if (surface > 0 && most.feed > 0) {
    const values = arealRates(temperature).map(([id, applies]) =>
      valueBy(run, id, applies, (arealRate) => {
        const ammoniaPerFeed = base.tanByProtein / most.feed;
        return handbookFilter({ feed: most.feed, ammoniaPerFeed, arealRate, specificSurface: surface })
          .volume;
      }),
    );
    return { ...base, rule: 'surface', perUnit: surface, values };
  }
  const planted = per(plantedOf);
  if (planted > 0 && most.feed > 0) {
    const { fruiting } = areaByClass(atTo.scenario.plantings);
    const kind = fruiting > plantedOf(atTo) / 2 ? 'fruiting' : 'leafy';
    const values = ['high', 'low'].map((end) =>
      valueBy(
        run,
        `limit.feed-per-area-${kind}-${end}.value`,
        true,
        (rate) => from + (most.feed / rate - plantedOf(atFrom)) / planted,
      ),
    );
    return { ...base, rule: 'planted-area', perUnit: planted, values };
  }
  const fedBy = per(({ scenario }) => sum(feedAtStart(scenario)));
  if (fedBy > 0) {
    const filters = run.model.scenario.vessels.flatMap(({ kind }, vessel) =>
      kind === 'biofilter' || kind === 'media-bed' ? [vessel] : [],
    );
    const present = surfaceOf(run.model, filters);
    const share = most.protein / most.feed;
    const atStart = sum(feedAtStart(atFrom.scenario));
    const values = arealRates(temperature).map(([id, applies]) =>
      valueBy(run, id, applies, (rate) => from + ((present * rate) / (share * perProtein) - atStart) / fedBy),
    );
    return { ...base, rule: 'load', perUnit: fedBy, values };
  }
  return undefined;
}
