import type { Words } from '../en.js';

/** Words inside units, longest first. */
const unitWords: readonly (readonly [RegExp, string])[] = [
  [/ as /, ' como '],
  [/ dry\b/, ' en seco'],
  [/ fresh\b/, ' en fresco'],
  [/^fish$/, 'peces'],
  [/^plants?$/, 'plantas'],
  [/\/week$/, '/semana'],
];

export const text: Words['text'] = {
  none: '-',
  infinite: 'inf',
  unit: (unit) => unitWords.reduce((told, [from, to]) => told.replace(from, to), unit),
  spans: {
    minutes: (count) => `${count} min`,
    hours: (count) => `${count} h`,
    day: (count) => `${count} d`,
    days: (count) => `${count} días`,
    weeks: (count) => `${count} semanas`,
    months: (count) => `${count} meses`,
    years: (count) => `${count} años`,
  },
  wholeSystem: 'todo el sistema',
  inPlace: (what, place) => `${what} en ${place}`,
  ofGroup: (what, group) => `${what} de ${group}`,
  limits: {
    tooLittle: 'muy poco',
    tooLittleChloride: 'muy poco cloruro frente al nitrito',
    label: (whom, direction) => `${whom}: ${direction === 'above' ? 'máximo' : 'mínimo'}`,
  },
  actions: {
    every: (days) => `cada ${days} d`,
    dose: (mass, product, vessel, often) => `${mass} de ${product} en ${vessel} ${often}`,
    drainSolids: (share, vessel, water, often) => `${share} de los sólidos de ${vessel} y ${water} ${often}`,
    changeWater: (much, vessel, water, often) => `${much} de ${vessel} cambiado por ${water} ${often}`,
  },
  after: {
    head: 'después de lo ocurrido',
    harm: { lethal: ' (mortal)', harmful: ' (los daña)' },
    passed: (what, harm, span) => `${what}${harm} al cabo de ${span}`,
    times: (kind, count) => `${kind} (${count} veces)`,
    held: (kinds) => `no se pasó ningún límite para los peces en 3 días (o hasta el final) tras ${kinds}`,
  },
  changes: {
    none: (section, was) => `sin ${section} (${was})`,
    instead: (now, was) => `${now} en lugar de ${was}`,
    more: (count) => `${count} más`,
    shares: {
      nothing: 'reducido a nada',
      quarter: 'reducido a la cuarta parte',
      third: 'reducido a un tercio',
      half: 'reducido a la mitad',
      double: 'duplicado',
      treble: 'el triple de lo que era',
    },
    toShare: (share) => `${share < 100 ? 'reducido' : 'aumentado'} al ${share} %`,
    sized: (what, how, to, from) => `${what}: ${how} (${to}, antes ${from})`,
    meanings: {
      'fish ration': (name) => `alimento de ${name}`,
      'fish number': (name) => `número de peces de ${name}`,
      'fish mass': (name) => `tamaño de los peces de ${name}`,
      'plantings area': (name) => `superficie de ${name}`,
      'vessels volume': (name) => `volumen de ${name}`,
      'vessels aeration': (name) => `aire de ${name}`,
      'vessels media': (name) => `medio filtrante de ${name}`,
      'pumps inlet': (name) => `toma de la bomba ${name}`,
    },
    gone: (name) => `sin ${name}`,
    nobodyDoses: (what) => `nadie dosifica${what === '' ? '' : ` ${what}`}`,
    dosed: (what, how) => `se dosifica ${what} (${how})`,
    notEmpty: (name) => `${name} no queda vacío`,
    emptyFrom: (name, from) => `${name} queda vacío desde ${from}`,
    emptyUntil: (name, from, until) => `${name} queda vacío desde ${from} hasta ${until}`,
  },
  costs: {
    spent: 'gastado',
    earned: 'ingresado',
    line: (name, money, list) => `${name}: ${money} (${list})`,
    left: (money) => `queda: ${money}, de lo que tiene precio; sin contar existencias ni obra`,
  },
  sweep: {
    margin: (condition, unit) => `margen de "${condition}", ${unit}`,
    shares: 'partes del límite',
  },
  cautions: [
    'Es un modelo de tanques bien mezclados con promedios publicados: mida su propia agua antes de actuar.',
    'Bienestar de los peces, inocuidad de los alimentos y vertidos: deciden las normas locales y los profesionales con licencia, no este cálculo.',
    'Electricidad cerca del agua, dosis cáusticas (queman): profesionales con licencia, equipo de protección, dosis pequeñas.',
  ],
};
