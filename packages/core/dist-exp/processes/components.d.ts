import type { Values } from '../library/values.js';
/** What is dissolved or suspended in the water of a vessel, in the order of its states. */
export declare const waterComponents: readonly ["tan", "nitrite", "nitrate", "solids", "refractory", "dissolved", "organic-nitrogen", "alkalinity", "carbon", "oxygen", "chloride", "calcium"];
/**
 * What is dissolved or suspended in water: `tan`, `nitrite`, `nitrate` g N, `solids` (suspended, of
 * faeces, feed and cells, that break down) and `refractory` (suspended, that hardly do) g dry, `dissolved`
 * (biodegradable organic matter without nitrogen) g COD, `organic-nitrogen` (dissolved: urea and the like, which
 * becomes TAN and has no oxygen demand) g N, `alkalinity` eq, `carbon` mol, `oxygen` g, `chloride` g, `calcium` mol.
 */
export type WaterComponent = (typeof waterComponents)[number];
/** What a product that is dosed may bring to the water at once. */
export declare const dosedComponents: readonly ["tan", "alkalinity", "carbon", "chloride", "nitrate", "calcium"];
/**
 * What sits on surfaces and floors, or lives, and is held as a state. Two are no matter: `acclimation`, the pH at which
 * the lower flank of the bell of the film on a surface lies, and `awake`, the share of its nitrifiers that are not stunned.
 * `fish-mass` is counted wet and holds what a lean body holds; `fish-fat` comes beside it and adds no wet mass, for fat takes
 * the place of water (Breck 2008). `calcite` is lime, mol: shell,
 * limestone, scale.
 */
export type FixedComponent = 'aob' | 'nob' | 'acclimation' | 'awake' | 'heterotrophs' | 'settled' | 'settled-refractory' | 'calcite' | 'crop-mass' | 'crop-nitrogen' | 'fruit-mass' | 'fish-mass' | 'fish-number' | 'fish-fat' | 'fish-dead' | 'fish-dead-fat';
/** What exists only outside the water: it enters or leaves through a named account. */
export type OutsideComponent = 'feed-nitrogen' | 'feed-demand' | 'dinitrogen' | 'ammonia-gas' | 'oxygen-gas' | 'carbon-dioxide-gas' | 'base' | 'crop-calcium' | 'water';
/** Everything that a process makes or uses. */
export type Component = WaterComponent | FixedComponent | OutsideComponent;
/** Everything outside the vessels, by name. Nothing is exempt from the balance. */
export declare const accounts: readonly ["feed", "source water", "air", "sludge", "discharge", "stocked fish", "harvested fish", "graded fish", "dead fish", "seedlings", "harvested crop", "dosing", "treatment"];
export type Account = (typeof accounts)[number];
/** Unit in which a component is counted. */
export declare const unitOf: Readonly<Record<Component, string>>;
/** Quantities that nothing in the model may make or destroy. */
export declare const conserved: readonly ["nitrogen", "oxygen-demand", "charge", "chloride", "carbon", "calcium", "water"];
/** What no process makes or loses: see {@link Content} for units. */
export type Conserved = (typeof conserved)[number];
/**
 * What one unit of a component holds: nitrogen g N, oxygen demand g O2, charge eq (of strong cations less strong
 * anions that are not components: alkalinity - ammonium + nitrite + nitrate + chloride - 2 calcium in water, and in
 * crops the potassium and magnesium less sulphate and phosphate that came in with their nitrogen), chloride g, carbon
 * mol, calcium mol, water m3.
 */
export type Content = Readonly<Record<Conserved, number>>;
/**
 * Content of one unit of a component. Oxygen demand is counted against ammonia, water and carbon
 * dioxide, so that nitrite owes -3/2, nitrate -2 and nitrogen gas -3/4 mol O2 per mol N (-3.43,
 * -4.57, -1.71 g/g: half reactions).
 * @param component which
 * @param values the tables, scoped to the place (`species.*` needs a species there)
 */
export declare function contentOf(component: Component, values: Values): Content;
//# sourceMappingURL=components.d.ts.map