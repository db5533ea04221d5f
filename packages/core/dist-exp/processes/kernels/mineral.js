/** Full oxidation of so much organic matter: nitrogen to TAN, the rest by closure. */
export function mineralised(component, amount = 1) {
    return [
        { component, coefficient: -amount },
        { component: 'tan', coefficient: { closes: 'nitrogen' } },
        { component: 'oxygen', coefficient: { closes: 'oxygen-demand' } },
        { component: 'alkalinity', coefficient: { closes: 'charge' } },
        { component: 'carbon', coefficient: { closes: 'carbon' } },
    ];
}
//# sourceMappingURL=mineral.js.map