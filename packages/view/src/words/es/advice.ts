import type { Words } from '../en.js';
import { plural } from '../plural.js';

const many = plural('es');

export const advice: Words['advice'] = {
  feed: (percent) => (percent >= 100 ? 'nada de alimento' : `${percent} % menos de alimento`),
  'harvest-fish': (percent, where) =>
    `sacar antes el ${percent} % de los peces de ${where}, y con ellos su alimento`,
  stagger: (where, span) => `sembrar ${where} en cuatro partes, cada ${span}`,
  fewer: (percent, where) => `${percent} % menos de peces al sembrar: ${where}`,
  'leave-empty': (count, where) =>
    `levantar ${where} y dejar ${many(count, { one: 'la cama vacía', other: 'las camas vacías' })}`,
  salt: (mass, where) => `${mass} de sal común una vez, en ${where}`,
  base: (mass, product) => `${mass} más de ${product} cada semana`,
  'top-up': (volume) => `reposición de ${volume} al día donde el tope es menor o está cerrada`,
  'change-water': (percent, where) => `cambiar cada día el ${percent} % del agua de ${where}`,
  air: (rate, where) => `más aire en ${where}: ${rate} 1/h (kLa) además del que hay`,
  media: (percent, where) => `${percent} % más de medio filtrante en ${where}`,
  shade: (percent) => `malla de sombra del ${percent} % sobre los cultivos`,
  heat: (temperature) => `calentar el agua a ${temperature} donde esté más fría`,
  gentler: (percent, where) =>
    percent >= 100
      ? `no tocar las bacterias de ${where} al limpiarlo o bañarlo`
      : `limpiar o bañar ${where} un ${percent} % más suavemente`,
  sooner: (stop, span) => `${stop}, terminado al cabo de ${span}`,
  'smaller-dose': (percent, product) =>
    percent >= 100 ? `nada de ${product}` : `${percent} % menos de ${product}`,
  stops: {
    'power-cut': 'el corte de luz',
    'pump-off': 'el paro de la bomba',
    'air-off': 'el paro del aire',
    'control-off': 'el paro del dosificador',
    'top-up': 'el cierre de la reposición',
  },
  kinds: {
    feed: 'menos alimento',
    'harvest-fish': 'sacar peces antes',
    stagger: 'siembra escalonada',
    fewer: 'menos peces',
    'leave-empty': 'camas vacías',
    salt: 'sal común',
    base: 'más base',
    'top-up': 'más reposición',
    'change-water': 'cambios de agua',
    air: 'más aire',
    media: 'más medio filtrante',
    shade: 'malla de sombra',
    heat: 'agua más caliente',
    gentler: 'limpieza más suave',
    sooner: 'un paro más corto',
    'smaller-dose': 'dosis menores',
  },
  fromTheStart: (what) => `${what}, desde el inicio`,
  on: (what, day) => `${what} el ${day}`,
  toTheEnd: (what, from) => `${what} desde el ${from} hasta el final`,
  until: (what, from, until) => `${what} desde el ${from} hasta el ${until}`,
  was: (now, was) => `${now} (antes ${was})`,
  yields: {
    crops: (mass) => `cultivos ${mass}`,
    fish: (mass) => `aumento de los peces ${mass}`,
    feed: (mass) => `alimento ${mass}`,
    water: (volume) => `agua ${volume}`,
  },
};
