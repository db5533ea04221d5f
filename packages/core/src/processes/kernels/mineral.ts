import type { Term } from '../process.js';
import type { Component } from '../components.js';

/** Full oxidation of so much organic matter: nitrogen to TAN, the rest by closure. */
export function mineralised(component: Component, amount = 1): readonly Term[] {
  return [
    { component, coefficient: -amount },
    { component: 'tan', coefficient: { closes: 'nitrogen' } },
    { component: 'oxygen', coefficient: { closes: 'oxygen-demand' } },
    { component: 'alkalinity', coefficient: { closes: 'charge' } },
    { component: 'carbon', coefficient: { closes: 'carbon' } },
  ];
}
