/** The kinds of file that Leat writes; of some it can tell by their opening that it made them. */
export type OutputKind =
  | 'course'
  | 'parquet'
  | 'points'
  | 'state'
  | 'report'
  | 'svg'
  | 'png'
  | 'ensemble'
  | 'size'
  | 'sensitivity'
  | 'fit'
  | 'schema'
  | 'own';

/** Bytes of the opening of a file by which its kind is known. */
export const openingBytes = 2 ** 16;

/** What stands in a PNG that Leat drew, so that it knows its own: a text chunk of the PNG standard. */
export const pngMark = 'Software\0Leat';

const firstLine = (text: string): string => text.slice(0, Math.max(0, text.indexOf('\n')));

const opens =
  (pattern: RegExp) =>
  (text: string): boolean =>
    pattern.test(text);

/** Whether an opening is one that Leat writes, for each kind. What a person is meant to change (`own`) is never known. */
const signs: Readonly<Record<OutputKind, (opening: string) => boolean>> = {
  course: opens(/^time(?:_d| \[d\]),/),
  // Its marks stand at its end.
  parquet: () => false,
  points: (text) => firstLine(text).endsWith(',broke off'),
  state: opens(/^\{\s*"schema": ?"leat-state"/),
  report: opens(
    /^<!doctype html>\n<html lang="[a-z-]+"><head><meta charset="utf-8">.*<title>[^<]* - Leat<\/title>/s,
  ),
  svg: opens(/^<svg aria-labelledby="p1 p2" role="img" font-family="'Source Sans 3'/),
  png: (text) => text.startsWith('\x89PNG') && text.includes(pngMark),
  ensemble: opens(/^\{"label":"leat ensemble"/),
  size: opens(/^\{"label":"leat size"/),
  sensitivity: opens(/^\{"label":"leat sensitivity"/),
  fit: opens(/^\{\s*"schema": ?"leat-fit"/),
  schema: opens(
    /^\{\s*"\$schema": "http:\/\/json-schema\.org\/draft-07\/schema#",\s*"\$id": "urn:leat:system-file:/,
  ),
  own: () => false,
};

/**
 * Whether a file is of a kind that Leat made and may write anew, by its opening.
 * @param opening its first bytes, at most `openingBytes` of them; an empty file is nobody's loss
 */
export const isOurs = (kind: OutputKind, opening: Buffer): boolean =>
  opening.length === 0 || signs[kind](opening.toString('latin1'));
