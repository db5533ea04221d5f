import { createParameters } from '@leat/core';
import { oxygenSaturation } from '../../../packages/core/src/chemistry/gases.js';
import { about, nearPrinted } from '../tolerance.js';
import { pressureShare } from '../../../packages/core/src/weather/penman-monteith.js';
import type { PublishedCheck, Topic } from '../published-check.js';

const parameters = createParameters();

/** From 0 degC on, one a degree. */
const handbook =
  '14.62 14.22 13.83 13.46 13.11 12.77 12.45 12.14 11.84 11.56 11.29 11.03 10.78 10.54 10.31 10.08 9.87 9.66 9.47 ' +
  '9.28 9.09 8.91 8.74 8.58 8.42 8.26 8.11 7.97 7.83 7.69 7.56 7.43 7.30 7.18 7.06 6.95';
const standard =
  '14.6 14.2 13.8 13.5 13.1 12.8 12.5 12.2 11.8 11.6 11.3 11.0 10.8 10.5 10.3 10.1 9.87 9.66 9.47 9.28 9.09 8.91 ' +
  '8.74 8.58 8.42 8.26 8.11 7.97 7.83 7.69 7.56';
const computed: readonly (readonly [temperature: number, text: string])[] = [
  [0, '14.621'],
  [5, '12.771'],
  [10, '11.288'],
  [15, '10.084'],
  [20, '9.092'],
  [25, '8.263'],
  [30, '7.559'],
  [35, '6.949'],
];

function check(
  from: Pick<PublishedCheck, 'source' | 'where' | 'mark'>,
  temperature: number,
  held: ReturnType<typeof nearPrinted>,
): PublishedCheck {
  return {
    id: `oxygen-${from.source}-${temperature}`,
    ...from,
    what: `oxygen at saturation, fresh water, 1 atm, ${temperature} degC`,
    unit: 'mg/L',
    ...held,
    compute: () => oxygenSaturation(parameters, temperature),
  };
}

/** By height, mg/L: 0 to 1800 m above the sea by 300. */
const byHeight: readonly (readonly [temperature: number, row: string])[] = [
  [10, '11.3 10.9 10.5 10.1 9.7 9.4 9.0'],
  [20, '9.1 8.8 8.4 8.1 7.8 7.5 7.3'],
  [25, '8.3 8.0 7.7 7.4 7.1 6.8 6.6'],
  [30, '7.6 7.3 7.0 6.8 6.5 6.3 6.0'],
];

/** Half a place of what is printed, and what the pressure it was printed for may differ by. */
const besideHeight = 0.12;

/** Oxygen at saturation. */
export const oxygen: Topic = {
  title: 'Oxygen at saturation',
  kind: 'formula',
  checks: [
    ...standard
      .split(' ')
      .map((text, t) =>
        check({ source: 'en-25814', where: 'saturation table', mark: 'R' }, t, nearPrinted(text)),
      ),
    ...handbook
      .split(' ')
      .map((text, t) =>
        check({ source: 'apha-4500', where: 'table of solubility', mark: 'M' }, t, nearPrinted(text)),
      ),
    ...computed.map(([t, text]) =>
      check({ source: 'benson-krause-1984', where: 'equation', mark: 'C' }, t, nearPrinted(text)),
    ),
    ...byHeight.flatMap(([temperature, row]) =>
      row.split(' ').map((text, step): PublishedCheck => ({
        id: `oxygen-height-${temperature}-${step * 300}`,
        source: 'meter-altitude',
        where: 'table of saturation by height',
        mark: 'R',
        what: `oxygen at saturation, fresh water, ${step * 300} m above the sea, ${temperature} degC`,
        unit: 'mg/L',
        ...about(Number(text), besideHeight, 'mg/L'),
        compute: () => oxygenSaturation(parameters, temperature, pressureShare(parameters, step * 300)),
      })),
    ),
  ],
};
