import type { Report } from '../file/report.js';
import { most } from './ranges.js';

interface Outputs {
  readonly days: number;
  readonly every: number;
}

/** Bounds the outputs of a run. */
export function checkOutputs(report: Report, { days, every }: Outputs): void {
  if (days / every > most.outputs)
    report.fault(['every'], 'too many outputs', {
      got: String(Math.ceil(days / every)),
      expected: `at most ${most.outputs} in a run`,
    });
}

/** Bounds what a run keeps before it is begun: outputs times vessels. */
export function checkKept(report: Report, { days, every }: Outputs, vessels: number): void {
  const outputs = Math.ceil(days / every);
  if (outputs > most.outputs || outputs * vessels <= most.values) return;
  report.fault(['every'], 'too many outputs for so many vessels', {
    got: `${outputs} outputs of ${vessels} vessels`,
    expected: `at most ${most.values} outputs times vessels`,
  });
}
