import { describe, expect, it } from 'vitest';
import { readScenarioFully } from '../../../../../packages/core/src/scenario/read-scenario.js';
import { valueOn } from '../../../../../packages/core/src/scenario/value-on.js';
import type { DailyValue } from '../../../../../packages/core/src/scenario/scenario.js';
import { createParameters } from '../../../../../packages/core/src/library/parameters.js';
import { smallSystem as lit } from '../../../../support/small-text.js';
import { messagesOf } from '../../../../product/faults/small-system.js';

/** The small system with its crop in the light of the climate. */
const smallSystem = lit.replace(', light: 30 mol/m2/d', '');

const parameters = createParameters();
const perMegajoule = parameters.value('light.per-radiation');

const withLight = (light: string): string =>
  light === '' ? smallSystem : smallSystem.replace('climate:\n', `climate:\n  light: ${light}\n`);

function read(light: string, own = '', days = 40) {
  const text = withLight(light);
  const grown =
    own === '' ? text : text.replace('crop: lettuce-butterhead,', `crop: lettuce-butterhead, ${own},`);
  return readScenarioFully(grown, { file: 'small.yaml', days });
}

const on = ({ scenario }: ReturnType<typeof read>, value: DailyValue | undefined, day = 0): number =>
  value === undefined ? Number.NaN : valueOn(value, scenario.startDate, day);
const lightOf = (reading: ReturnType<typeof read>, day = 0): number =>
  on(reading, reading.scenario.light, day);

describe('light on the crops', () => {
  it('is as written', () => {
    expect(lightOf(read('17 mol/m2/d'))).toBe(17);
    expect(lightOf(read('200 umol/m2/s'))).toBeCloseTo(17.28, 10);
    expect(read('17 mol/m2/d').notes).toEqual([]);
  });

  it('is what cover and cloth leave of the sky, and lamps', () => {
    const reading = read(
      '{ outdoors: 40 mol/m2/d, cover: 60 %, shade: 50 %, lamps: { hours: 6 h, level: 100 umol/m2/s } }',
    );
    expect(lightOf(reading)).toBeCloseTo(40 * 0.6 * 0.5 + 0.25 * 8.64, 10);
  });

  it('comes of solar radiation, 2.02 mol per MJ', () => {
    expect(lightOf(read('{ radiation: 20 MJ/m2/d }'))).toBeCloseTo(20 * perMegajoule, 10);
  });

  it('comes of latitude and sunshine by FAO-56: 16.3 MJ/m2/d of 25.1 above with 7.1 h of 10.9 (example 10)', () => {
    // Rio de Janeiro, 22.9 S in May: Rs = (0.25 + 0.5 x 7.1/10.9) 25.1 = 14.5 MJ/m2/d.
    const reading = read('{ latitude: -22.9, sunshine: 7.1 h }', '', 90);
    // The run starts on 1 March; 15 May is its day 75.
    expect(lightOf(reading, 75) / perMegajoule).toBeCloseTo(14.5, 1);
  });

  it('is that of the tables where nothing is said, and that is said', () => {
    const reading = read('');
    expect(lightOf(reading)).toBeCloseTo(parameters.value('light.outdoors'), 10);
    const cover = parameters.value('light.cover');
    const house = readScenarioFully(smallSystem.replace('et0:', 'greenhouse-factor: 70 %\n  et0:'), {
      file: 'small.yaml',
    });
    expect(lightOf(house)).toBeCloseTo(parameters.value('light.outdoors') * cover, 10);
    expect(reading.notes.join()).toContain('climate.light: not written');
  });

  it('of a planting takes the place of that of the climate, or comes down through what stands over it', () => {
    const alone = read('20 mol/m2/d', 'light: 12 mol/m2/d');
    expect(on(alone, alone.scenario.plantings[0].light)).toBe(12);
    const cloth = read('20 mol/m2/d', 'light: { shade: 50 % }');
    expect(on(cloth, cloth.scenario.plantings[0].light)).toBe(10);
    const left = 1 - 0.5 * parameters.value('light.shade-water');
    expect(on(cloth, cloth.scenario.plantings[0].shelter)).toBeCloseTo(left, 12);
  });

  it('under cloth saves water of the whole house', () => {
    const [open, shaded] = ['{ outdoors: 40 mol/m2/d }', '{ outdoors: 40 mol/m2/d, shade: 50 % }'].map(
      (light) => read(light),
    );
    const left = 1 - 0.5 * parameters.value('light.shade-water');
    expect(on(shaded, shaded.scenario.et0) / on(open, open.scenario.et0)).toBeCloseTo(left, 12);
  });

  it.each([
    ['{ outdoors: 40 mol/m2/d, radiation: 20 MJ/m2/d }', 'light outdoors given twice'],
    ['{ latitude: 40 }', 'missing'],
    ['400 mol/m2/d', 'out of range'],
    ['20 MJ/m2/d', 'wrong dimension: this is a solar radiation'],
    ['{ shade: 120 % }', 'out of range'],
  ])('%s is refused: %s', (light, problem) => {
    expect(messagesOf(withLight(light)).join()).toContain(problem);
  });
});
