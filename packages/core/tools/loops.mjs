/** Makes the modules of WebAssembly, src/solve/loops.generated.ts and src/model/rates.generated.ts (`npm run generate`), by tools/module. */
import { readFileSync, readdirSync } from 'node:fs';
import { compiled } from './module/compile.mjs';

const source = new URL('../src/', import.meta.url);
const file = (path) => ({ path, text: readFileSync(new URL(path, source), 'utf8') });

const digitsOf = (bytes) => Array.from(bytes, (byte) => byte.toString(16).padStart(2, '0')).join('');

const head = (from) =>
  `// Written by packages/core/tools/loops.mjs from ${from}; do not edit (npm run generate).\n\n`;

/** The text of the generated file of the loops of the integrator. */
export function loopsModule() {
  const { bytes, statics } = compiled([file('solve/loops.ts')]);
  return `${head('loops.ts')}/** The module of WebAssembly that does what the functions of loops.ts do: its bytes, two hexadecimal digits each. */
export const LOOPS =
  '${digitsOf(bytes)}';

/** Bytes of its memory that it keeps for itself. */
export const LOOP_STATICS = ${statics};
`;
}

/** What rates are made of. */
export const rateFiles = () => [
  ...['model/rate-loops.ts', 'solve/loops.ts', 'chemistry/acid-base.ts', 'base/elementary.ts'].map(file),
  ...readdirSync(new URL('processes/kernels', source)).map((name) => file(`processes/kernels/${name}`)),
];

/** The module of the rates: kernels that have a name, and the loops around them. */
export const rates = () =>
  compiled(rateFiles(), {
    from: ['model/rate-loops.ts', 'solve/loops.ts'],
    walk: { path: 'processes/kernels/kernel.ts', type: 'Kernel', members: ['rates', 'partials'] },
  });

/** The text of the generated file of the rates. */
export function ratesModule() {
  const { bytes, statics, names } = rates();
  return `${head('rate-loops.ts and processes/kernels')}/** The module of WebAssembly that does what the kernels and rate-loops.ts do: its bytes, two hexadecimal digits each. */
export const RATES =
  '${digitsOf(bytes)}';

/** Bytes of its memory that it keeps for itself. */
export const RATE_STATICS = ${statics};

/** Its kernels by name, in the order of its table. */
export const KERNELS: readonly string[] = [${names.map((name) => `'${name}'`).join(', ')}];
`;
}
