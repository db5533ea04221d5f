import type { Words } from '../en.js';

/** Un plan: cuánto de varias cosas, y qué hacer semana a semana. */
export const plan: Words['plan'] = {
  quantities: { beds: 'superficie plantada', fish: 'peces al comienzo' },
  forAim: (aim, amount) => `Plan para ${aim}: ${amount}`.trimEnd(),
  none: 'Ninguna elección cumple todas las condiciones. La que más se acerca:',
  lookedAt: (from, to) => `se miró de ${from} a ${to}`,
  moreMayDo: 'el extremo: puede caber más',
  lessMayDo: 'el extremo: puede bastar menos',
  gives: 'da',
  here: 'aquí',
  inDraws: (count) => `en ${count} sorteos`,
  spread: (low, high) => `${low} a ${high}`,
  cropsFresh: 'cultivos, en fresco',
  fishGained: 'peces ganados',
  feed: 'alimento',
  waterIn: 'agua tomada',
  kept: (count, of, seed) =>
    `en ${count} de ${of} sorteos de los números inciertos (semilla ${seed}) se cumplen todas las condiciones` +
    (count < of ? ': quédese por debajo donde no pueda vigilarlo' : ''),
  fishAtStart: (list) => `peces al comienzo: ${list}`,
  ofMass: (cohort, count, mass) => `${cohort} ${count} de ${mass}`,
  bedsAtStart: (list) => `en las camas al comienzo: ${list}`,
  bed: (planting, area, plants) => `${planting} ${area} (${plants} plantas)`,
  week: 'semana',
  weeks: (from, to) => (from === to ? `semana ${from}` : `semanas ${from} a ${to}`),
  from: 'desde',
  setOut: (area) => `plantones que poner (plantas, o ${area})`,
  bedsGive: (mass) => `las camas dan, ${mass}`,
  feedWeekly: (mass) => `alimento, ${mass} al día en la media de la semana`,
  fishInAndOut: 'peces que entran y salen',
  fishIn: (count, cohort) => `entran ${count} ${cohort}`,
  fishOut: (count, cohort, mass) => `salen ${count} ${cohort} (${mass})`,
  doses: 'dosis',
  dose: (mass, product, vessel) => `${mass} de ${product} en ${vessel}`,
  dosers: (list) => `además los dosificadores, por semana: ${list}`,
};
