import { createHash } from 'node:crypto';

/** SHA-256 of texts and bytes one after another, 64 hexadecimal digits: as the library's own, and quick with large ones. */
export function digest(...parts: readonly (string | Uint8Array)[]): string {
  const hash = createHash('sha256');
  for (const part of parts) hash.update(part);
  return hash.digest('hex');
}
