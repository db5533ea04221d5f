import { describe, expect, it } from 'vitest';
import { csv } from '@leat/view/documents';
import { csvCell, csvText } from '@leat/view/documents';

const formulas = [
  '=1+1',
  '+cmd|calc',
  '-2+3',
  '@SUM(A1)',
  '\t=1',
  '\r=1',
  '\n=1',
  ' =1',
  '\uFF1D1',
  '=HYPERLINK("http://x","y")',
];

describe('CSV cells', () => {
  it.each(formulas)('a text that a spreadsheet would run is led by an apostrophe: %j', (text) => {
    const cell = csvCell(text);
    // A carriage return is written out, as all that is not seen.
    const seen = text.replace('\r', '\\u000d');
    const inside = cell.startsWith('"') ? cell.slice(1, -1).replaceAll('""', '"') : cell;
    expect(inside).toBe(`'${seen}`);
  });

  it('numbers stay numbers, with their sign; what is no number is empty', () => {
    expect([-1.5, 1e-7, 0, -0, NaN, Infinity].map(csvCell)).toEqual(['-1.5', '1e-7', '0', '0', '', '']);
  });

  it('plain texts stay as they are, and quotes, commas and line ends are kept', () => {
    expect(csvText([['nitrate@sump [mg N/L]', 'a, "b"\nc']])).toBe('nitrate@sump [mg N/L],"a, ""b""\nc"\n');
  });

  it('the writer of series goes through them', () => {
    expect(csv([0], [{ name: '=x', unit: '1', values: Float64Array.of(-1) }])).toBe('time_d,x\n0,-1\n');
  });
});
