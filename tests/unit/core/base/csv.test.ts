import { describe, expect, it } from 'vitest';
import { readCsv, tableFlaw } from '../../../../packages/core/src/base/csv.js';

const most = { characters: 40, rows: 3, columns: 4 };

describe('separated text', () => {
  it.each([
    ['commas', 'a,b\n1,2\n'],
    ['semicolons, though the cells hold commas', 'a;b\n1;2'],
    ['tabs, with a byte order mark and the line ends of Windows', '\uFEFFa\tb\r\n1\t2\r\n'],
    ['spaces around cells, and blank rows at the end', ' a , b\n1, 2 \n\n  \n'],
  ])('is cut at %s', (_, text) => {
    expect(readCsv(text, most)).toEqual({
      rows: [
        ['a', 'b'],
        ['1', '2'],
      ],
    });
  });

  it('holds a line break within quotes, and counts a blank row between others', () => {
    expect(readCsv('"a\nb",c\n\n1,2', most)).toEqual({ rows: [['a\nb', 'c'], [''], ['1', '2']] });
  });

  it.each([
    ['a\0b', { kind: 'not-text' }],
    ['x'.repeat(41), { kind: 'too-long', count: 41 }],
    [' \n , \n', { kind: 'empty' }],
    ['a\nb\nc\nd', { kind: 'too-many-rows', count: 4 }],
    ['a\nb,c,d,e,f', { kind: 'too-many-columns', count: 5 }],
  ])('is refused for what it is: %j', (text, flaw) => {
    expect(readCsv(text, most)).toEqual(flaw);
  });

  it('is held to the same size when it was cut elsewhere', () => {
    expect(tableFlaw([['a'], ['1', '2', '3', '4', '5']], most)).toEqual({
      kind: 'too-many-columns',
      count: 5,
    });
    expect(tableFlaw([['', ''], []], most)).toEqual({ kind: 'empty' });
    expect(tableFlaw([['a'], ['1']], most)).toBeUndefined();
  });
});
