import type { FileChange, Piece, Plain } from '@leat/core';
import { listed, short } from './names.js';

/** A value of a file in words: keys and values one after another. */
function valueWords(value: Plain): string {
  if (Array.isArray(value)) return (value as readonly Plain[]).map(valueWords).join(', ');
  if (typeof value !== 'object' || value === null) return String(value);
  return Object.entries(value)
    .map(([key, item]) => `${key} ${valueWords(item)}`)
    .join(' ');
}

function itemWords(section: string, piece: Extract<Piece, { readonly kind: 'items' }>): string {
  const [removed, added] = [piece.removed, piece.added].map((items) => items.map(valueWords).join(', '));
  if (added === '') return `no ${section} (${removed})`;
  const head = section === 'actions' ? '' : `${section}: `;
  return removed === '' ? `${head}${added}` : `${head}${added} instead of ${removed}`;
}

function pieceWords(piece: Piece): string {
  const path = piece.path.join('.');
  if (piece.kind === 'items') return itemWords(path, piece);
  if (piece.to === undefined) return `no ${path} (${valueWords(piece.from ?? '')})`;
  if (piece.from === undefined) return `${path}: ${valueWords(piece.to)}`;
  return `${path}: ${valueWords(piece.to)} instead of ${valueWords(piece.from)}`;
}

/** Most pieces of a change that are told, and most letters of each. */
const most = 4;
const letters = 140;

/** What was changed, in words: `no dosing: into sump product potassium-bicarbonate mass 120 g every 7 d`. */
export function changeWords({ pieces }: FileChange): string {
  const told = pieces.slice(0, most).map((piece) => short(pieceWords(piece), letters));
  const left = pieces.length - told.length;
  return listed(left > 0 ? [...told, `${left} more of it`] : told);
}
