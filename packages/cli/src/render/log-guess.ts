import type { MapGuess } from '@leat/core';
import { columns } from './columns.js';

/** A guessed map for a person to look over: each column in words, then the text of the map file. */
export function guessLines(guess: MapGuess, file: string, written: string | undefined): readonly string[] {
  const table = columns(
    [
      ['column', 'looks like', 'look at this'],
      ...guess.columns.map(({ column, guess: text, doubt }) => [column, text, doubt]),
    ],
    ['left', 'left', 'left'],
  );
  const next =
    written === undefined
      ? 'To use it: keep the lines below in a file (or ask for --write-map FILE), mend them, and read the log by'
      : `Written to ${written}: mend it, and read the log by`;
  return [
    `${file}: a guess at its columns; nothing was read yet`,
    '',
    ...table,
    '',
    `${next} leat log ${file} --map FILE`,
    '',
    guess.text.trimEnd(),
  ];
}
