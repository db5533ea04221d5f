/** A piece of a valid text and what a person wrote in its place. */
export type Edit = readonly [from: string, to: string];

/** One faulty input: what the slip is, and how the valid files of its kind are changed. */
export interface Slip {
  readonly name: string;
  readonly edits?: readonly Edit[];
  /** The whole text, in place of an edited one. */
  readonly text?: string | Uint8Array;
  /** Files beside it. */
  readonly files?: Readonly<Record<string, string | Uint8Array>>;
  /** Arguments after those of the kind. */
  readonly args?: readonly string[];
  /** Exit code; 2 where none is given. */
  readonly code?: number;
}

/** A slip by edits: pairs of texts, one after the other. */
export function slip(name: string, ...texts: readonly string[]): Slip {
  return { name, edits: texts.flatMap((from, i): Edit[] => (i % 2 === 0 ? [[from, texts[i + 1]]] : [])) };
}

/** A text with pieces of it replaced; each piece must be there. */
export function edited(text: string, edits: readonly Edit[]): string {
  return edits.reduce((before, [from, to]) => {
    if (!before.includes(from)) throw new Error(`no ${JSON.stringify(from)} in the text`);
    return before.replace(from, () => to);
  }, text);
}
