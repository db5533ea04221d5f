/** A published value that the model misses. */
export interface KnownMiss {
  readonly what: string;
  readonly published: string;
  readonly model: string;
  readonly reason: string;
}

/** A quantity of a whole published system that lies outside the predicted band. */
export interface MissInSystem {
  readonly what: string;
  readonly unit: string;
  readonly published: string;
  readonly median: string;
  readonly band: string;
}

const cellsOf = (line: string): string[] => line.replace(/^\| | \|$/g, '').split(' | ');

/** Lines of the tables of a part of the document, without heads and rules. */
const rowsOf = (part: string): string[][] =>
  part
    .split('\n')
    .filter(
      (line, i, lines) => line.startsWith('| ') && !/^\| -/.test(line) && !/^\| -/.test(lines[i + 1] ?? ''),
    )
    .map(cellsOf);

/**
 * The misses that stand together in `tests/published/VALIDATION.md`, with their reasons.
 * Throws RangeError where there are none: then the form of the document has changed.
 */
export function knownMisses(document: string): readonly KnownMiss[] {
  const part = document.split(/^## /m).find((each) => each.startsWith('Misses')) ?? '';
  const misses = rowsOf(part).map(([what, published, model, , reason]) => ({
    what,
    published,
    model,
    reason,
  }));
  if (misses.length === 0) throw new RangeError('no misses found in the document');
  return misses;
}

/** The quantities of whole systems that are missed, by the same document. Throws as `knownMisses` does. */
export function missedInSystems(document: string): readonly MissInSystem[] {
  const part = document.slice(document.indexOf('## Sources'));
  const misses = rowsOf(part)
    .filter((cells) => cells.at(-1) === '**miss**')
    .map(([what, unit, published, , median, band]) => ({ what, unit, published, median, band }));
  if (misses.length === 0) throw new RangeError('no misses of systems found in the document');
  return misses;
}
