import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { expect } from 'vitest';

const file = new URL('../kept.json', import.meta.url);

/** A ratio may be worse than the kept one by this factor: caches, cores and what else runs on them differ. */
const SLACK = 1.5;

type Mode = 'print' | 'check' | 'keep';

/** What `npm run bench` was asked: to print, to check against kept figures, or to keep them. */
function mode(): Mode {
  const asked = process.env['LEAT_BENCH'];
  return asked === 'check' || asked === 'keep' ? asked : 'print';
}

/** Whether kept ratios are held or kept anew: what has none, or is slow, is then not run. */
export const checking = mode() !== 'print';

const against = (value: number, bar: number): string => `bar ${bar}: ${value <= bar ? 'met' : 'not met'}`;

/** Prints a figure that hangs on the machine, or a part of Leat against another, beside what is asked of it at most; it is never kept. */
export function figure(name: string, value: number, unit = '', bar?: number): void {
  const shown = `${Number(value.toPrecision(3))}${unit && ` ${unit}`}`;
  console.log(`  ${name}: ${shown}${bar === undefined ? '' : ` (${against(value, bar)})`}`);
}

function read(): Readonly<Record<string, number>> {
  return existsSync(file) ? (JSON.parse(readFileSync(file, 'utf8')) as Record<string, number>) : {};
}

/**
 * Prints a ratio of like to like found in one run and, as asked, holds it against the kept one or keeps it: the same work on
 * other systems, or whole processes, both sides by turns, so that the machine goes out of it. Less is better.
 * @param bar what is asked of it at most, where something is
 */
export function ratio(name: string, value: number, bar?: number): void {
  const kept = read()[name];
  const beside = [
    ...(kept === undefined ? [] : [`kept ${kept}`]),
    ...(bar === undefined ? [] : [against(value, bar)]),
  ];
  const shown = Number(value.toPrecision(3));
  console.log(`  ${name}: ${shown}${beside.length > 0 ? ` (${beside.join('; ')})` : ''}`);
  if (mode() === 'keep') {
    const all = Object.entries({ ...read(), [name]: shown }).sort(([a], [b]) => (a < b ? -1 : 1));
    writeFileSync(file, `${JSON.stringify(Object.fromEntries(all), null, 2)}\n`);
  }
  if (mode() !== 'check') return;
  expect(kept, `no kept figure of ${name}: run \`npm run bench -- --keep\``).toBeDefined();
  expect(value, name).toBeLessThanOrEqual(kept * SLACK);
}
