import { fileURLToPath } from 'node:url';
import { openSource, type Code, type Source } from './translate/code.js';
import { processCodes, type ProcessCode } from './translate/process-code.js';
import type { Group } from './shape.js';

/** The source of all that a rate computes. */
export interface SourceCodes {
  readonly source: Source;
  readonly chemistry: (name: string) => Code;
  readonly process: (group: Group) => ProcessCode;
}

/** Opens the source of the processes and of the chemistry. */
export function openSourceCodes(): SourceCodes {
  const folder = fileURLToPath(new URL('../../../packages/core/src', import.meta.url));
  const source = openSource(folder, ['processes/index.ts', 'chemistry/acid-base.ts']);
  const codes = processCodes(source);
  return {
    source,
    chemistry: (name) => source.function('chemistry/acid-base.ts', name),
    process: ({ id }) => {
      const code = codes.get(id);
      if (code === undefined) throw new RangeError(`no source of the process ${id}`);
      return code;
    },
  };
}
