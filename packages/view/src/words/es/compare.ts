import type { Words } from '../en.js';

const names = { nitrogen: 'el nitrógeno', water: 'el agua' };

export const compare: Words['compare'] = {
  otherwise: (name, first) => `${name} es distinto de ${first} en:`,
  saysTheSame: (name, first) => `${name} dice lo mismo que ${first}`,
  andMore: (count) => `y ${count} más`,
  notJudged: (name) => `${name} sin juzgar`,
  worst: (value, day) => `lo peor ${value} ${day}`,
  passed: (name, day, days, worst) => `${name} LO PASÓ desde ${day} durante ${days} d, ${worst}`,
  kept: (name, worst) => `${name} lo respetó, ${worst}`,
  limit: (bound, where, whom, source) => `${bound} en ${where}, para ${whom} [${source}]`,
  noLimits: 'límites que unos pasaron y otros no: ninguno',
  limits: 'límites que unos pasaron y otros no',
  more: (count) => `${count} más: véase --json`,
  unit: 'unidad',
  end: 'final',
  most: 'máx.',
  highest: 'máximo',
  farthest: 'más lejos',
  alike: (share, list) => `iguales dentro de ${share} %: ${list}`,
  cost: 'coste',
  spent: 'gastado',
  earned: 'ingresado',
  leftOver: 'queda',
  currencies: 'no son de una misma moneda: no se comparan entre sí',
  cameFrom: (what) => `${names[what]} vino de`,
  wentTo: (what) => `${names[what]} fue a`,
  never: (other, first, share) =>
    `${other} nunca difiere de ${first} en más del ${share} del máximo de una magnitud`,
  parting: (other, first, day, what, values, share) =>
    `${other} difiere de ${first} por primera vez el ${day}: ${what} es ${values[0]} frente a ${values[1]}, más del ` +
    `${share} de su máximo`,
  brokeOff: (name, day, kind) => `${name} SE INTERRUMPIÓ el ${day}: ${kind}. Su final está ahí.`,
  uneven: 'Los cálculos no duran lo mismo: cada final es el de su propio cálculo.',
  differences: 'primero las diferencias mayores, en porcentaje del mayor tamaño en cualquier cálculo',
};
