/** Narrowest and widest lines, and those where no screen says how wide it is: letters. */
const NARROW = 80;
const WIDE = 120;
const UNKNOWN = 100;

/**
 * Letters of a line: as many as the terminal has, from 80 to 120; 100 where the output is no terminal, unless the
 * environment says otherwise (LEAT_WIDTH).
 */
export function screenWidth(
  { isTTY, columns }: { readonly isTTY?: boolean; readonly columns?: number } = process.stdout,
  environment: Readonly<Record<string, string | undefined>> = process.env,
): number {
  const asked = Number(environment['LEAT_WIDTH']);
  const there = asked > 0 ? asked : isTTY === true ? (columns ?? UNKNOWN) : UNKNOWN;
  return Math.min(WIDE, Math.max(NARROW, there));
}
