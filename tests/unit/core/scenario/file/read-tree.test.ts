import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readTree } from '../../../../../packages/core/src/scenario/file/read-tree.js';
import {
  describePath,
  nodeAt,
  originAt,
  plainOf,
} from '../../../../../packages/core/src/scenario/file/tree.js';

function treeOf(text: string): NonNullable<ReturnType<typeof readTree>['tree']> {
  const { tree, faults } = readTree(text, 'a.yaml');
  if (tree === undefined || faults.length > 0) throw new Error(JSON.stringify(faults));
  return tree;
}

describe('readTree', () => {
  it('keeps the line and column of every value', () => {
    const tree = treeOf('a: 1\nb:\n  c: [x, yy]\n');
    expect(originAt(tree, ['b', 'c', 1])).toEqual({ file: 'a.yaml', line: 3, column: 10 });
    expect(originAt(tree, ['b', 'missing'])).toEqual({ file: 'a.yaml', line: 2, column: 1 });
    expect(nodeAt(tree, ['b', 'c', 0])).toMatchObject({ value: 'x' });
    expect(describePath(['b', 'c', 0, 'd'])).toBe('b.c[0].d');
  });

  it('leaves out keys with nothing after them', () => {
    expect(plainOf(treeOf('a:\nb: 1\nc: ~\n'))).toEqual({ b: 1 });
  });

  it('reads words that look like switches or times as words', () => {
    expect(plainOf(treeOf('a: on\nb: 08:00-18:00\nc: 2026-03-01\nd: no\n'))).toEqual({
      a: 'on',
      b: '08:00-18:00',
      c: '2026-03-01',
      d: 'no',
    });
  });

  it('follows aliases', () => {
    expect(plainOf(treeOf('a: &x { b: 1 }\nc: *x\n'))).toEqual({ a: { b: 1 }, c: { b: 1 } });
  });

  it('refuses aliases that grow without bound, at once', () => {
    const levels = Array.from({ length: 12 }, (_, i) => `a${i + 1}: &a${i + 1} [${`*a${i},`.repeat(10)}]`);
    const { tree, faults } = readTree(`a0: &a0 [x]\n${levels.join('\n')}\n`, 'a.yaml');
    expect(tree).toBeUndefined();
    expect(faults).toHaveLength(1);
    expect(faults[0]?.problem).toBe('more than 400000 values once aliases are followed');
  });

  it('refuses an alias inside its own anchor', () => {
    const { tree, faults } = readTree('a: &a [*a]\n', 'a.yaml');
    expect(tree).toBeUndefined();
    expect(faults[0]?.problem).toBe('nested more than 40 deep');
  });

  it.each([
    ['41 brackets', `a: ${'['.repeat(41)}${']'.repeat(41)}`],
    ['100,000 brackets', `a: ${'['.repeat(100_000)}${']'.repeat(100_000)}`],
    ['100,000 open braces', '{a: '.repeat(100_000)],
    ['100,000 dashes', '- '.repeat(100_000)],
    ['100,000 question marks', '? '.repeat(100_000)],
    ['1,000 steps of indentation', Array.from({ length: 1000 }, (_, i) => `${' '.repeat(i)}a:`).join('\n')],
  ])('refuses %s in one another', (_, text) => {
    const { tree, faults } = readTree(text, 'a.yaml');
    expect(tree).toBeUndefined();
    expect(faults.map(({ problem }) => problem)).toContain('nested more than 40 deep');
  });

  it('tells the first hundred faults of syntax and how many more there are', () => {
    const { faults } = readTree('- !x 1\n'.repeat(150), 'a.yaml');
    expect(faults).toHaveLength(101);
    expect(faults[100]?.problem).toMatch(/^\d+ more faults of syntax from here on$/);
  });

  it('refuses a key that would reach the prototype of a map', () => {
    expect(readTree('__proto__: { a: 1 }', 'a.yaml').faults[0]?.problem).toBe('a key that cannot be used');
    expect(plainOf(treeOf('constructor: 1'))).toEqual({ constructor: 1 });
  });

  it('refuses a text too long to be a system', () => {
    expect(readTree('#'.repeat(2_000_001), 'a.yaml').faults[0]?.problem).toBe('too long');
  });

  it('reads or refuses any text without throwing', () => {
    fc.assert(
      fc.property(
        fc.string({ unit: fc.constantFrom(...Array.from('ab:-[]{}&*!|>\'"#?,% \n\t0')), maxLength: 60 }),
        (text) => {
          const { tree, faults } = readTree(text, 'a.yaml');
          expect(tree !== undefined || faults.length > 0).toBe(true);
        },
      ),
      { numRuns: 2000 },
    );
  });
});
