import { describe, expect, it } from 'vitest';
import { folderWith, leat } from '../../support/leat.js';

const folder = folderWith({ 'short.yaml': 'include: small.yaml\ndays: 4\n' });
const said = async (...args: string[]): Promise<string> => {
  const { code, out, err } = await leat(args, folder);
  expect(code, err).toBe(0);
  return out;
};

/** The first number behind a word of a text. */
const numberAfter = (text: string, word: RegExp): number => {
  const [, digits] = new RegExp(`${word.source}\\D*?([\\d.]+)`, 'm').exec(text) ?? [];
  return Number(digits);
};

// A pound 0.4535924 kg, a US gallon 3.785412 L (NIST SP 811, 2008, appendix B.8); nitrate 62.004/14.007 of its nitrogen (molar
// masses, IUPAC 2021).
const [gallons, nitrate] = [1000 / 3.785412, 62.004 / 14.007];

describe('--units', () => {
  it('shows the bands of an ensemble in other units, and leaves the rest', async () => {
    const asked = ['ensemble', 'short.yaml', '--members', '2', '--workers', '1', '--of', 'last volume@sump'];
    const [plain, other] = [await said(...asked), await said(...asked, '--units', 'us,mg/L as NO3')];
    expect(numberAfter(other, /^volume@sump +gal/) / numberAfter(plain, /^volume@sump +m3/)).toBeCloseTo(
      gallons,
      -1,
    );
    expect(numberAfter(other, /^last volume@sump:/) / numberAfter(plain, /^last volume@sump:/)).toBeCloseTo(
      gallons,
      -1,
    );
    expect(
      numberAfter(other, /^nitrate@tank +mg\/L as NO3/) / numberAfter(plain, /^nitrate@tank +mg N\/L/),
    ).toBeCloseTo(nitrate, 1);
    expect(other).toMatch(/^alkalinity@tank +meq\/L/m);
  });

  it('tells why by differences in the units shown, from the day with its date', async () => {
    const asked = ['why', 'short.yaml', '--of', 'nitrate@tank', '--from', '1d', '--to', '4d'];
    const [plain, other] = [await said(...asked), await said(...asked, '--units', 'mg/L as NO3')];
    expect(plain).toMatch(/^nitrate in tank is [\d.]+ mg N\/L (?:higher|lower) on day 4 \(5 Mar\)/);
    expect(numberAfter(other, /^nitrate in tank is/) / numberAfter(plain, /^nitrate in tank is/)).toBeCloseTo(
      nitrate,
      1,
    );
    expect(other).not.toContain('mg N/L');
  });

  it('shows a steady state in them, or in those that its file wants', async () => {
    const there = folderWith({
      'wants.yaml': 'include: small.yaml\ndisplay: { units: ["mg/L as NO3"] }\n',
    });
    const { code, out } = await leat(['steady', 'wants.yaml', '--crops', 'as-at-start'], there);
    expect(code).toBe(0);
    expect(out).toMatch(/^ +mg N\/L +mg N\/L +mg\/L as NO3 +meq\/L +mg\/L/m);
  });

  it('shows what was asked of a sweep and of a size in them, a margin as a difference', async () => {
    const warm = 'highest temperature@tank below 60 degC';
    const sweep = ['sweep', 'short.yaml', '--vary', 'vessels.tank.volume=600 L:800 L:2', '--keep', warm];
    const size = ['size', 'short.yaml', '--vary', 'vessels.tank.volume', '--from', '600 L', '--to', '800 L'];
    for (const asked of [sweep, [...size, '--keep', warm]]) {
      const [plain, other] = [await said(...asked), await said(...asked, '--units', 'us')];
      const margin = (text: string): number => numberAfter(text, /^ *600 L +(?:yes +\+)?/);
      expect(margin(other) / margin(plain)).toBeCloseTo(9 / 5, 1);
      expect(other).toMatch(/margin .*degF/);
    }
  });

  it.each([
    ['sweep', 'short.yaml', '--vary', 'days=3:4:2', '--of', 'last tan@tank'],
    ['size', 'short.yaml', '--vary', 'days', '--from', '3', '--to', '4', '--keep', 'keeps limits'],
    ['sensitivity', 'short.yaml', '--of', 'last tan@tank'],
    ['sensitivity', 'short.yaml', '--of', 'last tan@tank', '--over', 'mine'],
    ['why', 'short.yaml', '--of', 'nitrate@tank', '--from', '1d'],
    ['steady', 'short.yaml'],
    ['ensemble', 'short.yaml', '--members', '2'],
    ['advise', 'short.yaml'],
    ['plan', 'short.yaml', '--vary', 'fish=10:20'],
    ['merge', 'none.ensemble'],
  ])('faults a word that is no unit before anything runs: %s', async (...args) => {
    const { code, out, err } = await leat([...args, '--units', 'galon'], folder);
    expect([code, out]).toEqual([2, '']);
    expect(err).toMatch(/^--units: neither a unit to be shown in nor a system of units; got galon; .*gal/m);
  });
});
