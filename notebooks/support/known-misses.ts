/** A published value that the model misses. */
export interface KnownMiss {
  readonly what: string;
  readonly published: string;
  readonly model: string;
  readonly source: string;
  readonly reason: string;
}

/**
 * The misses that stand first in `tests/published/VALIDATION.md`, as that document tells them.
 * Throws RangeError where it tells of none: then its form has changed.
 */
export function knownMisses(document: string): readonly KnownMiss[] {
  const section = document.split(/^## /m).find((part) => part.startsWith('Misses')) ?? '';
  const misses = section
    .split('\n')
    .filter((line) => line.startsWith('| ') && !/^\| (?:-|what|value)/.test(line))
    .map((line) => line.split(' | ').map((cell) => cell.replace(/^\| | \|$/g, '').trim()))
    .filter((cells) => cells.length >= 5)
    .map(([what, published, model, source, reason]) => ({ what, published, model, source, reason }));
  if (misses.length === 0) throw new RangeError('no misses found in the document');
  return misses;
}
