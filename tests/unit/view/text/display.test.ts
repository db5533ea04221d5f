import { names, type RunVerdict, type SubjectGroup } from '@leat/core';
import { metric, readUnitChoice } from '@leat/core/units';
import {
  displayOf,
  dayNames,
  harvestLines,
  longSpan,
  percent,
  plain,
  plainDisplay,
  shown,
} from '@leat/view/text';
import { verdictLines } from '@leat/view/text';
import { describe, expect, it } from 'vitest';
import { actionKinds } from '../../../../packages/core/src/scenario/action-kinds.js';
import { plural } from '../../../../packages/view/src/words/plural.js';

const spanish = displayOf({ language: 'es', units: metric });
const units = (...words: string[]): ReturnType<typeof displayOf> =>
  displayOf({ language: 'en', units: readUnitChoice(words).choice });

const verdict: RunVerdict = {
  fish: {
    ...{ state: 'dead', from: 33 },
    troubles: [
      {
        ...{ quantity: 'nitrite', direction: 'above', value: 16.2, unit: 'mg N/L', whom: 'nile-tilapia' },
        ...{ places: ['tank-1', 'tank-2'], first: 31.5, total: 20, worst: 413.4, worstAt: 60 },
      },
    ],
    deaths: [{ cohort: 'growers', vessel: 'tank-1', share: 1, cause: 'nitrite', halfBy: 33 }],
  },
  water: { state: 'enough', lowDays: 0, perDay: 0.1365, capDays: 1, capFirst: 2, pumps: [], dry: [] },
  filter: { state: 'falls-behind', by: 'nitrite', ammonia: 0.5, nitrite: 0.2, from: 30, held: 'young' },
  crops: { harvested: [{ crop: 'basil', mass: 94_250, dry: false }], shortOfNitrogen: 0.25 },
};

describe('a display in Spanish', () => {
  it('tells a verdict in the words of the trade, with a decimal comma and Spanish months', () => {
    expect(verdictLines(verdict, '2025-10-01', spanish)).toEqual([
      'Peces: la mitad o más, muertos el día 33 (3 nov): nitrito por encima de 16,2 mg N/L en tank-1 y tank-2 desde el ' +
        'día 31,5 (1 nov). Muertos: todos de growers, por nitrito. Lo que sigue no es un pronóstico.',
      'Biofiltro: se retrasa desde el día 30 (31 oct), sus bacterias aún no habían madurado; sobre todo en nitrito, hasta ' +
        'el final (amonio como máximo 0,5, nitrito 0,2 mg N/L).',
      'Cultivos: falta nitrógeno el 25 % del tiempo; cosechados 94,3 kg de albahaca.',
      'Agua: suficiente, 137 L al día; tope de agua alcanzado 1 día desde el día 2 (3 oct).',
    ]);
  });

  it('joins lists as Spanish does, and counts in its plural forms', () => {
    expect(spanish.list(['nitrato', 'iones'])).toBe('nitrato e iones');
    const fish = (count: number): string => plural('es')(count, { one: 'pez', other: 'peces' });
    expect([0, 1, 2, 1.5].map(fish)).toEqual(['peces', 'pez', 'peces', 'peces']);
    expect([1, 2].map((count) => spanish.words.pictures.batches(count))).toEqual(['1 lote', '2 lotes']);
  });

  it('writes numbers with a comma and leaves dates alone', () => {
    expect(shown(0.05, spanish)).toBe('0,05');
    expect(shown(1.2e-7, spanish)).toBe('1,2e-7');
    expect(percent(0.256, spanish)).toBe('25,6 %');
    expect(longSpan(50, spanish)).toBe('7 semanas');
    expect(dayNames('2026-01-31', spanish)(1)).toBe('día 1 (1 feb)');
  });

  it('has a name for every fish, crop, water and product of the library and for every kind of action', () => {
    const groups: readonly SubjectGroup[] = ['fish', 'crop', 'water', 'dose'];
    const all = [...groups.flatMap((group) => names(group)), ...Object.keys(actionKinds)];
    expect(all.length).toBeGreaterThan(50);
    expect(all.filter((name) => spanish.words.names.terms[name] === undefined)).toEqual([]);
    expect(plain('rainbow-trout', spanish)).toBe('trucha arcoíris');
  });
});

describe('units of a display', () => {
  it('stand in the verdict: nitrogen as its ions, water in gallons, harvest in pounds', () => {
    const lines = verdictLines(verdict, '2025-10-01', units('us', 'mg/L as NO2', 'mg/L as NH4'));
    expect(lines[0]).toContain('nitrite above 53.2 mg/L as NO2');
    expect(lines[1]).toContain('(ammonia at most 0.644 mg/L as NH4, nitrite 0.657 mg/L as NO2)');
    expect(lines[2]).toContain('208 lb basil harvested');
    expect(lines[3]).toContain('36.1 gal a day');
  });

  it('stand in a harvest, its shares by area, feed and water too', () => {
    const harvest = {
      crops: [{ planting: 'bed', crop: 'basil', dry: 100, fresh: 1000, monthly: [] }],
      ...{ fish: [], fresh: 1000, area: 2, feed: 4000, water: 0.5 },
    } as unknown as Parameters<typeof harvestLines>[0];
    expect(harvestLines(harvest, units('us'))).toEqual([
      'harvest',
      '  bed (basil): 2.2 lb fresh',
      '  crops in all: 2.2 lb fresh, 0.102 lb per ft2, 0.25 lb per lb of feed, 0.0167 lb per gal of water',
    ]);
  });

  it('change nothing where none are chosen', () => {
    expect(verdictLines(verdict, '2025-10-01', units())).toEqual(
      verdictLines(verdict, '2025-10-01', plainDisplay),
    );
  });
});
