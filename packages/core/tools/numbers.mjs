// The tables of packages/cli/docs/numbers.md, from the library. `npm run generate` writes them.
import { readFileSync } from 'node:fs';
import { table, withBlocks } from '../../../.tools/blocks.mjs';
import { formOf, properties } from '../dist/library/properties.js';
import { marks, tableOf } from '../dist/library/table-row.js';

const document = new URL('../../cli/docs/numbers.md', import.meta.url);

/** The properties of a group, each with its unit. */
const listed = (group, names) =>
  names
    .map((name) => {
      const { unit } = formOf(group, name);
      return unit === '1' ? `\`${name}\`` : `\`${name}\` (${unit})`;
    })
    .join(', ');

/** The text of packages/cli/docs/numbers.md. */
export function numbersDocument() {
  const groups = Object.entries(properties).map(([group, { needed, further }]) => [
    `\`${group}.NAME.\``,
    `\`leat show ${tableOf[group]}\``,
    listed(group, needed),
    listed(group, further),
  ]);
  return withBlocks(readFileSync(document, 'utf8'), {
    properties: table(['ids begin with', 'those there are', 'needed', 'kept for reading'], groups),
    marks: table(['mark', 'how the number came'], Object.entries(marks)),
  });
}
