function* outside(ranges) {
    for (const [key, value, low, high, unit] of ranges) {
        if (value === undefined || (value >= low && value <= high))
            continue;
        yield { key, got: `${value}`, problem: 'outside what can be', expected: `${low} to ${high} ${unit}` };
    }
}
/** What cannot be true of a site and a day of weather, one fault a value; keys are those of the two types. */
export function weatherFaults(site, day) {
    const { high, low } = day;
    const faults = [
        ...outside([
            ['latitude', site.latitude, -90, 90, 'degrees'],
            ['elevation', site.elevation, -500, 9000, 'm'],
            ['windHeight', site.windHeight, 0.5, 200, 'm'],
            ['dayOfYear', day.dayOfYear, 1, 366, 'd'],
            ['high', high, -90, 60, 'degC'],
            ['low', low, -90, 60, 'degC'],
            ['dewPoint', day.dewPoint, -90, 60, 'degC'],
            ['humidityHigh', day.humidityHigh, 0, 1, '(share)'],
            ['humidityLow', day.humidityLow, 0, 1, '(share)'],
            ['humidity', day.humidity, 0, 1, '(share)'],
            ['radiation', day.radiation, 0, 50, 'MJ m-2 d-1'],
            ['sunshine', day.sunshine, 0, 24, 'h'],
            ['wind', day.wind, 0, 100, 'm/s'],
        ]),
    ];
    if (low > high) {
        faults.push({
            key: 'low',
            got: `${low}`,
            problem: 'above the highest',
            expected: `at most ${high} degC`,
        });
    }
    return faults;
}
//# sourceMappingURL=weather-day.js.map