import { readdirSync } from 'node:fs';
import { expect, it } from 'vitest';
import { pageWords } from '../../../packages/page/src/words/index.js';
import { shippedText } from '../../support/shipped-scenario.js';
import { questionOf } from '@leat/view/text';

const names = readdirSync('packages/cli/scenarios').flatMap((file) =>
  file.endsWith('.yaml') ? [file.slice(0, -'.yaml'.length)] : [],
);

it.each(names)('the page asks what the what-if %s asks in each of its languages', (name) => {
  const question = questionOf(shippedText(name));
  expect(pageWords.en.whatIf(name, question)).toContain(question);
  const spanish = pageWords.es.whatIf(name, question);
  expect(spanish).not.toContain(question);
  expect(spanish).toMatch(/^¿.+\?$/);
});
