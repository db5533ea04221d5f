import type { WaterLog } from '../log/water-log.js';
import { scenarioHash } from '../result/manifest.js';
import type { Scenario } from '../scenario/scenario.js';
import type { SavedFit } from './fit-file.js';
import { logHash } from './log-hash.js';

/** What a fit is used with: the system as its file has it, the log as it now stands, and its last date that counts. */
interface FitUse {
  readonly scenario: Scenario;
  readonly log: WaterLog;
  readonly until: string;
}

const readingsAfter = ({ readings }: WaterLog, from: string, to: string): number =>
  readings.filter(({ date }) => date > from && date <= to).length;

/**
 * Why a saved fit may not be of what it is used with: made of another system file, of a log that has since changed or
 * gone on, or of readings after the last date that counts. One line each; none where all is as it was.
 */
export function fitDoubts({ provenance }: SavedFit, { scenario, log, until }: FitUse): readonly string[] {
  const doubts: string[] = [];
  if (provenance.scenario !== scenarioHash(scenario))
    doubts.push(
      'warning: the system file is not as it was when the fit was made (or the fit was made with --set or --tables): fit again',
    );
  // A fit to the first part of a log once carried the hash of all of it.
  const known = [logHash(log, provenance.until), logHash(log, log.to)];
  if (!known.includes(provenance.log))
    doubts.push(
      `warning: the log up to ${provenance.until} is not as it was when the fit was made: fit again`,
    );
  const more = readingsAfter(log, provenance.until, until);
  if (more > 0)
    doubts.push(
      `warning: the fit was made of the log up to ${provenance.until}: it does not know the ${more} readings after that`,
    );
  const ahead = readingsAfter(log, until, provenance.until);
  if (ahead > 0)
    doubts.push(
      `warning: the fit knows ${ahead} readings after ${until}: this forecast is no test of it (see leat backtest)`,
    );
  return doubts;
}
