/**
 * Cells that die or come off a surface, per g COD: solids, of which a share of the demand hardly breaks down; nitrogen
 * beyond that of solids is organic, by closure.
 */
export function detached(component, values) {
    const refractory = values.value('solids.refractory-cells');
    return [
        { component, coefficient: -1 },
        { component: 'solids', coefficient: (1 - refractory) / values.value('solids.demand') },
        { component: 'refractory', coefficient: refractory / values.value('solids.refractory-demand') },
        { component: 'organic-nitrogen', coefficient: { closes: 'nitrogen' } },
    ];
}
//# sourceMappingURL=waste.js.map