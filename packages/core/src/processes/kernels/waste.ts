import type { Values } from '../../library/values.js';
import type { Component } from '../components.js';
import type { Term } from '../process.js';

/**
 * Cells that die or come off a surface, per g COD: solids, of which a share of the demand hardly breaks down; nitrogen
 * beyond that of solids is organic, by closure.
 */
export function detached(component: Component, values: Values): readonly Term[] {
  const refractory = values.value('solids.refractory-cells');
  return [
    { component, coefficient: -1 },
    { component: 'solids', coefficient: (1 - refractory) / values.value('solids.demand') },
    { component: 'refractory', coefficient: refractory / values.value('solids.refractory-demand') },
    { component: 'organic-nitrogen', coefficient: { closes: 'nitrogen' } },
  ];
}
