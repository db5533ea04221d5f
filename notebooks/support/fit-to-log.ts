import { fit, type Fit, readScenarioFully, type WaterLog } from '@leat/core';

/**
 * Fits a system file to a log by the library's own search, from the middle of the ranges and from one further start.
 * @param free what may vary, such as `start.biofilm=0.1..5 %`
 * @throws InputError where the log holds nothing of this system
 */
export function fitToLog(text: string, log: WaterLog, free: readonly string[]): Fit {
  return fit({
    system: {
      read: (set, days) =>
        readScenarioFully(text, { file: 'lesson.yaml', set, ...(days !== undefined && { days }) }),
    },
    ...{ log, free, furtherStarts: 1 },
  });
}
