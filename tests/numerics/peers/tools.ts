import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';

/** Debian packages that bring the reference tools. */
const peerPackages = ['gcc', 'libc6-dev', 'libsundials-dev', 'libsuitesparse-dev', 'python3-scipy'];

/** Debian's Python, which has SciPy; another one may stand before it on the path. */
export const PYTHON = '/usr/bin/python3';

/** Why the reference tools cannot be used here; undefined when they can. */
export function missingTools(): string | undefined {
  const works = (command: string, ...args: readonly string[]): boolean =>
    spawnSync(command, args).status === 0;
  const lacking = [
    ...(works('gcc', '--version') ? [] : ['gcc']),
    ...(existsSync('/usr/include/cvode/cvode.h') ? [] : ['SUNDIALS']),
    ...(existsSync('/usr/include/suitesparse/klu.h') ? [] : ['KLU']),
    ...(works(PYTHON, '-c', 'import scipy.integrate') ? [] : [`SciPy for ${PYTHON}`]),
  ];
  return lacking.length === 0
    ? undefined
    : `not found: ${lacking.join(', ')}; on Debian: apt-get install ${peerPackages.join(' ')}`;
}
