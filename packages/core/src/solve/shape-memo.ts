/** Shapes kept; the one used longest ago goes first. */
const KEPT = 16;

/**
 * Remembers what was made for a shape (arrays of places), so that many systems of one shape share an
 * ordering: runs of one model, members of an ensemble. It holds nothing that depends on values.
 */
export class ShapeMemo<T> {
  private entries: readonly { readonly shape: readonly Int32Array[]; readonly made: T }[] = [];

  get(shape: readonly Int32Array[], make: () => T): T {
    const found = this.entries.find((entry) => sameShape(entry.shape, shape));
    const entry = found ?? { shape: shape.map((part) => part.slice()), made: make() };
    this.entries = [entry, ...this.entries.filter((other) => other !== entry)].slice(0, KEPT);
    return entry.made;
  }
}

function sameShape(a: readonly Int32Array[], b: readonly Int32Array[]): boolean {
  return a.length === b.length && a.every((part, i) => sameNumbers(part, b[i]));
}

function sameNumbers(a: Int32Array, b: Int32Array): boolean {
  if (a.length !== b.length) return false;
  for (let i = 0; i < a.length; i++) if (a[i] !== b[i]) return false;
  return true;
}
