import type { Words } from '../en.js';

export const plot: Words['plot'] = {
  noCourse: (title) => `${title}: no hay nada que dibujar`,
  steady: (title, value) => `${title}: constante en ${value}`,
  day: (day) => `día ${day}`,
};
