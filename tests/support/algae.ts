/** An extension as a module, invented: algae in the tank that take up TAN. */
export const algae = `export default {
  components: [{ id: 'algae', unit: 'g N', place: ['tank'], start: 1, content: () => ({ nitrogen: 1 }) }],
  numbers: [{ id: 'algae.growth', value: 0.1, low: 0.05, high: 0.2, unit: 'm3/(g d)', source: 'invented', mark: 'P' }],
  processes: [{
    id: 'algae-growth', title: 'taken up by algae', place: 'water', unit: 'g N', basis: 'whole',
    reads: ['tan', 'algae'],
    stoichiometry: () => [
      { component: 'tan', coefficient: -1 },
      { component: 'algae', coefficient: 1 },
      { component: 'alkalinity', coefficient: { closes: 'charge' } },
    ],
    coefficients: (values) => [values.value('algae.growth')],
    rate: (v, at, k) => k[0] * v[at[0]] * v[at[1]],
    partials: (v, at, k, d) => { d[0] = k[0] * v[at[1]]; d[1] = k[0] * v[at[0]]; },
  }],
};
`;

/** The same with a row that makes nitrogen. */
export const leakingAlgae = algae.replace(
  "{ component: 'algae', coefficient: 1 }",
  "{ component: 'algae', coefficient: 2 }",
);

/** What is said when it is run. */
export const algaeCaution =
  'its code is run, with all that you may do on this machine: 1 processes, 1 components, 1 numbers of your own';
