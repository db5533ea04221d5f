import { fittedCorrelations, InputError, type RankCorrelation, type SavedFit } from '@leat/core';

/** Reads each `ID ID RANK`. Throws InputError with every one that is not. */
export function correlationsOf(texts: readonly string[]): readonly RankCorrelation[] {
  const read = texts.map((text) => {
    const [a = '', b = '', rank = '', ...rest] = text.trim().split(/\s+/);
    return { text, a, b, rank: Number(rank), whole: rank !== '' && rest.length === 0 };
  });
  const faults = read
    .filter(({ rank, whole }) => !whole || Number.isNaN(rank))
    .map(({ text }) => ({
      file: '--correlate',
      got: JSON.stringify(text),
      problem: 'not a rank correlation',
      expected: 'two ids and a number, such as "biofilm.cycled-aob biofilm.cycled-nob 0.6"',
    }));
  if (faults.length > 0) throw new InputError(faults);
  return read.map(({ a, b, rank }) => ({ a, b, rank }));
}

/** What is asked for, and beside it how fitted numbers vary together where nothing else is asked of the two. */
export function withFitted(
  asked: readonly RankCorrelation[],
  fit: SavedFit | undefined,
): readonly RankCorrelation[] {
  if (fit === undefined) return asked;
  const pair = ({ a, b }: RankCorrelation): string => [a, b].sort().join(' ');
  const pairs = new Set(asked.map(pair));
  return [...asked, ...fittedCorrelations(fit).filter((each) => !pairs.has(pair(each)))];
}
