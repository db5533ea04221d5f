import { expect, it } from 'vitest';
import { topics } from './topics.js';
import { validationDocument } from './validation-document.js';

it('VALIDATION.md is what the checks say (made anew by `npm run validate`)', async () => {
  const sections = [validationDocument(topics)];
  await expect(`${sections.join('\n\n')}\n`).toMatchFileSnapshot('VALIDATION.md');
});
