// Makes man/leat.1 from the commands of the build. `node manual.mjs` after `npm run build`.
import { writeFileSync } from 'node:fs';
import { manual } from '../dist/help/manual.js';
import { program } from '../dist/program.js';

const silent = { result: () => undefined, note: () => undefined };
writeFileSync(new URL('../man/leat.1', import.meta.url), manual(program(silent, () => undefined)));
