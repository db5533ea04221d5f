import { expect, it } from 'vitest';
import { call, root } from '../packages/packed.js';

it('every generated file is as it would be made anew (else: npm run generate)', () => {
  const { status, stderr } = call(process.execPath, ['.tools/generate.mjs', '--check'], root);
  expect([status, stderr]).toEqual([0, '']);
});
