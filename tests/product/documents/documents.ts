import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { root } from '../packages/packed.js';

/** Text of a file of the tree. */
export const at = (path: string): string => readFileSync(join(root, path), 'utf8');

const inFolder = (folder: string): readonly string[] =>
  readdirSync(join(root, folder))
    .filter((file) => file.endsWith('.md'))
    .map((file) => `${folder}/${file}`);

/** Documents for who uses Leat. */
export const forUsers: readonly string[] = ['README.md', ...inFolder('packages/cli/docs')];

/** Documents for who changes Leat. */
export const forEngineers: readonly string[] = [
  'DEVELOPERS.md',
  ...inFolder('packages/core/docs'),
  'tests/README.md',
  'tests/bench/README.md',
  'tests/published/README.md',
];

/** Every document that a person wrote, in whole or in part. */
export const documents: readonly string[] = [
  ...forUsers,
  ...forEngineers,
  'CHANGELOG.md',
  'notebooks/README.md',
];

/** Calls of the command as a document shows them, each on one line, without `leat`. */
export function callsOf(text: string): readonly string[] {
  return text
    .replace(/\\\n\s*/g, ' ')
    .split('\n')
    .flatMap(
      (line) => /^(?: {4}|)(?:npm run )?leat (?:-- )?(?<call>[a-z].+)$/.exec(line)?.groups?.['call'] ?? [],
    )
    .map((call) => call.replace(/\s+#.*$/, '').replace(/ > .*$/, ''));
}

/** Words as a shell cuts them. */
export const words = (line: string): readonly string[] =>
  [...line.matchAll(/"([^"]*)"|(\S+)/g)].map(([, quoted, bare]) => quoted ?? bare);
