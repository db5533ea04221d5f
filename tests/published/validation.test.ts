import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { full } from '../support/length.js';
import { bandsOf, listedBands } from './systems/bands.js';
// The checks of whole systems run in this file, so that their draws are made once for both.
import './systems/systems-checks.js';
import { systemsCount, systemsTable, withoutBands } from './systems/systems-table.js';
import { topics } from './topics.js';
import { validationDocument } from './validation-document.js';

const file = new URL('VALIDATION.md', import.meta.url);
const documentBy = (bands: typeof bandsOf): string =>
  `${validationDocument(topics, systemsCount(bands))}\n\n${systemsTable(bands)}\n`;

// The short form draws each whole system twice only: all but medians and bands is compared, what the first draws gave too.
it.runIf(!full)('VALIDATION.md is what the checks and the first draws say', () => {
  const kept = withoutBands(readFileSync(file, 'utf8'));
  expect(kept.match(/NaN to NaN/g)?.length).toBeGreaterThan(20);
  expect(kept).toBe(documentBy(listedBands));
});

it.runIf(full)('VALIDATION.md is what the checks say (made anew by `npm run validate`)', async () => {
  await expect(documentBy(bandsOf)).toMatchFileSnapshot('VALIDATION.md');
});
