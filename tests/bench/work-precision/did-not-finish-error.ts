/** A contestant that cannot go on at a tolerance: told in the page, and no fault of the bench. */
export class DidNotFinishError extends Error {
  override readonly name = 'DidNotFinishError';
}

/** Most processor time of one year by an explicit method, s: stiff water may hold it for hours. */
const MOST = 20;

/** A check that a year which begins now has not taken too long; it throws DidNotFinishError by the day it is called on. */
export function patience(): (day: number) => void {
  const since = process.cpuUsage();
  return (day) => {
    const { user, system } = process.cpuUsage(since);
    if (user + system > MOST * 1e6)
      throw new DidNotFinishError(
        `after ${String(MOST)} s of processor time it was at day ${day.toFixed(0)}`,
      );
  };
}

/** Most processor time of one year by SciPy, s: its right side is NumPy's, and a year of 190 states may take it minutes. */
export const SCIPY_MOST = 60;

/** Does some work of another process that is ended by SIGXCPU when its time is up; throws DidNotFinishError then. */
export function endedInTime<T>(work: () => T): T {
  try {
    return work();
  } catch (error) {
    if (!(error instanceof Error && 'signal' in error && error.signal === 'SIGXCPU')) throw error;
    throw new DidNotFinishError(`not at its end after ${String(SCIPY_MOST)} s of processor time`, {
      cause: error,
    });
  }
}
