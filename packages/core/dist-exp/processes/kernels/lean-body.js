/** Oxygen demand of the lean body of a fish, g COD per g wet: that of its protein. */
export function leanDemand(values) {
    return ((values.value('species.body-nitrogen') / values.value('protein.nitrogen')) *
        values.value('protein.demand'));
}
//# sourceMappingURL=lean-body.js.map