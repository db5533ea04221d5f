import { describe, expect, it } from 'vitest';
import { beside, columns, columnsOrUnder, wrap } from '../../../packages/cli/src/terminal/columns.js';
import { csv, longCsv } from '@leat/view/documents';
import { day, percent, short, shown } from '@leat/view/text';
import { sparkline } from '../../../packages/cli/src/commands/shared/key-quantities.js';
import { styleFor } from '../../../packages/cli/src/terminal/style.js';

describe('columnsOrUnder', () => {
  const rows = [
    ['tried', 'why'],
    ['1 L', 'the first reason is long'],
  ];

  it('is a table where the screen has room', () => {
    expect(columnsOrUnder(rows, ['left', 'left'], 1, 40)).toEqual(columns(rows, ['left', 'left']));
  });

  it('puts what has no room under its row, whole', () => {
    expect(columnsOrUnder(rows, ['left', 'left'], 1, 20)).toEqual([
      'tried',
      '1 L',
      '    the first reason',
      '    is long',
    ]);
  });
});

describe('shown', () => {
  it.each([
    [0, '0'],
    [0.0123456, '0.0123'],
    [12.3456, '12.3'],
    [1234.5, '1235'],
    [-0.5, '-0.5'],
    [0.00001234, '1.2e-5'],
    [123456789, '1.2e+8'],
    [Number.NaN, '-'],
    [Infinity, 'inf'],
    [undefined, '-'],
  ])('of %d is %s', (value, text) => {
    expect(shown(value)).toBe(text);
  });
});

describe('day and percent', () => {
  it('are short', () => {
    expect([day(3), day(3.25), day(undefined), percent(0.12345)]).toEqual(['3', '3.3', '-', '12.3 %']);
  });
});

describe('sparkline', () => {
  it('rises from the lowest bar to the highest', () => {
    expect(sparkline([0, 1, 2, 3, 4, 5, 6, 7], 8)).toBe('▁▂▃▄▅▆▇█');
  });

  it('takes means of parts, is level for a constant, and blank where there is nothing', () => {
    expect(sparkline([0, 0, 4, 4], 2)).toBe('▁█');
    expect(sparkline([5, 5, 5], 3)).toBe('▁▁▁');
    expect(sparkline([Number.NaN, 1, 2], 3)).toBe(' ▁█');
  });
});

describe('columns', () => {
  it('aligns text left and numbers right, without blanks at the end', () => {
    expect(
      columns(
        [
          ['a', '1', 'x'],
          ['bcd', '22', ''],
        ],
        ['left', 'right', 'left'],
      ),
    ).toEqual(['a     1  x', 'bcd  22']);
  });

  it('puts blocks side by side, cuts and wraps', () => {
    expect(beside(['a', 'b'], ['c'], 4)).toEqual(['a   c', 'b']);
    expect(short('abcdef', 4)).toBe('abc…');
    expect(wrap('one two three', 7, '  ')).toEqual(['one two', '  three']);
    expect(wrap('', 7)).toEqual([]);
  });
});

describe('csv', () => {
  it('has a row per time, empty where there is no number, and quotes what needs it', () => {
    const series = { name: 'a,b@c', unit: 'g', values: Float64Array.of(1, Number.NaN) };
    expect(csv([0, 0.5], [series])).toBe('time_d,a_b_c_g\n0,1\n0.5,\n');
    expect(csv([0, 0.5], [series], '2026-03-01')).toBe(
      'time_d,date,a_b_c_g\n0,2026-03-01 00:00,1\n0.5,2026-03-01 12:00,\n',
    );
    expect(longCsv([0, 1], [{ ...series, name: 'tan@tank' }], '2026-02-28')).toBe(
      'time_d,date,quantity,place,unit,value\n0,2026-02-28,tan,tank,g,1\n1,2026-03-01,tan,tank,g,\n',
    );
  });

  it('gives every column a name of its own', () => {
    const one = { unit: 'g', values: Float64Array.of(1) };
    const names = ['a-b@c', 'a_b@c', 'A@b@c', 'pH@c'].map((name) => ({ ...one, name }));
    expect(csv([0], names).split('\n')[0]).toBe('time_d,a_b_c_g,a_b_c_g_2,A_b_c_g_3,pH_c_g');
  });
});

describe('styleFor', () => {
  it('colours a terminal only, and not where NO_COLOR is set', () => {
    expect(styleFor(true, {}).strong('x')).toBe('\u001b[1mx\u001b[0m');
    expect(styleFor(false, {}).strong('x')).toBe('x');
    expect(styleFor(true, { NO_COLOR: '1' }).warn('x')).toBe('x');
    expect(styleFor(true, { NO_COLOR: '' }).warn('x')).not.toBe('x');
  });
});
