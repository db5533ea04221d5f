import { waterRead } from '../../../packages/core/src/model/instance.js';
import { waterComponents } from '../../../packages/core/src/processes/components.js';
import type { Model } from '../../../packages/core/src/model/model.js';
import { groupTables } from './group-tables.js';
import { jacobianTerms, movesOf } from './jacobian-terms.js';
import { CONSTANTS, DERIVED, type Group, type Shape } from './shape.js';
import { SPECIATION } from '../../../packages/core/src/chemistry/acid-base.js';
import { openSourceCodes } from './source-codes.js';
import { openCWriter } from './translate/to-c.js';

const WATER = waterComponents.length;

const ints = (name: string, values: readonly number[]): string =>
  `static const int ${name}[] = {${values.map(String).join(', ')}};`;
const doubles = (name: string, values: readonly number[]): string =>
  `static const double ${name}[] = {${values.map(String).join(', ')}};`;

/**
 * Writes the rates of a compiled model, its derivative Sᵀ r and its Jacobian with its places, as C. The
 * arithmetic is translated from the source of the processes and of the chemistry, statement by
 * statement; tables come from the model.
 */
export function emitC(model: Model, shape: Shape): string {
  const { source, chemistry, process } = openSourceCodes();
  const writer = openCWriter(source);
  const { layout, dependence } = model;
  const states = layout.states.length;
  const hydrogenIon = writer.use(
    chemistry('hydrogenIon'),
    ['double', 'double', 'double', 'const AcidBase *', 'double'],
    'hydrogenIon',
  );
  const speciate = writer.use(
    chemistry('speciate'),
    ['double', 'double', 'double', 'const AcidBase *', 'double', 'double *', 'int'],
    'speciate',
  );
  const named = shape.groups.map((group) => {
    const code = process(group);
    return {
      group,
      rate: writer.use(code.rate, ['const double *', 'const int *', 'const double *'], `rate ${group.id}`),
      partials: writer.use(
        code.partials,
        ['const double *', 'const int *', 'const double *', 'double *'],
        `partials ${group.id}`,
      ),
    };
  });
  const transports = shape.carrying.map(({ stream, from, row, source: at }) => ({
    flow: shape.flow + stream,
    from,
    row,
    at,
    slot: from < 0 ? -1 : dependence.start[row],
  }));
  const terms = jacobianTerms(model);
  const moves = movesOf(model);

  return `/* Written from the compiled model; see emit-c.ts. */
#include <math.h>
#include <string.h>
enum { STATES = ${states}, RATES = ${model.rows.length}, VESSELS = ${shape.vesselCount}, WATER = ${WATER} };
enum { PARTIALS = ${dependence.column.length}, PLACES = ${terms.row.length}, REGIME = ${shape.size} };
enum { TAN = ${waterComponents.indexOf('tan')}, ALKALINITY = ${waterComponents.indexOf('alkalinity')}, CARBON = ${waterComponents.indexOf('carbon')} };
static double pow_10(double y) { return pow(10.0, y); }
typedef struct { double k1, k2, ammonium, water, proton, calcite; } AcidBase;

${writer.text()}

${ints('move_start', moves.start)}
${ints('move_rate', moves.rate)}
${doubles('move_by', moves.coefficient)}
${ints('column_start', terms.columnStart)}
${ints('place_row', terms.row)}
${ints('term_start', terms.termStart)}
${ints('term_partial', terms.partial)}
${doubles('term_by', terms.coefficient)}
${ints(
  'stream_flow',
  transports.map(({ flow }) => flow),
)}
${ints(
  'stream_from',
  transports.map(({ from }) => from),
)}
${ints(
  'stream_row',
  transports.map(({ row }) => row),
)}
${ints(
  'stream_source',
  transports.map(({ at }) => at),
)}
${ints(
  'stream_slot',
  transports.map(({ slot }) => slot),
)}
${named.map(({ group }) => tablesOf(model, group)).join('\n')}

static double volume[VESSELS], per_volume[VESSELS], v[STATES + ${DERIVED} * VESSELS], hydrogen[VESSELS], chemistry[${SPECIATION} * VESSELS];
static double partial[16], dr[PARTIALS], r[RATES];

/* The regime is what holds during a segment; since is the time since its start. */
static inline void look(double since, const double *y, const double *regime) {
  for (int s = VESSELS * WATER; s < STATES; s++) v[s] = y[s];
  for (int vessel = 0; vessel < VESSELS; vessel++) {
    volume[vessel] = regime[${shape.volume} + vessel] + regime[${shape.slope} + vessel] * since;
    per_volume[vessel] = 1 / volume[vessel];
    const int first = vessel * WATER;
    for (int s = first; s < first + WATER; s++) v[s] = y[s] * per_volume[vessel];
    const AcidBase *k = (const AcidBase *)(regime + ${shape.constants} + ${CONSTANTS} * vessel);
    const double tan = v[first + TAN], carbon = v[first + CARBON];
    const double h = ${hydrogenIon}(v[first + ALKALINITY], carbon, tan / MOLAR, k, hydrogen[vessel]);
    if (h > 0) hydrogen[vessel] = h;
    ${speciate}(tan, carbon, h, k, MOLAR, chemistry, ${SPECIATION} * vessel);
    for (int m = 0; m < ${DERIVED}; m++) v[STATES + ${DERIVED} * vessel + m] = chemistry[${SPECIATION} * vessel + m];
  }
}

static inline void rates_seen(const double *regime, double *r) {
  for (int i = 0; i < ${transports.length}; i++) {
    const double flow = regime[stream_flow[i]];
    const double *from = stream_from[i] < 0 ? regime + stream_source[i] : v + stream_from[i] * WATER;
    for (int c = 0; c < WATER; c++) r[stream_row[i] + c] = flow * from[c];
  }
${named.map(({ group, rate }) => `  for (int j = 0; j < ${group.instances.length}; j++) r[${ident(group)}_row[j]] = ${rate}(v, ${ident(group)}_at[j], regime + ${ident(group)}_k[j])${group.volumetric ? ` * volume[${ident(group)}_vessel[j]]` : ''};`).join('\n')}
}

void model_rates(double since, const double *y, const double *regime, double *r) {
  look(since, y, regime);
  rates_seen(regime, r);
}

void model_derivative(double since, const double *y, const double *regime, double *slope) {
  model_rates(since, y, regime, r);
  for (int i = 0; i < STATES; i++) {
    double sum = 0;
    for (int e = move_start[i]; e < move_start[i + 1]; e++) sum += move_by[e] * r[move_rate[e]];
    slope[i] = sum;
  }
}

/* Adds the partials of one rate to its slots. kind: 0 a concentration, 1 an amount, 2.. chemistry. */
static inline void place(int reads, const int *kind, const int *slot, int vessel, double scale, double amount) {
  for (int m = 0; m < reads; m++) {
    if (kind[m] == 0) dr[slot[3 * m]] += partial[m] * scale;
    else if (kind[m] == 1) dr[slot[3 * m]] += partial[m] * amount;
    else {
      const double *by = chemistry + ${SPECIATION} * vessel + ${DERIVED} + 3 * (kind[m] - 2);
      for (int c = 0; c < 3; c++) dr[slot[3 * m + c]] += partial[m] * by[c] * scale;
    }
  }
}

static inline void partials_seen(const double *regime) {
  memset(dr, 0, sizeof dr);
  for (int i = 0; i < ${transports.length}; i++) {
    if (stream_from[i] < 0) continue;
    const double per_day = regime[stream_flow[i]] * per_volume[stream_from[i]];
    for (int c = 0; c < WATER; c++) dr[stream_slot[i] + c] = per_day;
  }
${named.map(({ group, partials }) => partialsLoop(group, partials)).join('\n')}
}

void model_jacobian(double since, const double *y, const double *regime, double *values) {
  look(since, y, regime);
  partials_seen(regime);
  for (int e = 0; e < PLACES; e++) {
    double sum = 0;
    for (int q = term_start[e]; q < term_start[e + 1]; q++) sum += term_by[q] * dr[term_partial[q]];
    values[e] = sum;
  }
}

/* Forgets the last pH of each vessel, from which the next is sought. */
void model_forget(void) {
  for (int vessel = 0; vessel < VESSELS; vessel++) hydrogen[vessel] = 1e-4;
}
`.replaceAll('MOLAR', String(model.parameters.value('molar.nitrogen')));
}

function ident({ id }: Group): string {
  return id.replaceAll('-', '_');
}

function partialsLoop(group: Group, partials: string): string {
  const name = ident(group);
  const vessel = `${name}_vessel[j]`;
  const scale = group.volumetric ? '1' : `per_volume[${vessel}]`;
  const amount = group.volumetric ? `volume[${vessel}]` : '1';
  return `  for (int j = 0; j < ${group.instances.length}; j++) {
    ${partials}(v, ${name}_at[j], regime + ${name}_k[j], partial);
    place(${group.reads}, ${name}_kind, ${name}_slot[j], ${vessel}, ${scale}, ${amount});
  }`;
}

function tablesOf(model: Model, group: Group): string {
  const name = ident(group);
  const { kind, at, slot } = groupTables(model, group);
  const table = (values: readonly (readonly number[])[]): string =>
    `{${values.map((row) => `{${row.join(', ')}}`).join(', ')}}`;
  return [
    `static const int ${name}_at[][${group.reads}] = ${table(at)};`,
    `static const int ${name}_slot[][${3 * group.reads}] = ${table(slot)};`,
    ints(`${name}_kind`, kind),
    ints(
      `${name}_row`,
      group.instances.map(({ row }) => row),
    ),
    ints(`${name}_vessel`, group.instances.map(waterRead)),
    ints(`${name}_k`, group.coefficients),
  ].join('\n');
}
