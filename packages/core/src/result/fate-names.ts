import { accounts, type Component } from '../model/component.js';
import { streamKinds } from '../model/streams.js';

const airNames: Partial<Record<Component, string>> = {
  dinitrogen: 'nitrogen gas',
  'ammonia-gas': 'ammonia to air',
  'oxygen-gas': 'oxygen of the air',
  'carbon-dioxide-gas': 'carbon dioxide of the air',
};

const storeNames: Partial<Record<Component, string>> = {
  tan: 'water',
  nitrite: 'water',
  nitrate: 'water',
  alkalinity: 'water',
  carbon: 'water',
  oxygen: 'water',
  chloride: 'water',
  water: 'vessels',
  solids: 'solids',
  settled: 'solids',
  aob: 'biofilm',
  nob: 'biofilm',
  'crop-mass': 'standing crop',
  'crop-nitrogen': 'standing crop',
  'fish-mass': 'living fish',
};

/** What stands on the far side of the edge of the system, in plain words: an account, or a gas of the air. */
export function outsideName(account: string, component: Component): string {
  return (account === 'air' ? airNames[component] : undefined) ?? account;
}

/** Where in the system a component is held, in plain words. */
export function storeName(component: Component): string {
  return storeNames[component] ?? component;
}

/** Every name that `to` of the fates of some budget may hold. */
export const fateNames: readonly string[] = [
  ...new Set([
    ...accounts,
    ...Object.values(airNames),
    ...streamKinds,
    ...Object.values(storeNames).map((name) => `kept in ${name}`),
  ]),
];
