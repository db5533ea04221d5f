/** A file of the subset. */
export interface SubsetFile {
  readonly path: string;
  readonly text: string;
}

/** What is to be made of files. */
export interface CompileOptions {
  /** Paths of the files whose exported functions the module exports. */
  readonly from?: readonly string[];
  /** The interface of objects that lie in a table of functions. */
  readonly walk?: { readonly path: string; readonly type: string; readonly members: readonly string[] };
}

/** A module. */
export interface Compiled {
  readonly bytes: Uint8Array;
  /** Bytes of its memory, from 0 on, that it keeps for itself. */
  readonly statics: number;
  /** Fields of each record, in their order. */
  readonly records: Readonly<Record<string, readonly string[]>>;
  /** Names of the objects of its table. */
  readonly names: readonly string[];
}

/** Makes a module of files. Throws SyntaxError at what is not of the subset. */
export function compiled(files: readonly SubsetFile[], options?: CompileOptions): Compiled;
