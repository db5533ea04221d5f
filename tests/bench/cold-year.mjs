// The first year of the demo in a process of its own, and one that is warm: ms of processor time, on a line.
import { readFileSync } from 'node:fs';
import { useModule } from '../../packages/core/dist/module.js';
import { compileModel, createParameters, readScenario, simulate } from '../../packages/core/dist/index.js';

useModule();
const file = new URL('../../packages/cli/scenarios/glasshouse.yaml', import.meta.url);
const scenario = readScenario(readFileSync(file, 'utf8'), { file: 'glasshouse.yaml', days: 365 });
const model = compileModel(scenario, createParameters());

function year() {
  const from = process.cpuUsage();
  simulate(model);
  const { user, system } = process.cpuUsage(from);
  return (user + system) / 1000;
}

const cold = year();
for (let i = 0; i < 20; i++) year();
const warm = Array.from({ length: 5 }, year).sort((a, b) => a - b);
console.log(`${cold} ${warm[2]}`);
