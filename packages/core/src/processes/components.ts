// Reads numbers as: composition of what is conserved
import type { Values } from '../library/values.js';
import { leanDemand } from './kernels/lean-body.js';

/** What is dissolved or suspended in the water of a vessel, in the order of its states. */
export const waterComponents = /* @__PURE__ */ Object.freeze([
  'tan',
  'nitrite',
  'nitrate',
  'solids',
  'refractory',
  'dissolved',
  'organic-nitrogen',
  'alkalinity',
  'carbon',
  'oxygen',
  'chloride',
  'calcium',
] as const);

/**
 * What is dissolved or suspended in water: `tan`, `nitrite`, `nitrate` g N, `solids` (suspended, of
 * faeces, feed and cells, that break down) and `refractory` (suspended, that hardly do) g dry, `dissolved`
 * (biodegradable organic matter without nitrogen) g COD, `organic-nitrogen` (dissolved: urea and the like, which
 * becomes TAN and has no oxygen demand) g N, `alkalinity` eq, `carbon` mol, `oxygen` g, `chloride` g, `calcium` mol.
 */
export type WaterComponent = (typeof waterComponents)[number];

/** What a product that is dosed may bring to the water at once. */
export const dosedComponents = [
  'tan',
  'alkalinity',
  'carbon',
  'chloride',
  'nitrate',
  'calcium',
] as const satisfies readonly WaterComponent[];

/**
 * What sits on surfaces and floors, or lives, and is held as a state. Two are no matter: `acclimation`, the pH at which
 * the lower flank of the bell of the film on a surface lies, and `awake`, the share of its nitrifiers that are not stunned.
 * `fish-mass` is counted wet and holds what a lean body holds; `fish-fat` comes beside it and adds no wet mass, for fat takes
 * the place of water (Breck 2008). `calcite` is lime, mol: shell,
 * limestone, scale.
 */
export type FixedComponent =
  | 'aob'
  | 'nob'
  | 'acclimation'
  | 'awake'
  | 'heterotrophs'
  | 'settled'
  | 'settled-refractory'
  | 'calcite'
  | 'crop-mass'
  | 'crop-nitrogen'
  | 'fruit-mass'
  | 'fish-mass'
  | 'fish-number'
  | 'fish-fat'
  | 'fish-dead'
  | 'fish-dead-fat';

/** What exists only outside the water: it enters or leaves through a named account. */
export type OutsideComponent =
  | 'feed-nitrogen'
  | 'feed-demand'
  | 'dinitrogen'
  | 'ammonia-gas'
  | 'oxygen-gas'
  | 'carbon-dioxide-gas'
  | 'base'
  | 'crop-calcium'
  | 'water';

/** Everything that a process makes or uses. */
export type Component = WaterComponent | FixedComponent | OutsideComponent;

/** Everything outside the vessels, by name. Nothing is exempt from the balance. */
export const accounts = [
  'feed',
  'source water',
  'air',
  'sludge',
  'discharge',
  'stocked fish',
  'harvested fish',
  'graded fish',
  'dead fish',
  'seedlings',
  'transplants',
  'harvested crop',
  'dosing',
  'treatment',
] as const;

export type Account = (typeof accounts)[number];

/** Unit in which a component is counted. */
export const unitOf: Readonly<Record<Component, string>> = {
  tan: 'g N',
  nitrite: 'g N',
  nitrate: 'g N',
  solids: 'g dry',
  refractory: 'g dry',
  dissolved: 'g COD',
  'organic-nitrogen': 'g N',
  alkalinity: 'eq',
  carbon: 'mol C',
  oxygen: 'g O2',
  chloride: 'g Cl',
  calcium: 'mol Ca',
  aob: 'g COD',
  nob: 'g COD',
  acclimation: 'pH',
  awake: '1',
  heterotrophs: 'g COD',
  settled: 'g dry',
  'settled-refractory': 'g dry',
  calcite: 'mol',
  'crop-mass': 'g dry',
  'crop-nitrogen': 'g N',
  'fruit-mass': 'g dry',
  'fish-mass': 'g',
  'fish-number': 'fish',
  'fish-fat': 'g COD',
  'fish-dead': 'g',
  'fish-dead-fat': 'g COD',
  'feed-nitrogen': 'g N',
  'feed-demand': 'g COD',
  dinitrogen: 'g N',
  'ammonia-gas': 'g N',
  'oxygen-gas': 'g O2',
  'carbon-dioxide-gas': 'mol C',
  base: 'eq',
  'crop-calcium': 'mol Ca',
  water: 'm3',
};

/** Quantities that nothing in the model may make or destroy. */
export const conserved = /* @__PURE__ */ Object.freeze([
  'nitrogen',
  'oxygen-demand',
  'charge',
  'chloride',
  'carbon',
  'calcium',
  'water',
] as const);

/** What no process makes or loses: see {@link Content} for units. */
export type Conserved = (typeof conserved)[number];

/**
 * What one unit of a component holds: nitrogen g N, oxygen demand g O2, charge eq (of strong cations less strong
 * anions that are not components: alkalinity - ammonium + nitrite + nitrate + chloride - 2 calcium in water, and in
 * crops the potassium and magnesium less sulphate and phosphate that came in with their nitrogen), chloride g, carbon
 * mol, calcium mol, water m3.
 */
export type Content = Readonly<Record<Conserved, number>>;

const nothing: Content = {
  nitrogen: 0,
  'oxygen-demand': 0,
  charge: 0,
  chloride: 0,
  carbon: 0,
  calcium: 0,
  water: 0,
};

/** Organic matter, g COD, with so much nitrogen; carbon at a respiratory quotient of 1: one mol of C per mol of O2. */
function organic(demand: number, nitrogen: number, values: Values): Content {
  return {
    ...nothing,
    nitrogen,
    'oxygen-demand': demand,
    carbon: demand / values.value('molar.oxygen-gas'),
  };
}

/**
 * Content of one unit of a component. Oxygen demand is counted against ammonia, water and carbon
 * dioxide, so that nitrite owes -3/2, nitrate -2 and nitrogen gas -3/4 mol O2 per mol N (-3.43,
 * -4.57, -1.71 g/g: half reactions).
 * @param component which
 * @param values the tables, scoped to the place (`species.*` needs a species there)
 */
export function contentOf(component: Component, values: Values): Content {
  const perNitrogen = 1 / values.value('molar.nitrogen');
  const oxygen = values.value('molar.oxygen-gas');
  switch (component) {
    case 'tan':
      return { ...nothing, nitrogen: 1, charge: -perNitrogen };
    case 'nitrite':
      return { ...nothing, nitrogen: 1, 'oxygen-demand': -1.5 * oxygen * perNitrogen, charge: perNitrogen };
    case 'nitrate':
      return { ...nothing, nitrogen: 1, 'oxygen-demand': -2 * oxygen * perNitrogen, charge: perNitrogen };
    case 'dinitrogen':
      return { ...nothing, nitrogen: 1, 'oxygen-demand': -0.75 * oxygen * perNitrogen };
    case 'ammonia-gas':
    case 'feed-nitrogen':
    case 'organic-nitrogen':
      return { ...nothing, nitrogen: 1 };
    case 'crop-nitrogen':
      return { ...nothing, nitrogen: 1, charge: values.value('crop.cations') * perNitrogen };
    case 'alkalinity':
    case 'base':
      return { ...nothing, charge: 1 };
    case 'carbon':
    case 'carbon-dioxide-gas':
      return { ...nothing, carbon: 1 };
    case 'oxygen':
    case 'oxygen-gas':
      return { ...nothing, 'oxygen-demand': -1 };
    case 'chloride':
      return { ...nothing, chloride: 1, charge: 1 / values.value('molar.chlorine') };
    case 'calcium':
    case 'crop-calcium':
      return { ...nothing, calcium: 1, charge: -2 };
    case 'calcite':
      return { ...nothing, calcium: 1, carbon: 1 };
    case 'water':
      return { ...nothing, water: 1 };
    case 'solids':
    case 'settled':
      return organic(values.value('solids.demand'), values.value('solids.nitrogen'), values);
    case 'refractory':
    case 'settled-refractory':
      return organic(
        values.value('solids.refractory-demand'),
        values.value('solids.refractory-nitrogen'),
        values,
      );
    case 'aob':
    case 'nob':
      return organic(1, values.value('nitrifier.nitrogen'), values);
    case 'heterotrophs':
      return organic(1, values.value('heterotroph.nitrogen'), values);
    case 'crop-mass':
      return organic(values.value('crop.demand'), 0, values);
    case 'fruit-mass': {
      const nitrogen = values.value('crop.fruit-nitrogen');
      // As much strong cation a mol of nitrogen as in the plant, from which it comes.
      const charge = nitrogen * perNitrogen * values.value('crop.cations');
      return { ...organic(values.value('crop.demand'), nitrogen, values), charge };
    }
    case 'feed-demand':
    case 'dissolved':
    case 'fish-fat':
    case 'fish-dead-fat':
      return organic(1, 0, values);
    case 'fish-mass':
    case 'fish-dead':
      return organic(leanDemand(values), values.value('species.body-nitrogen'), values);
    case 'fish-number':
    case 'acclimation':
    case 'awake':
      return nothing;
  }
}
