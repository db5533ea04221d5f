/**
 * What so much organic matter (g N, g COD) breaks up into: suspended particles, as many as its nitrogen and the part of its
 * demand that is not dissolved at once both allow, the share of them that hardly breaks down (absent: that of faeces) apart; the rest of the demand
 * and of the nitrogen is dissolved.
 */
export function brokenUp(values, nitrogen, demand, dissolvedShare = 0, refractory = values.value('solids.refractory-share')) {
    const mixed = (whole, rest) => (1 - refractory) * whole + refractory * rest;
    const perDemand = mixed(values.value('solids.demand'), values.value('solids.refractory-demand'));
    const perNitrogen = mixed(values.value('solids.nitrogen'), values.value('solids.refractory-nitrogen'));
    const byDemand = (demand * (1 - dissolvedShare)) / perDemand;
    const byNitrogen = nitrogen / perNitrogen;
    const mass = Math.min(byDemand, byNitrogen);
    return [
        { component: 'solids', coefficient: mass * (1 - refractory) },
        { component: 'refractory', coefficient: mass * refractory },
        {
            component: 'dissolved',
            coefficient: mass === byDemand ? demand * dissolvedShare : demand - mass * perDemand,
        },
        { component: 'organic-nitrogen', coefficient: mass === byNitrogen ? 0 : nitrogen - mass * perNitrogen },
    ];
}
//# sourceMappingURL=particles.js.map