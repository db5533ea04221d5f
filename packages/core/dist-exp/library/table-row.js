/** How a number varies: low..high is 90 % of normal and lognormal, a hard bound of the others. */
export const distributions = ['fixed', 'uniform', 'triangular', 'normal', 'lognormal'];
/** How a number came here, each mark in words; U is never in a table of ours. */
export const marks = {
    R: 'read in the publication',
    S: 'second-hand: read in another work that cites it',
    C: 'computed from it',
    M: 'from memory of it',
    W: 'from memory, digits uncertain',
    P: 'common practice',
    U: 'given by the user',
};
/** The table in which the subjects of a group stand. */
export const tableOf = {
    fish: 'fish',
    crop: 'crops',
    media: 'media',
    feed: 'feeds',
    dose: 'dosing',
    water: 'waters',
    aerator: 'aerators',
    lime: 'lime',
};
//# sourceMappingURL=table-row.js.map