// The manual page, from the commands of the build. `npm run generate` writes it.
import { manual } from '../dist/help/manual.js';
import { program } from '../dist/program.js';

const silent = { result: () => undefined, note: () => undefined };

/** The text of man/leat.1. */
export const manualPage = () => manual(program(silent, () => undefined));
