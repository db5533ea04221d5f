// A tank with a process of its own: algae take up ammonium while nobody harvests them.
import { compileModel, createParameters, extension, seriesOf, simulate } from '@leat/core';
import { tank } from './tank.js';

const algae = extension({
  components: [{ id: 'algae', unit: 'g N', place: ['tank'], start: 1, content: () => ({ nitrogen: 1 }) }],
  numbers: [
    { id: 'algae.growth', value: 0.5, unit: 'm3/(g d)', source: 'invented for this example', mark: 'P' },
  ],
  processes: [
    {
      ...{ id: 'algae-growth', title: 'taken up by algae', place: 'water', unit: 'g N', basis: 'whole' },
      reads: ['tan', 'algae'],
      stoichiometry: () => [
        { component: 'tan', coefficient: -1 },
        { component: 'algae', coefficient: 1 },
        { component: 'alkalinity', coefficient: { closes: 'charge' } },
      ],
      coefficients: (values) => [values.value('algae.growth')],
      rate: (v, at, k) => k[0] * v[at[0]] * v[at[1]],
      partials: (v, at, k, d) => void ([d[0], d[1]] = [k[0] * v[at[1]], k[0] * v[at[0]]]),
    },
  ],
});
const run = simulate(compileModel(tank(), createParameters(), { extension: algae }));
for (const name of ['tan@tank', 'algae@tank']) console.log(name, seriesOf(run, name).values.at(-1));
