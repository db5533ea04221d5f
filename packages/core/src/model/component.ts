/** What is dissolved or suspended in the water of a vessel, in the order of its states. */
export const waterComponents = [
  'tan',
  'nitrite',
  'nitrate',
  'solids',
  'alkalinity',
  'carbon',
  'oxygen',
  'chloride',
] as const;

/**
 * What is dissolved or suspended in water: `tan`, `nitrite`, `nitrate` g N, `solids` g dry, `alkalinity` eq, `carbon`
 * mol, `oxygen` g, `chloride` g.
 */
export type WaterComponent = (typeof waterComponents)[number];

/** What sits on surfaces and floors, or lives, and is held as a state. */
export type FixedComponent =
  'aob' | 'nob' | 'settled' | 'crop-mass' | 'crop-nitrogen' | 'fish-mass' | 'fish-number';

/** What exists only outside the water: it enters or leaves through a named account. */
export type OutsideComponent =
  | 'feed-nitrogen'
  | 'feed-demand'
  | 'dinitrogen'
  | 'ammonia-gas'
  | 'oxygen-gas'
  | 'carbon-dioxide-gas'
  | 'base'
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
  'dead fish',
  'seedlings',
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
  alkalinity: 'eq',
  carbon: 'mol C',
  oxygen: 'g O2',
  chloride: 'g Cl',
  aob: 'g COD',
  nob: 'g COD',
  settled: 'g dry',
  'crop-mass': 'g dry',
  'crop-nitrogen': 'g N',
  'fish-mass': 'g',
  'fish-number': 'fish',
  'feed-nitrogen': 'g N',
  'feed-demand': 'g COD',
  dinitrogen: 'g N',
  'ammonia-gas': 'g N',
  'oxygen-gas': 'g O2',
  'carbon-dioxide-gas': 'mol C',
  base: 'eq',
  water: 'm3',
};
