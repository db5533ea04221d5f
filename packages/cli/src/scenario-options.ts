/** Options of every command that reads a scenario. */
export interface ScenarioOptions {
  /** Each `path=value`. */
  readonly set: readonly string[];
  /** Tables of the user's own numbers, read after those that the file names. */
  readonly tables?: readonly string[];
  /** Folders beside that of the file from which the file may name others. */
  readonly allowPath?: readonly string[];
  readonly days?: number;
  readonly every?: string;
  /** Fit whose numbers stand in place of the file's and of the tables'; `--set` wins over it. */
  readonly fit?: string;
}

function setting(text: string): { readonly path: string; readonly value: string } {
  const cut = text.indexOf('=');
  return { path: text.slice(0, cut).trim(), value: text.slice(cut + 1).trim() };
}

/** What `--set` puts over a scenario. */
export function settingsOf({
  set,
}: Pick<ScenarioOptions, 'set'>): readonly { readonly path: string; readonly value: string }[] {
  return set.map(setting);
}
