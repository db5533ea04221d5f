import type { FileChange, Piece, Plain } from '@leat/core';
import { type Display, plainDisplay } from '../display/display.js';
import { listed, plain, short } from './names.js';

/** A value of a file in words: keys and values one after another. */
function valueWords(value: Plain): string {
  if (Array.isArray(value)) return (value as readonly Plain[]).map(valueWords).join(', ');
  if (typeof value !== 'object' || value === null) return String(value);
  return Object.entries(value)
    .map(([key, item]) => `${key} ${valueWords(item)}`)
    .join(' ');
}

function itemWords(
  section: string,
  piece: Extract<Piece, { readonly kind: 'items' }>,
  { words }: Display,
): string {
  const [removed, added] = [piece.removed, piece.added].map((items) => items.map(valueWords).join(', '));
  if (added === '') return words.text.changes.none(section, removed);
  const head = section === 'actions' ? '' : `${section}: `;
  return head + (removed === '' ? added : words.text.changes.instead(added, removed));
}

function pieceWords(piece: Piece, display: Display): string {
  const path = piece.path.join('.');
  const { changes } = display.words.text;
  if (piece.kind === 'items') return itemWords(path, piece, display);
  if (piece.to === undefined) return changes.none(path, valueWords(piece.from ?? ''));
  if (piece.from === undefined) return `${path}: ${valueWords(piece.to)}`;
  return `${path}: ${changes.instead(valueWords(piece.to), valueWords(piece.from))}`;
}

/** A written quantity as a number and its unit; undefined where it is none. */
function sizeOf(value: Plain | undefined): { readonly size: number; readonly unit: string } | undefined {
  if (typeof value === 'number') return { size: value, unit: '' };
  const match = typeof value === 'string' ? /^\s*([\d.]+)\s*(.*)$/.exec(value) : null;
  return match === null ? undefined : { size: Number(match[1]), unit: match[2].trim() };
}

/** Shares of what was that have a name of their own, and how near they must be. */
const shares = [
  [0, 'nothing'],
  [1 / 4, 'quarter'],
  [1 / 3, 'third'],
  [1 / 2, 'half'],
  [2, 'double'],
  [3, 'treble'],
] as const;
const NEAR = 0.01;

/** What was changed and how it stands to what it was, in words with both values; undefined where these cannot be compared. */
function sizeWords(
  what: string,
  from: Plain | undefined,
  to: Plain | undefined,
  { words }: Display,
): string | undefined {
  const [was, is] = [sizeOf(from), sizeOf(to)];
  if (was === undefined || is === undefined || was.unit !== is.unit || was.size === 0) return undefined;
  const share = is.size / was.size;
  const { changes } = words.text;
  const named = shares.find(([each]) => Math.abs(share - each) <= NEAR * Math.max(each, NEAR))?.[1];
  const how = named === undefined ? changes.toShare(Math.round(share * 100)) : changes.shares[named];
  return changes.sized(what, how, valueWords(to ?? ''), valueWords(from ?? ''));
}

/** How a product is dosed, as it is written. */
const howDosed = (added: readonly Plain[]): string =>
  added
    .map((item) => {
      const { product: _, ...how } = item as Readonly<Record<string, Plain>>;
      return valueWords(how);
    })
    .join('; ');

/** What one difference means, where it has a meaning of its own; else as it is written. */
function meaningOf(piece: Piece, display: Display): string {
  const [section, name, ...rest] = piece.path.map(String);
  const { changes } = display.words.text;
  if (piece.kind === 'items') {
    if (piece.removed.length === 0) {
      const emptied = bedsLeftEmpty(piece.added, display);
      if (emptied !== undefined) return emptied;
      if (section === 'dosing') return changes.dosed(plain(piece.about, display), howDosed(piece.added));
    }
    if (piece.added.length === 0) {
      if (bedsLeftEmpty(piece.removed, display) !== undefined) return changes.notEmpty(piece.about);
      if (section === 'dosing') return changes.nobodyDoses(plain(piece.about, display));
    }
    return pieceWords(piece, display);
  }
  if (piece.to === undefined && rest.length === 0 && (section === 'plantings' || section === 'fish'))
    return changes.gone(name);
  if (section === 'dosing' && name === undefined && piece.to === undefined) return changes.nobodyDoses('');
  const media = rest[0] === 'media' && rest[1] === 'volume';
  const meanings: Readonly<Record<string, ((name: string) => string) | undefined>> = changes.meanings;
  const what = meanings[media ? 'vessels media' : `${section} ${rest.at(-1) ?? ''}`]?.(name);
  const told =
    what === undefined || rest.length > 2 ? undefined : sizeWords(what, piece.from, piece.to, display);
  return told ?? pieceWords(piece, display);
}

/** Most pieces of a change that are told, and most letters of each. */
const most = 4;
const letters = 140;

/** Actions that leave a bed empty, and may plant it again, in words; undefined where they do anything else. */
function bedsLeftEmpty(added: readonly Plain[], { words }: Display): string | undefined {
  const { changes } = words.text;
  const done = added.map((item) => {
    if (typeof item !== 'object' || item === null || Array.isArray(item)) return undefined;
    const { at, 'leave-empty': emptied, plant, ...others } = item as Readonly<Record<string, Plain>>;
    if (typeof at !== 'string' || Object.keys(others).length > 0) return undefined;
    return { at, emptied, plant };
  });
  const [first, again, ...more] = done;
  if (typeof first?.emptied !== 'string' || more.length > 0) return undefined;
  if (done.length === 1) return changes.emptyFrom(first.emptied, first.at);
  return again?.plant === first.emptied ? changes.emptyUntil(first.emptied, first.at, again.at) : undefined;
}

/**
 * What two files say otherwise, by what it means and not by where it stands: `feed of growers cut to a half`, `lettuce left
 * empty from 14 d`; as it is written where it has no meaning of its own. One text a change.
 */
export function meaningWords(
  changes: readonly FileChange[],
  display: Display = plainDisplay,
): readonly string[] {
  return changes.map(({ pieces }) => {
    const told = pieces.slice(0, most).map((piece) => short(meaningOf(piece, display), letters));
    const left = pieces.length - told.length;
    return listed(left > 0 ? [...told, display.words.text.changes.more(left)] : told, display);
  });
}
