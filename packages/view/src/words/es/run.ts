import type { Words } from '../en.js';
import { plural } from '../plural.js';

const many = plural('es');

export const run: Words['run'] = {
  day: (day) => `d ${day}`,
  days: (count) => `${count} d`,
  dayAndDate: (day, date) => `d ${day} (${date})`,
  brokenOff: (day, kind) => `INTERRUMPIDO el ${day}: ${kind}. Lo que sigue termina ahí.`,
  head: {
    days: (days, start) => `${days} d desde ${start}`,
    goingOn: (from, to, start) => `día ${from} a ${to}, desde ${start}`,
    vessels: (count, volume) => `${count} ${many(count, { one: 'tanque', other: 'tanques' })}, ${volume}`,
    fish: (count) => `${count} ${many(count, { one: 'pez', other: 'peces' })}`,
    planted: (area) => `${area} plantados`,
    scenario: (hash) => `sistema ${hash}`,
  },
  keys: {
    where: 'dónde',
    unit: 'unidad',
    start: 'inicio',
    end: 'final',
    lowest: 'mínimo',
    highest: 'máximo',
    overTime: 'en el tiempo',
    water: 'agua',
    fish: 'peces',
    feed: 'alimento',
    crop: 'cultivo',
  },
  limits: {
    passed: 'límites pasados',
    limit: 'límite',
    worst: 'lo peor',
    where: 'dónde',
    first: 'primero',
    lasting: 'durante',
    whom: 'para quién',
    none: 'límites pasados: ninguno de los que se pudieron juzgar',
    more: (count) => `${count} más: véase --json`,
    unjudged: (count) =>
      `${count} sin juzgar: el cálculo es más corto que su promedio, o no había para quién`,
    blind: (days) =>
      `los promedios más cortos que el paso de salida (${days} d) solo se resuelven un día después de lo ocurrido`,
  },
  events: (list) => `ocurrido: ${list}`,
  count: (count, kind) => `${count} × ${kind}`,
  short: (day, kind, place, text) => `! ${day}, ${kind} (${place}): ${text}`,
  moreShort: (count) => `! ${count} más hicieron menos de lo pedido: véase --json`,
  cameFrom: { nitrogen: 'el nitrógeno vino de', water: 'el agua vino de' },
  wentTo: { nitrogen: 'el nitrógeno fue a', water: 'el agua fue a' },
  base: {
    used: (kind, amount, products, perFeed) =>
      `${kind === 'base' ? 'base' : 'ácido'} en uso: ${amount} eq/d (${products})${perFeed}`,
    into: (product, vessel) => `${product} en ${vessel}`,
    perFeed: (amount, unit) => `, ${amount} eq por ${unit} de alimento`,
    product: (mass, product) => `${mass} de ${product}`,
  },
};
