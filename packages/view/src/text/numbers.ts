/** A number for reading: three significant digits, a dash where there is none. */
export function shown(value: number | undefined): string {
  if (value === undefined || Number.isNaN(value)) return '-';
  if (!Number.isFinite(value)) return value > 0 ? 'inf' : '-inf';
  const size = Math.abs(value);
  if (size === 0) return '0';
  if (size >= 1000 || size < 1e-3)
    return size >= 1000 && size < 1e7 ? value.toFixed(0) : value.toExponential(1);
  return String(Number(value.toPrecision(3)));
}

/** A day of the run: whole where it is, else one decimal. */
export function day(time: number | undefined): string {
  if (time === undefined) return '-';
  return time.toFixed(1).replace(/\.0$/, '');
}

/** A long or short time in the words people use: minutes, hours, days, weeks, months, years. */
export function longSpan(days: number): string {
  const size = Math.abs(days);
  if (size < 1 / 24) return `${Math.max(1, Math.round(size * 1440))} min`;
  if (size < 2) return `${String(Number((size * 24).toPrecision(2)))} h`;
  if (size < 21) return `${String(Number(size.toPrecision(2)))} days`;
  if (size < 90) return `${Math.round(size / 7)} weeks`;
  if (size < 730) return `${Math.round(size / 30.44)} months`;
  return `${String(Number((size / 365.25).toPrecision(2)))} years`;
}

/** A share in percent, one decimal. */
export function percent(share: number): string {
  return `${(share * 100).toFixed(1)} %`;
}

/** A value with its unit as it is written in a scenario file; a plain number where the unit is empty. */
export function valueText({ unit }: { readonly unit: string }, value: number): string {
  return unit === '' ? String(value) : `${value} ${unit}`;
}

/** A volume in m3 for reading: in litres below one cubic metre. */
export function volumeText(volume: number): string {
  return volume < 1 ? `${shown(volume * 1000)} L` : `${shown(volume)} m³`;
}

/** The power of ten of the first digit of a number that is not 0: 3 of 1,234, -2 of 0.05. */
export function decadeOf(value: number): number {
  return Number(value.toExponential().split('e')[1]);
}
