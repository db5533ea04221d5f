import { describe, expect, it } from 'vitest';
import fc from 'fast-check';
import { numbersToText, textToNumbers } from '../../../../packages/cli/src/files/checkpoint.js';

describe('numbers as they are kept', () => {
  it('come back to the bit, those that JSON has no word for too', () => {
    const numbers = fc.array(fc.double());
    fc.assert(
      fc.property(fc.record({ numbers, text: fc.string() }), (data) => {
        const back = textToNumbers(numbersToText(data)) as typeof data;
        expect(back.text).toBe(data.text);
        expect(back.numbers).toHaveLength(data.numbers.length);
        back.numbers.forEach((number, i) => {
          expect(Object.is(number, data.numbers[i])).toBe(true);
        });
      }),
    );
    expect(numbersToText([Number.NaN, Infinity, -0, 0])).toBe(
      '[{"odd":"NaN"},{"odd":"Infinity"},{"odd":"-0"},0]',
    );
  });
});
