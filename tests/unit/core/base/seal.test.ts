import { describe, expect, it } from 'vitest';
import { sealed, sealProblem } from '../../../../packages/core/src/base/seal.js';

const document = {
  schema: 'leat-thing',
  version: 1,
  at: Number.NaN,
  low: -0,
  deep: { b: [1e-7, 0.1 + 0.2], a: 'ä"\u2028' },
  left: undefined,
};
const text = JSON.stringify(sealed(document));
const problem = (changed: string): string | undefined => sealProblem(JSON.parse(changed))?.problem;

describe('a sealed document', () => {
  it('is as it was, with a hash as its last key', () => {
    const { hash, ...rest } = sealed(document);
    expect(rest).toEqual(document);
    expect(text.endsWith(`,"hash":"${hash}"}`)).toBe(true);
    expect(hash).toMatch(/^[0-9a-f]{64}$/);
  });

  it('is whole however it is set in lines', () => {
    expect(problem(text)).toBeUndefined();
    expect(problem(JSON.stringify(sealed(document), null, 2))).toBeUndefined();
  });

  it.each([
    ['a number changed', '0.30000000000000004', '0.3'],
    ['a key added', '"version":1', '"version":1,"more":2'],
    ['a key taken away', '"version":1,', ''],
    ['keys in another order', '"schema":"leat-thing","version":1', '"version":1,"schema":"leat-thing"'],
    ['a word changed', 'leat-thing', 'leat-thong'],
    ['a key written twice', '"version":1', '"version":1,"version":2'],
  ])('is known to be changed: %s', (_, from, to) => {
    expect(text).toContain(from);
    expect(problem(text.replace(from, to))).toBe(
      'the file was changed after it was written: its hash is of something else',
    );
  });

  it('is none without its hash, or where it is no document', () => {
    for (const other of [document, {}, [], null, 'x', 3])
      expect(sealProblem(other)?.problem).toBe('the file has no hash over what it holds');
  });

  it('takes another hash', () => {
    const count = (all: string): string => String(all.length);
    expect(sealProblem(sealed({ a: 1 }, count), count)).toBeUndefined();
    expect(sealProblem(sealed({ a: 1 }, count))?.problem).toContain('its hash is of something else');
  });
});
