import { contentHash, type Outline, type Sampling, type TallyState } from '@leat/core';

/** An ensemble, whole or in part: what it is about and what was tallied so far. */
export interface EnsemblePart {
  readonly outline: Outline;
  /** Names of the series that say most. */
  readonly keys: readonly string[];
  readonly sampling: Sampling;
  readonly tally: TallyState;
}

/** What must be the same for two parts to be of one ensemble, 64 hexadecimal digits. */
export function ensembleId({ outline, sampling }: Pick<EnsemblePart, 'outline' | 'sampling'>): string {
  const texts = [outline.measures, outline.conditions].map((asked) => asked.map(({ text }) => text));
  return contentHash({ system: outline.hash, sampling, texts });
}

/** What differs between two ensembles, in words for a person; empty where nothing does. */
export function differencesOf(one: EnsemblePart, other: EnsemblePart): readonly string[] {
  const told = ({ outline, sampling }: EnsemblePart): Readonly<Record<string, string>> => ({
    system: `${outline.title} ${outline.hash.slice(0, 8)}`,
    '--members': String(sampling.members),
    '--seed': String(sampling.seed),
    '--sampling': sampling.method,
    '--correlate': JSON.stringify(sampling.correlations ?? []),
    '--of': outline.measures.map(({ text }) => text).join('; '),
    '--keep': outline.conditions.map(({ text }) => text).join('; '),
  });
  const [a, b] = [told(one), told(other)];
  return Object.keys(a)
    .filter((key) => a[key] !== b[key])
    .map((key) => `${key}: ${a[key]} / ${b[key]}`);
}
