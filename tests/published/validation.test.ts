import { expect, it } from 'vitest';
// The checks of whole systems run in this file, so that their draws are made once for both.
import './systems/systems-checks.js';
import { systemsCount, systemsTable } from './systems/systems-table.js';
import { topics } from './topics.js';
import { validationDocument } from './validation-document.js';

it(
  'VALIDATION.md is what the checks say (made anew by `npm run validate`)',
  { timeout: 600_000 },
  async () => {
    const sections = [validationDocument(topics, systemsCount()), systemsTable()];
    await expect(`${sections.join('\n\n')}\n`).toMatchFileSnapshot('VALIDATION.md');
  },
);
