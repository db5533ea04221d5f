/** Makes the module of the loops of the solver, src/solve/loops.generated.ts (`npm run generate`), by tools/module. */
import { readFileSync } from 'node:fs';
import { compiled } from './module/compile.mjs';

const source = new URL('../src/solve/loops.ts', import.meta.url);

/** The bytes of the module. */
const loopsBytes = () =>
  compiled([{ path: 'packages/core/src/solve/loops.ts', text: readFileSync(source, 'utf8') }]);

/** The text of the generated file. */
export function loopsModule() {
  const digits = Array.from(loopsBytes(), (byte) => byte.toString(16).padStart(2, '0')).join('');
  return `// Written by packages/core/tools/loops.mjs from loops.ts; do not edit (npm run generate).

/** The module of WebAssembly that does what the functions of loops.ts do: its bytes, two hexadecimal digits each. */
export const LOOPS =
  '${digits}';
`;
}
