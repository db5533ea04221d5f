import type { Words } from '../en.js';
import { plural } from '../plural.js';

const many = plural('es');

export const pictures: Words['pictures'] = {
  titles: {
    tan: 'Nitrógeno amoniacal total (TAN)',
    'un-ionised-ammonia': 'Amoníaco libre (no ionizado)',
    nitrite: 'Nitrito',
    nitrate: 'Nitrato',
    pH: 'pH',
    alkalinity: 'Alcalinidad',
    oxygen: 'Oxígeno',
    chloride: 'Cloruro',
    volume: 'Nivel de agua',
    feed: 'Alimento dado',
    'fish-mass': 'Peces',
  },
  crops: (planting) => `Cultivos: ${planting}`,
  others: (count) => `otros ${count}`,
  batch: (number) => `lote ${number}`,
  batches: (count) => `${count} ${many(count, { one: 'lote', other: 'lotes' })}`,
  allOfIt: 'todo',
  allFish: 'todos los peces',
  keptIn: (store) => `en ${store}`,
  drawnFrom: (store) => `de ${store}`,
  rainTank: 'aljibe',
  tap: (kind) => kind.replace('reposición con ', ''),
  perDay: (amount) => `${amount}/d`,
  dayZero: (date, year) => `el día 0 es ${date} ${year}`,
  dayOfRun: 'día del cálculo',
  fromTo: (what, from, to) => `${what} de ${from} a ${to}`,
  days: (from, to) => `día ${from} a ${to}`,
  valuesOf: (count, path, from, to) => `${count} valores de ${path} de ${from} a ${to}`,
  edgeOf: (condition) => `borde de: ${condition}`,
  over: (asked, ranges) => `${asked} sobre ${ranges}`,
};
