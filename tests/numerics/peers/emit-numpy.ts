import { waterRead } from '../../../packages/core/src/model/instance.js';
import { SPECIATION } from '../../../packages/core/src/chemistry/acid-base.js';
import { waterComponents } from '../../../packages/core/src/processes/components.js';
import type { Model } from '../../../packages/core/src/model/model.js';
import { groupTables } from './group-tables.js';
import { jacobianTerms, movesOf } from './jacobian-terms.js';
import { DERIVED, type Shape } from './shape.js';
import { openSourceCodes } from './source-codes.js';
import { openNumpyWriter } from './translate/to-numpy.js';

/**
 * Writes the rates and partials of all processes and the chemistry as NumPy functions over all places
 * at once, translated from their source. Newton's search for pH is written out in `programs/model.py`.
 */
export function emitNumpy(shape: Shape): string {
  const { source, chemistry, process } = openSourceCodes();
  const writer = openNumpyWriter(source);
  const roots = ['alkalinityAt', 'alkalinitySlope', 'speciate'].map(
    (name) => `${name} = ${writer.use(chemistry(name), name)}`,
  );
  const tables = shape.groups.map((group) => {
    const { rate, partials } = process(group);
    return `    '${group.id}': (${writer.use(rate, `rate ${group.id}`)}, ${writer.use(partials, `partials ${group.id}`)}),`;
  });
  return `# Written from the source of the processes; see emit-numpy.ts.
from numpy import abs, exp, expm1, log, log10, power, sqrt, where

LN10 = 2.302585092994046


def fill(entries):
    for m in range(len(entries)):
        entries[m] = 0.0


def restore(mask, now, before):
    for m in range(len(now)):
        now[m] = where(mask, before[m], now[m])


${writer.text()}
${roots.join('\n')}
processes = {
${tables.join('\n')}
}
`;
}

/** The tables of a compiled model, for `programs/model.py`. */
export function modelTables(model: Model, shape: Shape): unknown {
  const { carrying, groups } = shape;
  return {
    states: model.layout.states.length,
    water: waterComponents.length,
    dissolved: ['tan', 'alkalinity', 'carbon'].map((name) =>
      waterComponents.findIndex((each) => each === name),
    ),
    rates: model.rows.length,
    partials: model.dependence.column.length,
    vesselCount: shape.vesselCount,
    volume: shape.volume,
    slope: shape.slope,
    constants: shape.constants,
    derived: DERIVED,
    speciation: SPECIATION,
    molarNitrogen: model.parameters.value('molar.nitrogen'),
    streams: carrying.map(({ stream, from, row, source }) => ({
      flow: shape.flow + stream,
      from,
      row,
      source,
      slot: from < 0 ? -1 : model.dependence.start[row],
    })),
    groups: groups.map((group) => ({
      id: group.id,
      volumetric: group.volumetric,
      ...groupTables(model, group),
      row: group.instances.map(({ row }) => row),
      vessel: group.instances.map(waterRead),
      coefficients: group.coefficients,
      count: group.count,
    })),
    moves: movesOf(model),
    jacobian: jacobianTerms(model),
  };
}
