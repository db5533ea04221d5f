import { describe, expect, it } from 'vitest';
import { createParameters } from '../../../../packages/core/src/library/parameters.js';
import { names } from '../../../../packages/core/src/library/names.js';
import { properties, type OpenGroup } from '../../../../packages/core/src/library/properties.js';
import { tableRows } from '../../../../packages/core/src/library/table-rows.js';
import { readScenarioFully } from '../../../../packages/core/src/scenario/read-scenario.js';
import { auditOf } from '../../../../packages/core/src/analysis/design/audit.js';
import { limitsOf } from '../../../../packages/core/src/result/limits.js';
import { numberUses } from '../../../../packages/core/src/result/uses-of.js';
import { compileModel } from '../../../../packages/core/src/model/compile.js';
import { simulate } from '../../../../packages/core/src/run/stepping.js';
import { smallSystem } from '../../../product/faults/small-system.js';

const uses = numberUses();
const readers = (id: string): string[] => uses(id).map(({ name }) => name);

describe('what reads a number', () => {
  it('is asked of the processes', () => {
    expect(readers('aob.growth')).toEqual(['ammonia-oxidation', 'ammonia-oxidation-idle']);
    expect(readers('fish.murray-cod.energy-retention')).toContain('feeding');
    expect(readers('crop.basil.nitrogen-a')).toContain('crop-growing');
    expect(uses('aob.growth')[0]).toEqual({
      kind: 'process',
      name: 'ammonia-oxidation',
      title: 'growth of ammonia oxidisers',
    });
  });

  it('is found in readers of the file, chemistry, limits, audit and weather', () => {
    expect(readers('media.pumice.surface')).toEqual(['vessels in a file']);
    expect(readers('carbonate.k1.e')).toEqual(['acids and bases']);
    expect(readers('fish.barramundi.limit-nitrate')).toEqual(['limits for fish']);
    expect(readers('limit.areal-rate-warm-high.value')).toEqual(['audit of a design', 'handbook sizes']);
    expect(readers('weather.albedo')).toEqual(['radiation']);
    expect(readers('dose.potassium-hydroxide.alkalinity')).toEqual([
      ...['dosing-by-ph', 'dosing-by-alkalinity'],
      ...['advice', 'base plan', 'check of a scenario', 'control in a file', 'what a product brings'],
    ]);
  });

  it('tells a general number from that of a subject', () => {
    expect(readers('water.kw.a')).toEqual(['acids and bases']);
    expect(readers('water.rain.ph')).toEqual(['waters in a file']);
  });

  it('is nothing where a number is kept for reading alone', () => {
    expect(readers('fish.nile-tilapia.thermal-growth')).toEqual(['first guess of a design']);
    expect(uses('crop.basil.nitrogen-uptake')).toEqual([]);
  });

  it('holds everything that a run was seen to read', () => {
    const reading = readScenarioFully(smallSystem, { file: 'small.yaml', days: 2 });
    const parameters = createParameters();
    const run = simulate(compileModel(reading.scenario, parameters));
    auditOf(run.model);
    limitsOf(run);
    const read = [...reading.used, ...parameters.used()];
    expect(read.length).toBeGreaterThan(150);
    expect(read.filter((id) => uses(id).length === 0)).toEqual([]);
  });
});

/** What the model reads where a subject says it: a product that does not say it brings none. */
const optional: Partial<Record<OpenGroup, readonly string[]>> = {
  dose: ['nitrate', 'calcium', 'calcite'],
  // Else in proportion to the alkalinity.
  water: ['calcium'],
  // How fast fish grow in the first guess of a design; a run has their energy.
  fish: ['thermal-growth'],
  // A medium that does not say it keeps all of its surface.
  media: ['porosity'],
};

describe.each(Object.keys(properties) as OpenGroup[])('what a new %s must have', (group) => {
  const [subject] = names(group);
  const idOf = (property: string): string => `${group}.${subject}.${property}`;

  it('is what the model reads, and no more', () => {
    const { needed, further } = properties[group];
    expect(needed.filter((property) => uses(idOf(property)).length === 0)).toEqual([]);
    expect(further.filter((property) => uses(idOf(property)).length > 0)).toEqual(optional[group] ?? []);
    expect([...needed, ...further].filter((property) => !tableRows.has(idOf(property)))).toEqual([]);
  });
});
