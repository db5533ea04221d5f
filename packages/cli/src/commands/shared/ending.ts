import { relativeResidual, type Budget, type Run } from '@leat/core';
import { exit, type ExitCode } from '../../terminal/exit.js';

/** Largest residual, as a share of throughput, of a balance that holds. */
const tight = 1e-9;

/** What to say of how a run ended, and the code to leave with. */
export interface Ending {
  readonly code: ExitCode;
  /** Empty when all is well. */
  readonly text: string;
}

/**
 * Judges a run: broken off (with the usual reasons and the worst component), or its worst balance not
 * closed (naming quantity and vessel), or done.
 */
export function endingOf(run: Pick<Run, 'outcome'>, worst: Budget): Ending {
  const { outcome } = run;
  if (outcome.kind !== 'done') {
    const where = outcome.worst === undefined ? '' : ` at ${outcome.worst}`;
    const advice = outcome.advice === undefined ? '' : `: ${outcome.advice}`;
    return {
      code: exit.notFinished,
      text: `not finished: ${outcome.kind} on day ${outcome.time}${where}${advice}`,
    };
  }
  const share = relativeResidual(worst);
  if (share <= tight) return { code: exit.done, text: '' };
  return {
    code: exit.balanceBroken,
    text:
      `balance broken: ${worst.quantity} of ${worst.place}: residual ${worst.residual.toExponential(3)} is ` +
      `${share.toExponential(1)} of its throughput (at most ${tight})`,
  };
}
