// Reads numbers as: chemistry of a vessel
import { log10 } from '../base/elementary.js';
import {
  hydrogenIon,
  openAcidBase,
  speciate,
  SPECIATION,
  type AcidBaseConstants,
} from '../chemistry/acid-base.js';
import { type IonContent, openIonicStrength } from '../chemistry/ions.js';
import { componentOf } from '../scenario/supplies.js';
import type { Values } from '../library/values.js';
import { waterState } from './layout.js';

/** What follows from the composition of the water of one vessel. */
export interface WaterChemistry {
  readonly pH: number;
  /** Un-ionised ammonia, mg N/L. */
  readonly ammonia: number;
  /** Dissolved carbon dioxide, mol m-3. */
  readonly carbonDioxide: number;
  /** Saturation index of calcite, log10 of calcium x carbonate over its solubility; NaN without either. */
  readonly saturationIndex: number;
}

/** Amounts, volumes (m3), temperatures (degC) and ionic strengths (mol L-1) of the vessels of a system at one moment. */
export interface Waters {
  readonly y: Float64Array;
  readonly volume: ArrayLike<number>;
  readonly temperature: ArrayLike<number>;
  readonly ionic: ArrayLike<number>;
}

/**
 * pH, un-ionised ammonia, carbon dioxide and saturation index of a vessel, NaN where its water has no pH in 0-14.
 * Formulas: chemistry/acid-base.ts.
 */
export function waterChemistry(values: Values, waters: Waters, vessel: number): WaterChemistry {
  return openWaterChemistry(values)(waters, vessel);
}

/** As `waterChemistry`, for many moments: the last constants of each vessel are kept. */
export function openWaterChemistry(values: Values): (waters: Waters, vessel: number) => WaterChemistry {
  const molar = values.value('molar.nitrogen');
  type Kept = {
    warmth: number;
    ions: number;
    constants: AcidBaseConstants;
    at: ReturnType<typeof openAcidBase>;
  };
  const kept = new Map<number, Kept>();
  const constantsAt = (vessel: number, warmth: number, ions: number): AcidBaseConstants => {
    const last = kept.get(vessel);
    if (last !== undefined && last.warmth === warmth && last.ions === ions) return last.constants;
    const at = last?.at ?? openAcidBase(values);
    const constants = at(warmth, ions);
    kept.set(vessel, { warmth, ions, constants, at });
    return constants;
  };
  const out = new Float64Array(SPECIATION);
  return ({ y, volume, temperature, ionic }, vessel) => {
    const per = (component: 'tan' | 'alkalinity' | 'carbon' | 'calcium'): number =>
      y[waterState(vessel, component)] / volume[vessel];
    const tan = per('tan');
    const carbon = per('carbon');
    const k = constantsAt(vessel, temperature[vessel], ionic[vessel]);
    const h = hydrogenIon(per('alkalinity'), carbon, tan / molar, k, Number.NaN);
    speciate(tan, carbon, h, k, molar, out, 0);
    const saturation = out[3] * per('calcium');
    const saturationIndex = saturation > 0 ? log10(saturation) : Number.NaN;
    return { pH: out[0], ammonia: out[1], carbonDioxide: out[2], saturationIndex };
  };
}

/** What is known of the ions in the water of a vessel, by the amounts in y and its volume, m3. */
export function ionsIn(y: Float64Array, volume: number, vessel: number): IonContent {
  const per = (quantity: keyof IonContent): number => y[waterState(vessel, componentOf(quantity))] / volume;
  return {
    ammonia: per('ammonia'),
    nitrite: per('nitrite'),
    nitrate: per('nitrate'),
    chloride: per('chloride'),
    alkalinity: per('alkalinity'),
    calcium: per('calcium'),
  };
}

/** Opens the ionic strength of the water of a vessel, mol L-1, by the amounts in y and its volume, m3. */
export function openVesselIons(values: Values): (y: Float64Array, volume: number, vessel: number) => number {
  const strength = openIonicStrength(values);
  return (y, volume, vessel) => strength(ionsIn(y, volume, vessel));
}
