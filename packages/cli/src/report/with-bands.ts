import type { KeptEnsemble } from '../ensemble/read-ensemble.js';
import { FileError } from '../file-error.js';
import { day } from '../render/number.js';
import type { ToldRun } from './told-run.js';

const lengthOf = (times: readonly number[]): string => `${day(times[times.length - 1])} days`;

function otherSystem({ file, title, result }: KeptEnsemble, told: readonly ToldRun[]): string {
  const runs = told.map(
    ({ file: name, account }) => `${name} ("${account.title}", ${lengthOf(account.time)})`,
  );
  return (
    `${file}: an ensemble of another system: "${title}", ${lengthOf(result.times)}; got with ${runs.join(', ')}; ` +
    'expected one of the same file with the same --set, --tables, --days and --every'
  );
}

/**
 * Runs with the ensembles that were made of them: by the hash of the scenario, in whatever order they came.
 * Throws FileError with every ensemble that is of none of the runs, or of one that has bands already.
 */
export function withBands(told: readonly ToldRun[], kept: readonly KeptEnsemble[]): readonly ToldRun[] {
  const faults = kept.flatMap((ensemble, i) => {
    if (!told.some(({ manifest }) => manifest.scenario === ensemble.scenario))
      return [otherSystem(ensemble, told)];
    const before = kept.slice(0, i).find(({ scenario }) => scenario === ensemble.scenario);
    return before === undefined
      ? []
      : [`${ensemble.file}: of the same system as ${before.file}; give one of them`];
  });
  if (faults.length > 0) throw new FileError(faults.join('\n'));
  return told.map((run) => {
    const found = kept.find(({ scenario }) => scenario === run.manifest.scenario);
    return found === undefined ? run : { ...run, ensemble: found.result };
  });
}
