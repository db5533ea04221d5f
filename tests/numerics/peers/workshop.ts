import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { emitC } from './emit-c.js';
import { emitMethod } from './emit-method.js';
import { emitNumpy, modelTables } from './emit-numpy.js';
import { packYear } from './pack-year.js';
import type { Recording } from './record-year.js';
import { shapeOf } from './shape.js';
import { PYTHON } from './tools.js';

const PROGRAMS = fileURLToPath(new URL('programs/', import.meta.url));

/** What gcc is given, besides where SUNDIALS and KLU are. */
export const compilerFlags = ['-O3', '-march=native'];

const LIBRARIES = [
  ...[
    'arkode',
    'cvode',
    'sunlinsolklu',
    'sunlinsoldense',
    'sunmatrixsparse',
    'sunmatrixdense',
    'nvecserial',
  ].map((name) => `-lsundials_${name}`),
  '-lm',
];

/** How a peer ran. */
export interface PeerRun {
  /** Processor time of each repeat. */
  readonly milliseconds: readonly number[];
  /** Counts of the last run, by name. */
  readonly work: Readonly<Record<string, number>>;
  /** State at the end of each day, day after day. */
  readonly days: Float64Array;
  /** What each rate amounts to since the start, where the peer keeps it. */
  readonly extents: Float64Array;
}

/** What a peer is to do. */
interface PeerTask {
  readonly method: string;
  /** `restart`, `stop` or `across`: see the programs. */
  readonly forcing: string;
  readonly tolerance: number;
  readonly repeats: number;
  /** Right side for SciPy. */
  readonly right?: 'numpy' | 'c';
  /** Most processor time of SciPy, s; default: any. Past it `scipy` throws an error whose signal is SIGXCPU. */
  readonly most?: number;
}

/** A folder with a recorded year, the model in C and NumPy, and the programs that integrate it. */
export interface Workshop {
  /** CVODE or ARKODE; what it says of a defeat that it recovers from is not shown but counted. */
  sundials(task: PeerTask): PeerRun;
  /** Leat's own method, translated. */
  rodas(task: Pick<PeerTask, 'tolerance' | 'repeats'>): PeerRun;
  scipy(task: PeerTask): PeerRun;
  /**
   * Slopes, then entries of the Jacobian, at points (segment, time since its start, state), computed by
   * the emitted C or NumPy.
   */
  evaluate(right: 'numpy' | 'c', points: Float64Array): Float64Array;
  close(): void;
}

/**
 * Writes and builds everything in a new temporary folder.
 * @throws Error with gcc's words when the C does not build.
 */
export function openWorkshop(recording: Recording): Workshop {
  const folder = mkdtempSync(join(tmpdir(), 'leat-peers-'));
  const at = (name: string): string => join(folder, name);
  const shape = shapeOf(recording.model, recording.segments[0].regime);
  writeFileSync(at('model.c'), emitC(recording.model, shape));
  writeFileSync(at('method.c'), emitMethod(recording.model, shape));
  writeFileSync(at('processes.py'), emitNumpy(shape));
  writeFileSync(at('model.json'), JSON.stringify(modelTables(recording.model, shape)));
  writeFileSync(at('year.bin'), packYear(recording, shape));
  const gcc = (...args: readonly string[]): void => {
    execFileSync('gcc', [...compilerFlags, '-I', folder, '-I', '/usr/include/suitesparse', ...args]);
  };
  gcc('-shared', '-fPIC', at('model.c'), '-o', at('libmodel.so'), '-lm');
  gcc(join(PROGRAMS, 'sundials.c'), '-o', at('sundials'), ...LIBRARIES);
  gcc(join(PROGRAMS, 'rodas.c'), '-o', at('rodas'), '-lm');

  const python = (program: string, ...args: readonly string[]): string =>
    execFileSync(PYTHON, ['-B', join(PROGRAMS, program), ...args], {
      encoding: 'utf8',
      env: { ...process.env, OPENBLAS_NUM_THREADS: '1' },
    });
  const result = (text: string): PeerRun => {
    const { milliseconds, ...work } = JSON.parse(text) as { milliseconds: number[] } & Record<string, number>;
    const out = readDoubles(at('out.bin'));
    const days = Math.round(recording.segments[recording.segments.length - 1].to);
    const states = days * recording.model.layout.states.length;
    return { milliseconds, work, days: out.slice(0, states), extents: out.slice(states) };
  };
  const run = (program: string, ...args: readonly string[]): string =>
    execFileSync(at(program), [at('year.bin'), at('out.bin'), ...args], { encoding: 'utf8', stdio: 'pipe' });
  return {
    sundials: ({ method, forcing, tolerance, repeats }) =>
      result(run('sundials', method, forcing, String(tolerance), String(repeats))),
    rodas: ({ tolerance, repeats }) => result(run('rodas', String(tolerance), String(repeats))),
    scipy: ({ method, forcing, tolerance, repeats, right = 'numpy', most }) =>
      result(
        python(
          'scipy_year.py',
          folder,
          at('out.bin'),
          method,
          right,
          forcing,
          String(tolerance),
          String(repeats),
          ...(most === undefined ? [] : [String(most)]),
        ),
      ),
    evaluate(right, points) {
      writeFileSync(at('points.bin'), points);
      python('evaluate.py', folder, right, at('points.bin'), at('out.bin'));
      return readDoubles(at('out.bin'));
    },
    close() {
      rmSync(folder, { recursive: true });
    },
  };
}

function readDoubles(path: string): Float64Array {
  const bytes = readFileSync(path);
  return new Float64Array(bytes.buffer.slice(bytes.byteOffset, bytes.byteOffset + bytes.byteLength));
}
