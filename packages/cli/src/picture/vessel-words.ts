import { shown } from '../render/number.js';
import type { DrawnVessel } from './drawn-system.js';
import { short } from '../report/words.js';
import type { SystemFrame } from './system-frame.js';

/** What stands in a vessel, and how high it must be for that. */
export interface VesselWords {
  readonly name: readonly string[];
  readonly size: string;
  readonly holds: readonly string[];
  readonly height: number;
}

/** Words broken into lines of at most so many letters, at spaces and behind hyphens. */
function broken(text: string, most: number): string[] {
  const lines: string[] = [];
  for (const piece of text.split(/(?<=[- ])/)) {
    const last = lines.at(-1);
    if (last !== undefined && `${last}${piece}`.trimEnd().length <= most)
      lines[lines.length - 1] = `${last}${piece}`;
    else lines.push(piece);
  }
  return lines.map((line) => short(line.trimEnd(), most));
}

/** Height of a line, px. */
export const lineHeight = ({ letters }: SystemFrame): number => letters * 1.28;

/** The words of a vessel; of one that is drawn elsewhere, only that water goes back to it. */
export function vesselWords(
  { name, kind, volume, holds }: DrawnVessel,
  frame: SystemFrame,
  again: boolean,
): VesselWords {
  const most = Math.floor((frame.vesselWidth - 10) / (frame.letters * 0.56));
  const amount = volume < 1 ? `${shown(volume * 1000)} L` : `${shown(volume)} m³`;
  const title = again ? broken(`back to ${name}`, most) : broken(name, most - 1);
  const size = again ? '' : frame.words ? short(`${kind}, ${amount}`, most) : amount;
  const rest = again || !frame.words ? [] : holds.flatMap((line) => broken(line, most));
  const lines = title.length + (size === '' ? 0 : 1) + rest.length;
  return { name: title, size, holds: rest, height: lines * lineHeight(frame) + 18 };
}
