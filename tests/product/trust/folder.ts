import { mkdtempSync, mkdirSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { smallSystem } from '../../support/small-text.js';

/** A new folder with `small.yaml` (or another text under that name) and the files given, by path. */
export function folderOf(files: Readonly<Record<string, string | Uint8Array>> = {}): string {
  const folder = mkdtempSync(join(tmpdir(), 'leat-trust-'));
  for (const [name, text] of Object.entries({ 'small.yaml': smallSystem, ...files })) {
    mkdirSync(dirname(join(folder, name)), { recursive: true });
    writeFileSync(join(folder, name), text);
  }
  return folder;
}
