// node bands.js system.yaml: 50 draws of every uncertain number: the band of TAN, and the odds of each limit.
import { readFileSync } from 'node:fs';
import { openScenarioText } from '@leat/core';
import { ensembleOf } from '@leat/core/analysis';

const file = process.argv[2] ?? 'system.yaml';
const system = openScenarioText(readFileSync(file, 'utf8'), { file, days: 20 });
const { series, limits, ran, failed } = ensembleOf(system, {
  method: 'latin-hypercube',
  members: 50,
  seed: 1,
});

console.log(`${ran} members, ${failed.length} broke off`);
for (const { name, unit, median, band90 } of series.filter((each) => each.name.startsWith('tan@')))
  console.log(`${name}: ${median.at(-1)} (${band90[0].at(-1)} to ${band90[1].at(-1)}) ${unit}`);
for (const { quantity, place, whom, probability } of limits)
  if (probability > 0.5)
    console.log(`${quantity} at ${place}, for ${whom}: passed in ${100 * probability} %`);
