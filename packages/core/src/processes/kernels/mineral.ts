import type { Term } from '../process.js';
import type { Component } from '../components.js';

/** Full oxidation of one unit of organic matter: nitrogen to TAN, the rest by closure. */
export function mineralised(component: Component): readonly Term[] {
  return [
    { component, coefficient: -1 },
    { component: 'tan', coefficient: { closes: 'nitrogen' } },
    { component: 'oxygen', coefficient: { closes: 'oxygen-demand' } },
    { component: 'alkalinity', coefficient: { closes: 'charge' } },
    { component: 'carbon', coefficient: { closes: 'carbon' } },
  ];
}
