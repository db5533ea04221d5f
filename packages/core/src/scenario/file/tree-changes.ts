import type { Path, Plain } from './tree.js';

/** A map of a file: values by key. */
export type Box = Readonly<Record<string, Plain>>;

/** One place at which two files say something else: a value, or items of a list that only one of them has. */
export type Piece =
  | { readonly kind: 'value'; readonly path: Path; readonly from?: Plain; readonly to?: Plain }
  | {
      readonly kind: 'items';
      readonly path: Path;
      /** What the items are about: a bed, a cohort, a vessel. */
      readonly about: string;
      readonly removed: readonly Plain[];
      readonly added: readonly Plain[];
    };

/** Pieces that are changed together: of one section and one thing in it. */
export interface FileChange {
  /** Such as `fish.growers`, or `actions: lettuce`. */
  readonly name: string;
  readonly pieces: readonly Piece[];
}

const isBox = (value: Plain | undefined): value is Box =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

const isListOfBoxes = (value: Plain | undefined): value is readonly Box[] =>
  Array.isArray(value) && (value as readonly Plain[]).every(isBox);

const textOf = (value: Plain): string => JSON.stringify(value);

/** Keys of an item that say when or how, not about what. */
const howKeys = new Set(['at', 'every', 'until', 'from', 'for', 'times', 'on', 'note']);

/** Keys that name what an item is about, the first of them that it has. */
const aboutKeys = ['cohort', 'planting', 'vessel', 'into', 'in', 'pump', 'water', 'read'];

/** A value that stands as text. */
const textIn = (value: Plain): string => (typeof value === 'string' ? value : JSON.stringify(value));

/** What an item of a list is about: the bed, cohort or vessel that it names, else the first text in it. */
function aboutOf(item: Box): string {
  if (typeof item['from'] === 'string' && 'to' in item) return item['from'];
  for (const [key, value] of Object.entries(item)) {
    if (howKeys.has(key)) continue;
    if (typeof value === 'string')
      return aboutKeys.includes(key) && 'product' in item ? textIn(item['product']) : value;
    if (!isBox(value)) continue;
    const named = aboutKeys.find((each) => typeof value[each] === 'string');
    return named === undefined ? key : textIn(value[named]);
  }
  return Object.keys(item)[0] ?? '';
}

/** Items of a list that another does not have, as often as it lacks them. */
function missingIn(items: readonly Box[], other: readonly Box[]): readonly Box[] {
  const left = other.map(textOf);
  return items.filter((item) => {
    const place = left.indexOf(textOf(item));
    if (place < 0) return true;
    left.splice(place, 1);
    return false;
  });
}

function listPieces(a: readonly Box[], b: readonly Box[], path: Path): readonly Piece[] {
  const [removed, added] = [missingIn(a, b), missingIn(b, a)];
  const about = [...new Set([...removed, ...added].map(aboutOf))];
  return about.map((name) => ({
    kind: 'items',
    path,
    about: name,
    removed: removed.filter((item) => aboutOf(item) === name),
    added: added.filter((item) => aboutOf(item) === name),
  }));
}

function piecesOf(a: Plain | undefined, b: Plain | undefined, path: Path): readonly Piece[] {
  if (isBox(a) && isBox(b))
    return [...new Set([...Object.keys(a), ...Object.keys(b)])].flatMap((key) =>
      piecesOf(a[key], b[key], [...path, key]),
    );
  const lists = [a ?? [], b ?? []] as const;
  if ((a !== undefined || b !== undefined) && isListOfBoxes(lists[0]) && isListOfBoxes(lists[1]))
    return listPieces(lists[0], lists[1], path);
  if (a !== undefined && b !== undefined && textOf(a) === textOf(b)) return [];
  if (a === undefined && b === undefined) return [];
  return [{ kind: 'value', path, ...(a !== undefined && { from: a }), ...(b !== undefined && { to: b }) }];
}

/** Keys that say nothing of the system: titles, and how long and how often is looked. */
const silent = new Set(['title', 'note', 'days', 'every', 'seed']);

/**
 * What two files say otherwise, what belongs to one thing together: values by the first two keys of their path, items of
 * lists by what they are about. Titles, notes, length and output step are no difference.
 * @param a and b as written (`written` of `ResolvedTree`)
 */
export function changesBetween(a: Box, b: Box): readonly FileChange[] {
  const groups = new Map<string, Piece[]>();
  for (const piece of piecesOf(a, b, [])) {
    if (silent.has(String(piece.path[0]))) continue;
    const place = piece.path.slice(0, 2).join('.');
    const name = piece.kind === 'items' ? `${place}: ${piece.about}` : place;
    groups.set(name, [...(groups.get(name) ?? []), piece]);
  }
  return [...groups].map(([name, pieces]) => ({ name, pieces }));
}

function laid(
  plain: Plain | undefined,
  path: Path,
  value: (before: Plain | undefined) => Plain | undefined,
): Plain {
  const [key, ...rest] = path;
  const box: Box = isBox(plain) ? plain : {};
  const entries = Object.entries(box).filter(([name]) => name !== key);
  const next = rest.length === 0 ? value(box[key]) : laid(box[key], rest, value);
  if (next === undefined) return Object.fromEntries(entries);
  // A key that was there keeps its place: order decides in what order things are listed.
  const keys = key in box ? Object.keys(box) : [...Object.keys(box), String(key)];
  return Object.fromEntries(keys.map((name) => [name, name === key ? next : box[name]]));
}

/**
 * A file with some changes made: of `a`, so that with all changes between `a` and `b` it says what `b` does, in the same
 * order of lists.
 */
export function withChanges(a: Box, b: Box, changes: readonly FileChange[]): Box {
  const all = changesBetween(a, b).flatMap(({ pieces }) => pieces);
  const made = changes.flatMap(({ pieces }) => pieces);
  const texts = new Set(made.map((piece) => JSON.stringify(piece)));
  const isWhole = (path: string): boolean =>
    all.filter((piece) => piece.path.join('.') === path).every((piece) => texts.has(JSON.stringify(piece)));
  let plain: Plain = a;
  for (const piece of made) {
    if (piece.kind === 'value') {
      plain = laid(plain, piece.path, () => piece.to);
      continue;
    }
    const whole = isWhole(piece.path.join('.')) ? valueAt(b, piece.path) : undefined;
    plain = laid(plain, piece.path, (before) => {
      if (whole !== undefined) return whole;
      const items = (before ?? []) as readonly Box[];
      return [...missingIn(items, piece.removed as readonly Box[]), ...piece.added];
    });
  }
  return isBox(plain) ? plain : {};
}

function valueAt(plain: Plain | undefined, path: Path): Plain | undefined {
  return path.reduce<Plain | undefined>((at, key) => (isBox(at) ? at[key] : undefined), plain);
}
