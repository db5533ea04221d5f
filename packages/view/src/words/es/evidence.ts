import type { Words } from '../en.js';
import { plural } from '../plural.js';

const many = plural('es');

export const evidence: Words['evidence'] = {
  differences: {
    title: 'En qué difieren los cálculos, y por qué',
    never: (other, first, share) =>
      `${other} nunca difiere de ${first} en más del ${share} del máximo de una magnitud.`,
    first: (other, first, day, what, now, was) =>
      `${other} difiere de ${first} por primera vez el ${day}: ${what} es ${now} frente a ${was}.`,
    quantity: 'magnitud',
    unit: 'unidad',
    end: (letter) => `${letter} final`,
    highest: (letter) => `${letter} máximo`,
    farthest: 'mayor diferencia',
    sideBySide: 'Magnitudes principales, una junto a otra',
    caption: 'Primero las diferencias mayores, en porcentaje del mayor tamaño en cualquier cálculo',
    fromDay: (day, days) => `desde el ${day}, ${days} d`,
    held: 'respetado',
    limits: 'Límites que unos pasaron y otros no',
    saved: (one, other) =>
      `${one} y ${other}: a un documento guardado no se le puede preguntar por qué; haga el informe con los archivos del sistema.`,
    why: (other, first) => `Por qué ${other} difiere de ${first} `,
    nothing: 'Nada difiere lo bastante para preguntar por qué.',
    note: 'Cada una en el día en que más difiere. A la derecha: la subió; a la izquierda: la bajó. Las partes suman la diferencia.',
    smaller: (count) => `${count} menores`,
    reasons: (what, day, from, to, unit) =>
      `${what}, ${day}: ${from[0]} en ${from[1]}, ${to[0]} en ${to[1]} (${unit}). Qué hizo la diferencia:`,
    difference: 'diferencia',
  },
  chances: {
    title: 'Qué tan seguros estamos',
    runs: (count) => `${count} cálculos`,
    partOf: (ran, members) => `${ran} de ${members} cálculos`,
    failed: (count, first, reason) =>
      ` ${count} se interrumpieron y no están en ninguna banda; el primero, ${first}, por: ${reason}.`,
    drawn: (part, numbers, method, seed, failed) =>
      `${part}, cada uno con ${numbers} números sorteados dentro de sus rangos publicados (${method}, semilla ${seed}).${failed} ` +
      'Las bandas contienen lo que esos rangos dejan abierto, no lo que el modelo deja fuera.',
    band: (median, low, high) => `${median} (${low} a ${high})`,
    when: (day, days, source) => `primero el día ${day}, durante ${days} d; ${source}`,
    limit: (bound, place, whom) => `${bound}, ${place}, para ${whom}`,
    limitColumn: 'límite; día y duración: mediana y banda del 90 %',
    caption: 'Parte de los cálculos en que se pasó un límite',
    passedNone: (count) =>
      `${count} ${many(count, { one: 'límite no se pasó', other: 'límites no se pasaron' })} en ninguno.`,
    judgedNone: (count) =>
      `${count} ${many(count, { one: 'límite no se pudo juzgar', other: 'límites no se pudieron juzgar' })} en ninguno.`,
    reach: (low, high) => `${low} a ${high}`,
    margin: (text) => `margen de: ${text}`,
    asked: 'preguntado',
    holdsIn: 'se cumple en',
    median: 'mediana',
    band50: 'banda del 50 %',
    band90: 'banda del 90 %',
    answered: 'cálculos con respuesta',
    table: 'Qué se preguntó de cada cálculo',
  },
  basis: {
    title: 'En qué se apoya esto',
    assumed: 'Supuesto',
    always: [
      'Cada tanque está bien mezclado: sin rincones muertos, sin capas.',
      'Peces, cultivos y bacterias se portan como los promedios publicados de su clase; sin enfermedades, sin plagas, sin falta de luz.',
      'Se siguen nitrógeno, carbono, oxígeno, acidez, cloruro, calcio y agua; no fósforo, hierro ni potasio.',
      'Lo que aquí no tiene valor publicado lleva la marca de práctica común o de memoria.',
    ],
    sources: 'De dónde vienen los números',
    sourcesNote: 'Cada una se abre y muestra los números que vienen de ella.',
    given: (where) => ` (dado en ${where})`,
    manifest: 'Manifiesto',
    manifestCaption: 'Lo que debe ser igual para obtener los mismos bytes',
    columns: {
      run: 'cálculo',
      file: 'archivo',
      version: 'Leat',
      scenario: 'sistema (SHA-256)',
      integrator: 'integrador',
      tolerance: 'tolerancia',
      seed: 'semilla',
      over: 'puesto sobre el archivo',
      ended: 'terminó',
    },
    endings: {
      done: 'completo',
      'step-too-small': 'paso demasiado pequeño',
      'too-many-steps': 'demasiados pasos',
      'not-finite': 'número no finito',
      singular: 'sistema singular',
      chattering: 'una regla que oscila',
      'negative-state': 'cantidad negativa',
    },
    noneDrawn: 'ninguna',
    none: 'nada',
    cautions: 'Precauciones',
  },
};
