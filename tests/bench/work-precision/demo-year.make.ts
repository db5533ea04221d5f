import { writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { format, resolveConfig } from 'prettier';
import { expect, test } from 'vitest';
import { createParameters } from '../../../packages/core/src/library/parameters.js';
import { compileModel } from '../../../packages/core/src/model/compile.js';
import { useModule } from '../../../packages/core/src/module.js';
import { readScenario } from '../../../packages/core/src/scenario/read-scenario.js';
import { recordYear } from '../../numerics/peers/record-year.js';
import { missingTools } from '../../numerics/peers/tools.js';
import { openWorkshop } from '../../numerics/peers/workshop.js';
import { shippedText } from '../../support/shipped-scenario.js';
import { DidNotFinishError } from './did-not-finish-error.js';
import type { Contestant, Measurement } from './contestant.js';
import { diagram } from './diagram.js';
import { ourContestants } from './our-contestants.js';
import { peerContestants } from './peer-contestants.js';
import { pointOf, type Point } from './point.js';
import { againstTranslation, pointTable, ratios, report } from './report.js';

const ROUNDS = 3;
// `PEERS=quick` runs Leat, its method in C and CVODE with KLU alone, at the tolerances that the bars want and in the way that has
// been CVODE's best at their errors, and writes no file.
const quick = process.env['PEERS'] === 'quick';
/** Another round is begun only within so many ms of the start of the process: on a busy machine one has to do. */
const LATEST = quick ? 100_000 : 300_000;
const quickTurns: Readonly<Record<string, readonly number[]>> = {
  Leat: [1e-5, 1e-6],
  'Leat, integration alone': [1e-5, 1e-6],
  'Leat in C': [1e-5, 1e-6],
  'CVODE KLU': [1e-6, 1e-7, 1e-8],
};
const here = (name: string): string => fileURLToPath(new URL(name, import.meta.url));

test('work and precision of the demo year', async () => {
  expect(missingTools()).toBeUndefined();
  useModule();
  const model = compileModel(
    readScenario(shippedText('glasshouse'), { file: 'glasshouse.yaml', days: 365 }),
    createParameters(),
  );
  const states = model.layout.states.length;
  const finest = quick ? 1e-10 : 1e-12;
  const recording = recordYear(model, finest);
  const reference = Float64Array.from(
    recording.segments.filter(({ to }) => Number.isInteger(to)).flatMap(({ end }) => [...end]),
  );
  const workshop = openWorkshop(recording);
  try {
    const contestants = [...ourContestants(recording), ...peerContestants(workshop)];
    // By tolerance, so that those who are compared at one run one after another.
    const turns = contestants
      .flatMap((contestant) => contestant.tolerances.map((tolerance) => ({ contestant, tolerance })))
      .filter(({ contestant: { name, forcing }, tolerance }) => {
        if (!quick) return true;
        return (quickTurns[name] ?? []).includes(tolerance) && ['as it is run', 'restart'].includes(forcing);
      })
      .sort((a, b) => b.tolerance - a.tolerance);
    const measured = new Map<string, { contestant: Contestant; measurements: Measurement[] }>();
    const stopped: string[] = [];
    for (let round = 0; round < ROUNDS && (round === 0 || performance.now() < LATEST); round++) {
      for (const { contestant, tolerance } of turns) {
        if (contestant.slow && round > 0) continue;
        const key = [contestant.name, contestant.forcing, tolerance].join(', ');
        console.log(`${(performance.now() / 1000).toFixed(0)} s: ${key}`);
        const entry = measured.get(key) ?? { contestant, measurements: [] };
        try {
          entry.measurements.push(contestant.measure(tolerance));
        } catch (error) {
          if (!(error instanceof DidNotFinishError)) throw error;
          stopped.push(`- ${contestant.name} at ${tolerance.toExponential()}: ${error.message}.`);
          continue;
        }
        measured.set(key, entry);
      }
    }
    const points = [...measured.values()].map(({ contestant, measurements }): Point =>
      pointOf(contestant, measurements, reference, states),
    );
    const again = workshop.sundials({
      method: 'cvode-klu',
      forcing: 'restart',
      tolerance: finest,
      repeats: 1,
    });
    const [contestant] = contestants;
    const second: Measurement = { ...again, tolerance: finest };
    const apart = pointOf(contestant, [second], reference, states).error;
    expect(apart).toBeLessThan(1e-8);
    console.log([ratios(points), againstTranslation(points), pointTable(points)].join('\n\n'));
    // odex rings at loose tolerances; whoever else is far off was not given the same year.
    expect(points.filter(({ name, error }) => name !== 'odex' && !(error < 0.1))).toEqual([]);
    if (quick) return;
    const jumps = recording.segments.filter(({ jump }) => jump !== undefined).length;
    const size = { states, segments: recording.segments.length, jumps, apart };
    const page = here('../WORK-PRECISION.md');
    const style = await resolveConfig(page);
    const ended = stopped.length === 0 ? [] : ['', 'Did not finish:', '', ...stopped];
    const text = [report(contestants, points, size), ...ended].join('\n');
    writeFileSync(page, await format(text, { ...style, parser: 'markdown' }));
    writeFileSync(here('../work-precision.svg'), diagram(points));
  } finally {
    workshop.close();
  }
});
