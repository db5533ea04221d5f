import type { Words } from '../en.js';
import { plural } from '../plural.js';

const many = plural('es');

export const verdict: Words['verdict'] = {
  day: (day, date) => `día ${day} (${date})`,
  date: (day, month) => `${day} ${month}`,
  directions: { above: 'por encima de', below: 'por debajo de' },
  tooLittleChloride: 'muy poco cloruro frente al nitrito',
  nMore: (count) => `${count} más`,
  worst: (worst, day) => `, en el peor momento ${worst} el ${day}`,
  causes: {
    other: 'otras causas',
    cold: 'frío',
    heat: 'calor',
    oxygen: 'falta de oxígeno',
    'un-ionised ammonia': 'amoníaco libre',
    nitrite: 'nitrito',
    'carbon dioxide': 'dióxido de carbono',
  },
  all: 'todos',
  deadOf: (part, cohorts) => `${part} de ${cohorts}`,
  deadFrom: (parts, cause) => `${parts}, por ${cause}`,
  dead: (told) => ` Muertos: ${told}.`,
  lostOf: (count, cohort, day) => `${count} de ${cohort} desde el ${day}`,
  lost: (told) => ` Perdidos según el archivo: ${told}.`,
  from: (day) => ` desde el ${day}`,
  lasting: (span) => ` durante ${span}`,
  inPlaces: (what, places) => `${what} en ${places}`,
  also: (list) => `; además ${list}`,
  noForecast: 'Lo que sigue no es un pronóstico.',
  fish: {
    dead: (day, cause) => `Peces: la mitad o más, muertos el ${day}${cause}.`,
    lethal: (since, cause) => `Peces: en agua mortal${since}${cause}.`,
    'at-risk': (since, cause) => `Peces: en riesgo${since}${cause}.`,
    uncomfortable: (since, cause) => `Peces: a salvo, pero no a gusto${since}${cause}.`,
    safe: 'Peces: a salvo.',
  },
  perDay: (volume) => `${volume} al día`,
  water: {
    dry: (count, places, day) =>
      `${places} ${many(count, { one: 'se queda', other: 'se quedan' })} sin agua desde el ${day}`,
    pump: (pump, times, day, total) =>
      `la bomba ${pump} aspira aire ${times === 1 ? '' : `${times} veces `}desde el ${day}, ${total} en total`,
    low: (day, share) => `depósito bajo desde el ${day}, hasta el ${share} % de su nivel de flotador`,
    rainTank: (day) => `aljibe vacío el ${day}`,
    cap: (count, day) =>
      `tope de agua alcanzado ${count} ${many(count, { one: 'día', other: 'días' })} desde el ${day}`,
    line: (enough, perDay, more) => `Agua: ${enough ? 'suficiente' : 'escasa'}, ${perDay}${more}.`,
  },
  filter: {
    held: {
      young: 'sus bacterias aún no habían madurado',
      covered: 'lo que crece sobre la materia orgánica tapa sus bacterias',
      stunned: 'sus bacterias están aturdidas, por un baño o por falta de aire',
      oxygen: 'le falta oxígeno',
      carbon: 'le falta alcalinidad',
      acid: 'el agua es demasiado ácida para él',
      cold: 'demasiado frío',
      load: 'tiene más trabajo del que puede',
    },
    most: (ammonia, nitrite) => `amonio como máximo ${ammonia}, nitrito ${nitrite}`,
    by: { ammonia: 'amonio', nitrite: 'nitrito' },
    keepsUp: (most) => `Biofiltro: da abasto (${most}).`,
    behind: (day, why) => `se retrasa desde el ${day}${why}`,
    caughtUp: (behind, by, day, most) =>
      `Biofiltro: ${behind}; sobre todo en ${by}; vuelve a dar abasto desde el ${day} (${most}).`,
    toTheEnd: (behind, by, most) => `Biofiltro: ${behind}; sobre todo en ${by}, hasta el final (${most}).`,
    began: (why) => `el retraso del biofiltro${why}`,
  },
  crops: {
    dry: ' (en seco)',
    none: 'nada cosechado',
    harvested: (list) => `cosechados ${list}`,
    hungry: (share) => `falta nitrógeno el ${share} % del tiempo`,
    salt: (passed, whom, day) => `sal: ${passed} para ${whom} desde el ${day}`,
    line: (told) => `Cultivos: ${told}.`,
  },
  events: {
    powerCut: 'un corte de luz',
    pumpOff: (place) => `la parada de la bomba ${place}`,
    topUpStopped: 'el cierre de la reposición de agua',
    rainTankEmpty: 'el aljibe vacío',
    capReached: (place) => `el tope de agua de ${place} alcanzado`,
    pumpTrip: (place) => `la bomba ${place} aspirando aire`,
    dry: (place) => `${place} sin agua`,
    other: (kind, place, text) => `${kind} (${place}${text === '' ? '' : `: ${text}`})`,
  },
  began: {
    alone: (day, amiss) => ` Empezó el ${day} con ${amiss}.`,
    after: (span, event) => `${span} después de ${event}`,
    with: (event) => `con ${event}`,
    said: (before) => ` Empezó ${before}.`,
    whole: (day, amiss, before) => ` Empezó el ${day} con ${amiss}, ${before}.`,
  },
  pumpBefore: (pump, day) => ` La bomba ${pump} aspira aire desde el ${day}.`,
  brokenOff: (day) => `Interrumpido el ${day}: de lo que sigue no se sabe nada.`,
  outside: (day, what) =>
    `Sin pronóstico desde el ${day}: ${what}, donde lo que el modelo sabe no se ha medido.`,
  better: {
    alike: 'iguales',
    line: (fish, filter, water, harvest) =>
      `mejor en peces: ${fish}; en biofiltro: ${filter}; en agua: ${water}; en cosecha: ${harvest}`,
  },
  harvest: {
    head: 'cosecha',
    none: 'cosecha: ninguna',
    dry: (mass) => `${mass} en seco`,
    fresh: (mass) => `${mass} en fresco`,
    plants: (count) => `, ${count} plantas`,
    fish: (count, mass) => `${count} peces, ${mass}`,
    perArea: (mass, unit) => `${mass} por ${unit}`,
    perFeed: (mass, unit) => `${mass} por ${unit} de alimento`,
    perWater: (mass, unit) => `${mass} por ${unit} de agua`,
    byMonth: (unit) => `por mes, ${unit}`,
    all: (mass, per) => `cultivos en total: ${mass} en fresco, ${per}`,
  },
};
