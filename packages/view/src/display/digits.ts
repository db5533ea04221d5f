/** A number in three significant digits, with a decimal point; its texts where it is none. */
export function threeDigits(value: number | undefined, none: string, infinite: string): string {
  if (value === undefined || Number.isNaN(value)) return none;
  if (!Number.isFinite(value)) return value > 0 ? infinite : `-${infinite}`;
  const size = Math.abs(value);
  if (size === 0) return '0';
  if (size >= 1000 || size < 1e-3)
    return size >= 1000 && size < 1e7 ? value.toFixed(0) : value.toExponential(1);
  return String(Number(value.toPrecision(3)));
}
