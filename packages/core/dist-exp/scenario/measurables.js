/** What may be measured, in the order of a test kit. */
export const measurables = [
    'ammonia',
    'nitrite',
    'nitrate',
    'pH',
    'alkalinity',
    'oxygen',
    'temperature',
    'chloride',
    'volume',
];
/** What each is written in; pH has no unit. */
export const dimensionOf = {
    ammonia: 'ammonia',
    nitrite: 'nitrite',
    nitrate: 'nitrate',
    pH: undefined,
    alkalinity: 'alkalinity',
    oxygen: 'concentration',
    temperature: 'temperature',
    chloride: 'concentration',
    volume: 'volume',
};
/** The unit that each is told in; '' for pH. */
export const unitOfMeasurable = {
    ammonia: 'mg N/L',
    nitrite: 'mg N/L',
    nitrate: 'mg N/L',
    pH: '',
    alkalinity: 'meq/L',
    oxygen: 'mg/L',
    temperature: 'degC',
    chloride: 'mg/L',
    volume: 'm3',
};
//# sourceMappingURL=measurables.js.map