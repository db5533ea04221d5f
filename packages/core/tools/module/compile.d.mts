/** A file of the subset. */
export interface SubsetFile {
  readonly path: string;
  readonly text: string;
}

/** The bytes of the module whose exports are the exported functions of the files. Throws SyntaxError at what is not of the subset. */
export function compiled(files: readonly SubsetFile[]): Uint8Array;
