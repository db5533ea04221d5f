import type { Values } from '../library/values.js';
import type { Account, Component, Conserved, WaterComponent } from './components.js';
import type { Kernel } from './kernels/kernel.js';

/** What a rate may depend on: concentrations in water, derived chemistry, amounts on surfaces and in stock. */
export type Variable =
  | WaterComponent
  | 'pH'
  /** Un-ionised ammonia, g N m-3. */
  | 'ammonia'
  /** Dissolved carbon dioxide, mol m-3. */
  | 'carbon-dioxide'
  /** Carbonate over the solubility of calcite, m3 per mol of calcium: calcium times it is the saturation. */
  | 'saturation'
  | 'aob'
  | 'nob'
  /** Lower flank of the bell of the film, pH. */
  | 'acclimation'
  /** Share of the nitrifiers of a surface that are not stunned. */
  | 'awake'
  | 'heterotrophs'
  | 'settled'
  | 'settled-refractory'
  | 'calcite'
  | 'crop-mass'
  | 'crop-nitrogen'
  | 'fish-mass'
  | 'fish-number'
  | 'fish-fat'
  | 'fish-dead'
  | 'fish-dead-fat';

/** A coefficient: a number, or the conserved quantity that it must close. */
export type Coefficient = number | { readonly closes: Conserved };

/** One entry of a stoichiometric row; `outside` names the account when it is not in the system. */
export interface Term {
  readonly component: Component;
  /** Units of the component gained (+) or lost (-) per unit of extent. */
  readonly coefficient: Coefficient;
  readonly outside?: Account;
}

/** What a vessel is built as, whatever happens in it. */
export interface VesselForm {
  /** Volume at the standpipe, m3. */
  readonly volume: number;
  /** Wetted surface for biofilm, m2. */
  readonly surface: number;
  /** Open water, m2. */
  readonly open: number;
  /** Floor on which solids settle, m2. */
  readonly floor: number;
  /** Share of incoming solids caught. */
  readonly capture: number;
  /** Water that leaves it by draining and comes back, air taking its place, m3 d-1; absent: none. */
  readonly flooded?: number;
}

/** What holds at a place during a segment of constant forcing. Only what the kind of place has is set. */
export interface Conditions extends VesselForm {
  /** Water temperature, degC. */
  readonly temperature: number;
  /** Air temperature for crops, degC. */
  readonly air: number;
  /** Aeration now, kLa at 20 degC, d-1. */
  readonly aeration: number;
  /** Share of its oxygen that the air of the aeration gives up at 20 degC in water without any, 0..1; 0: open air. */
  readonly airShare: number;
  /** Carbon dioxide in the air, mol per mol; absent: that of open air (`gas.carbon-dioxide-air`). */
  readonly carbonDioxide?: number;
  /** Pressure of the air, atm. */
  readonly pressure: number;
  /** Water that flows through, m3 d-1. */
  readonly inflow: number;
  /** Feed offered to the cohort as a mass, g d-1. */
  readonly fed: number;
  /** Feed offered as a share of body mass, g d-1 per g of fish. */
  readonly fedShare: number;
  /** How much faster than over a whole day feed is given and eaten: 1 over the share of the day that its hours are. */
  readonly pace: number;
  /** Area of the batch, m2. */
  readonly area: number;
  /** Photosynthetic light on the crop, mol m-2 d-1. */
  readonly light: number;
  /** Share of its growth that goes to fruit today, 0..1. */
  readonly bearing: number;
  /** Ionic strength of its water that morning, mol L-1. */
  readonly ionic: number;
  /** Most that the doser gives of one product now, g d-1. */
  readonly most: number;
  /** What the doser holds: pH, or alkalinity in eq m-3. */
  readonly setPoint: number;
  /** How far beyond it the doser gives its most, in the same unit. */
  readonly band: number;
  /** 1: a base, fed below the set point; -1: an acid, fed above it. */
  readonly sign: number;
}

/**
 * Where a process works: in the water, on the surface or the floor of a vessel, at its lime, in a cohort of fish, in a
 * batch of crop, or at a product of a doser.
 */
export type PlaceKind = 'water' | 'surface' | 'floor' | 'lime' | 'cohort' | 'batch' | 'doser';

/**
 * A process: stoichiometry as data, a rate, its partial derivatives. Rate and partials are pure
 * functions of numbers: `v` holds the values of all variables, `at` where this row's are (in the
 * order of `reads`), `k` the coefficients of the segment, `d` the partials to be filled.
 */
export interface Process {
  readonly id: string;
  readonly title: string;
  readonly place: PlaceKind;
  /** Which places of that kind it works at, by the vessel; absent: all. */
  readonly where?: (vessel: VesselForm & { readonly drain?: object }) => boolean;
  /** At which groups of fish it works, by whether the keeper leaves the dead in the water; absent: all. */
  readonly whose?: (cohort: { readonly dead?: 'left' }) => boolean;
  /** Works only at batches of crops that bear fruit. */
  readonly bears?: true;
  /** Whether its row or its rate depends on the feed given (`feed.*`): a cohort then has a row for each feed that it gets. */
  readonly perFeed?: true;
  /** Unit of the extent; the rate is that per day. */
  readonly unit: string;
  /** `volume`: the rate is per m3 of water; `whole`: for the place as a whole. */
  readonly basis: 'volume' | 'whole';
  /** Whether its coefficients depend on the water that flows through; they are then found anew when flows change. */
  readonly throughFlow?: true;
  /** Whether its coefficients depend on the ionic strength of the water; they are then found anew when that changes. */
  readonly salted?: true;
  readonly reads: readonly Variable[];
  /** What one unit of extent makes and uses. */
  readonly stoichiometry: (values: Values) => readonly Term[];
  /** Coefficients of the segment, always the same length. */
  readonly coefficients: (values: Values, conditions: Conditions) => readonly number[];
  /** Extent per day, in `unit` per `basis`. */
  readonly rate: (v: Float64Array, at: ArrayLike<number>, k: ArrayLike<number>) => number;
  /** Fills d[m] with the partial by the m-th variable of `reads`. */
  readonly partials: (v: Float64Array, at: ArrayLike<number>, k: ArrayLike<number>, d: Float64Array) => void;
  /** The same law as loops over all places, where there are many or where several processes share work. */
  readonly kernel?: Kernel;
}

/** Conditions of no place: for asking what a process reads and how many coefficients it has, which no place changes. */
export const anyConditions: Conditions = {
  temperature: 20,
  air: 20,
  volume: 1,
  surface: 1,
  open: 1,
  floor: 1,
  capture: 0.5,
  flooded: 1,
  aeration: 1,
  airShare: 0.04,
  pressure: 1,
  inflow: 1,
  fed: 1,
  fedShare: 0.01,
  pace: 1,
  area: 1,
  light: 20,
  bearing: 0.5,
  ionic: 0.01,
  most: 1,
  setPoint: 7,
  band: 0.1,
  sign: 1,
};
