import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readCell, saysNothing } from '../../../../packages/core/src/log/read-cell.js';

describe('a cell of a hand-kept log', () => {
  it.each([
    ['0.25', { low: 0.25, high: 0.25, decimals: 2, unit: '' }],
    ['7', { low: 7, high: 7, decimals: 0, unit: '' }],
    ['.5', { low: 0.5, high: 0.5, decimals: 1, unit: '' }],
    ['0,25', { low: 0.25, high: 0.25, decimals: 2, unit: '', odd: 'decimal comma' }],
    ['~0.5', { low: 0.5, high: 0.5, decimals: 1, unit: '', odd: 'an estimate' }],
    ['about 2', { low: 2, high: 2, decimals: 0, unit: '', odd: 'an estimate' }],
    ['78F', { low: 78, high: 78, decimals: 0, unit: 'F' }],
    ['0.5 ppm', { low: 0.5, high: 0.5, decimals: 1, unit: 'ppm' }],
    ['<0.25', { low: -Infinity, high: 0.25, unit: '', odd: 'less than the kit shows' }],
    ['≤ 0.25 ppm', { low: -Infinity, high: 0.25, unit: 'ppm', odd: 'less than the kit shows' }],
    ['>160', { low: 160, high: Infinity, unit: '', odd: 'more than the kit shows' }],
    ['160+', { low: 160, high: Infinity, unit: '', odd: 'more than the kit shows' }],
    ['over 8', { low: 8, high: Infinity, unit: '', odd: 'more than the kit shows' }],
    ['½', { low: 0.5, high: 0.5, decimals: 1, unit: '' }],
    ['1½ cups', { low: 1.5, high: 1.5, decimals: 1, unit: 'cups' }],
    ['2 ¾', { low: 2.75, high: 2.75, decimals: 2, unit: '' }],
    ['1 1/2', { low: 1.5, high: 1.5, decimals: 1, unit: '' }],
    ['0-0.25', { low: 0, high: 0.25, unit: '', odd: 'a range' }],
    ['0 – 0.25 ppm', { low: 0, high: 0.25, unit: 'ppm', odd: 'a range' }],
    ['10 to 20', { low: 10, high: 20, unit: '', odd: 'a range' }],
    ['nil', { low: 0, high: 0, decimals: 0, unit: '', odd: 'nothing found' }],
    ['ND', { low: 0, high: 0, decimals: 0, unit: '', odd: 'nothing found' }],
    ['trace', { low: 0, high: 0.25, unit: '', odd: 'a trace' }],
    ['-1.5', { low: -1.5, high: -1.5, decimals: 1, unit: '' }],
    ['1,200', { problem: 'may be 1.200 or 1200' }],
    ['2-Jan', { low: 1, high: 2, unit: '', odd: 'a date, which spreadsheets make of 1-2' }],
    ['01/02/2026', { low: 1, high: 2, unit: '', odd: 'a date, which spreadsheets make of 1-2' }],
    ['20.10.26', { low: 10, high: 20, unit: '', odd: 'a date, which spreadsheets make of 10-20' }],
    ['20-10', { problem: 'a range that runs backwards' }],
    ['two', { problem: 'not a number' }],
    ['1.2.3', { problem: 'not a number' }],
    ['1e999', { problem: 'not a finite number' }],
    ['=1+1', { problem: 'a formula whose value the file does not hold' }],
    ['#N/A', { problem: 'an error of the spreadsheet' }],
  ])('%s', (text, expected) => {
    expect(readCell(text, 0.25)).toEqual(expected);
  });

  it('a trace has no size where the kit has none', () => {
    expect(readCell('trace', undefined)).toEqual({
      problem: 'a trace of unknown size: the map gives no steps and no resolution',
    });
  });

  it.each(['', '-', 'n/a', 'none', '?', 'x', 'not tested'])('%j says nothing', (text) => {
    expect(saysNothing(text)).toBe(true);
  });

  it('any text gives bounds in order or a problem, and never throws', () => {
    fc.assert(
      fc.property(fc.string(), (text) => {
        const cell = readCell(text, 0.1);
        if ('problem' in cell) expect(cell.problem).not.toBe('');
        else expect(cell.low).toBeLessThanOrEqual(cell.high);
      }),
    );
  });

  it('a plain number is read back', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 99_999 }),
        fc.integer({ min: 0, max: 3 }),
        (figures, decimals) => {
          const text = (figures / 10 ** decimals).toFixed(decimals);
          expect(readCell(text, undefined)).toMatchObject({
            low: Number(text),
            high: Number(text),
            decimals,
          });
        },
      ),
    );
  });
});
