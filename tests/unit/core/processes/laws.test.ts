import { describe, expect, it } from 'vitest';
import { createRandom } from '../../../../packages/core/src/base/random.js';
import {
  carbonDioxideInAir,
  carbonDioxideSaturation,
} from '../../../../packages/core/src/chemistry/acid-base.js';
import { calciteAttack } from '../../../../packages/core/src/chemistry/calcite.js';
import { oxygenSaturation } from '../../../../packages/core/src/chemistry/gases.js';
import type { Conditions } from '../../../../packages/core/src/processes/process.js';
import type { Values } from '../../../../packages/core/src/library/values.js';
import { processes } from '../../../../packages/core/src/processes/index.js';
import { laws, namesUsed, rateByLaw } from '../../../../packages/core/tools/laws.mjs';
import { drawnConditions, drawnPoint, drawnValues } from '../../../support/process-points.js';

/** What laws take from chemistry as a whole. */
const saturations: Readonly<Record<string, (values: Values, at: Conditions) => number>> = {
  O_sat: (values, at) => oxygenSaturation(values, at.temperature, at.pressure),
  C_sat: (values, at) => carbonDioxideSaturation(values, at.temperature, at.carbonDioxide, at.pressure),
  k_1: (values, at) => calciteAttack(values, at.temperature).hydrogen,
  k_2: (values, at) => calciteAttack(values, at.temperature).carbonDioxide,
  k_3: (values, at) => calciteAttack(values, at.temperature).water,
  H_c: (values, at) => carbonDioxideInAir(values, at.temperature),
};

describe('the laws of docs/model.md', () => {
  it('are of every process, and of no other', () => {
    expect(Object.keys(laws)).toEqual(processes.map(({ id }) => id));
  });

  it.each(processes)('$id: gives the rate of the code at any state', (process) => {
    const random = createRandom(7);
    for (const near of [1, 1e-3]) {
      for (let draw = 0; draw < 30; draw++) {
        const values = drawnValues(random);
        const conditions = drawnConditions(random);
        const v = drawnPoint(process, random, near);
        const places = process.reads.map((_, m) => m);
        const rate = process.rate(v, places, process.coefficients(values, conditions));
        const law = rateByLaw(process.id, (meant) => {
          if (meant.kind === 'number') return values.value(meant.id);
          if (meant.kind === 'variable') {
            const place = process.reads.findIndex((read) => read === meant.name);
            if (place < 0) throw new Error(`${process.id} does not read ${meant.name}`);
            return v[place];
          }
          if (meant.kind === 'given') return saturations[meant.name](values, conditions);
          const condition = conditions[meant.name as keyof typeof conditions];
          if (condition === undefined) throw new Error(`no condition ${meant.name}`);
          return condition;
        });
        expect(Math.abs(law - rate)).toBeLessThanOrEqual(1e-9 * Math.abs(rate));
      }
    }
  });

  it.each(processes)('$id: names the numbers that the process reads', (process) => {
    const random = createRandom(8);
    const values = drawnValues(random);
    const conditions = drawnConditions(random);
    const readBy = (work: (listening: Values) => void): ReadonlySet<string> => {
      const ids = new Set<string>();
      work({
        value: (id) => {
          ids.add(id);
          return values.value(id);
        },
      });
      return ids;
    };
    const law = laws[process.id];
    const used = new Set(namesUsed(law));
    const named = new Set(
      Object.entries(law.names).flatMap(([name, { id }]) => (used.has(name) ? [id] : [])),
    );
    const inChemistry = readBy((listening) => {
      for (const [name, saturation] of Object.entries(saturations))
        if (used.has(name)) saturation(listening, conditions);
    });
    const read = readBy((listening) => process.coefficients(listening, conditions));
    // Processes of one kernel share their coefficients: growth hands on the yield that idling uses.
    const shared = Object.values(law.names).map(({ id }) => id);
    expect([...read].filter((id) => !inChemistry.has(id) && !shared.includes(id))).toEqual([]);
    expect([...named].filter((id) => !read.has(id))).toEqual([]);
  });
});
