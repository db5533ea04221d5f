import { metric, readUnitChoice } from '@leat/core/units';
import { askedTold, displayOf } from '@leat/view/text';
import { describe, expect, it } from 'vitest';

const display = (...words: string[]): ReturnType<typeof displayOf> =>
  displayOf({ language: 'en', units: readUnitChoice(words).choice });

describe('how an answer to what was asked is told', () => {
  it('moves the zero of a temperature, but not of a difference of two', () => {
    const us = display('us');
    const highest = askedTold({ text: 'highest temperature@tank', unit: 'degC' }, us);
    expect([highest.unit, highest.value(20), highest.difference(20)]).toEqual(['degF', 68, 36]);
    const change = askedTold({ text: 'change temperature@tank from 2 d', unit: 'degC' }, us);
    expect([change.unit, change.value(20)]).toEqual(['degF', 36]);
  });

  // Nitrate 62.004/14.007 of its nitrogen (molar masses, IUPAC 2021).
  it('knows nitrate by the series that is named', () => {
    const told = askedTold(
      { text: 'last nitrate@tank averaged 1 d', unit: 'mg N/L' },
      display('mg/L as NO3'),
    );
    expect(told.unit).toBe('mg/L as NO3');
    expect(told.value(10)).toBeCloseTo(44.27, 2);
  });

  it('leaves shares, and what is told as it is', () => {
    const share = askedTold({ text: 'share nitrogen sludge', unit: '1' }, display('us'));
    expect([share.unit, share.value(0.3)]).toEqual(['', 0.3]);
    const days = askedTold(
      { text: 'days tan@tank above 1 mg N/L', unit: 'd' },
      displayOf({ language: 'en', units: metric }),
    );
    expect([days.unit, days.value(3)]).toEqual(['d', 3]);
  });
});
