import type { Words } from '../en.js';
import { terms } from './terms.js';

const quantities: Words['names']['quantities'] = {
  tan: 'TAN',
  'un-ionised-ammonia': 'amoníaco libre',
  'nitrite-felt': 'nitrito que el cloruro no frena',
};

/**
 * What a run writes of its events, as it is said in Spanish. Whole phrases first; numbers, units and the user's own names
 * stay as they are.
 */
const eventPhrases: readonly (readonly [RegExp, string])[] = [
  [
    /^all fish of (.+) are dead; leading cause: (.+)$/,
    'todos los peces de $1 han muerto; causa principal: $2',
  ],
  [/\bpower cut\b/g, 'corte de luz'],
  [
    /sucks air and stops: its vessel is down to the inlet/,
    'aspira aire y se para: su tanque ha bajado hasta la toma',
  ],
  [/^runs again$/, 'vuelve a funcionar'],
  [/ran dry: it loses no more than flows in/, 'se quedó sin agua: no pierde más de lo que entra'],
  [/^holds water again$/, 'vuelve a tener agua'],
  [/has given its last water/, 'dio su última agua'],
  [/has given what its cap allows/, 'dio lo que permite su tope'],
  [/([\d.]+) fish were asked for/g, 'se pidieron $1 peces'],
  [/([\d.]+ L) of water were asked for/g, 'se pidieron $1 de agua'],
  [/([\d.]+ m?k?g) were asked for/g, 'se pidieron $1'],
  [/([\d.]+) fish of ([\d.]+ g)/g, '$1 peces de $2'],
  [/([\d.]+) fish, ([\d.]+ g), to /g, '$1 peces, $2, a '],
  [/([\d.]+) fish\b/g, '$1 peces'],
  [/([\d.]+) of ([\d.]+) batches planted/, '$1 de $2 lotes plantados'],
  [/the others stand already/, 'los demás ya están en pie'],
  [/^cleared \((.*)\), left empty$/, 'levantado ($1), dejado vacío'],
  [/, replanted\b/g, ', replantado'],
  [/, left empty\b/g, ', dejado vacío'],
  [/ dry, with /g, ' en seco, con '],
  [/ of water\b/g, ' de agua'],
  [/ dry\b/g, ' en seco'],
  [/([\d.]+) % of the biofilm killed/, '$1 % de la biopelícula muerta'],
  [/([\d.]+) % of the biofilm, ([\d.]+) % of the solids/, '$1 % de la biopelícula, $2 % de los sólidos'],
  [/([\d.]+) % stunned/, '$1 % aturdida'],
  [/([\d.]+ L) for /, '$1 por '],
  [/([\d.]+ L) of /, '$1 de '],
  [/([\d.]+ L) ran over/, '$1 se desbordaron'],
  [/holds no longer, at its most/, 'ya no alcanza, en su máximo'],
  [/\breads\b/g, 'marca'],
  [/no longer above/g, 'ya no por encima de'],
  [/no longer below/g, 'ya no por debajo de'],
  [/not yet above/g, 'todavía no por encima de'],
  [/not yet below/g, 'todavía no por debajo de'],
  [/\babove\b/g, 'por encima de'],
  [/\bbelow\b/g, 'por debajo de'],
  [/\breleased\b/g, 'se suelta'],
  [/^cap /, 'tope '],
  [/^stopped\b/, 'cerrada'],
  [/^open\b/, 'abierta'],
  [/^planted\b/, 'plantado'],
  [/^changed\b/, 'cambiada'],
  [/^new ration\b/, 'ración nueva'],
  [/^ration x /, 'ración x '],
  [/^on\b/, 'en marcha'],
  [/^off\b/, 'parada'],
  [/^all of it/, 'todo'],
];

export const names: Words['names'] = {
  quantities,
  terms,
  other: (name) => name.replaceAll('-', ' '),
  eventText: (text) =>
    eventPhrases
      .reduce((told, [from, to]) => told.replace(from, to), text)
      .replace(/^([\d.]+ g) ([a-z-]+)/, (whole, mass: string, product: string) => {
        const told = terms[product] as string | undefined;
        return told === undefined ? whole : `${mass} de ${told}`;
      }),
  topUpWith: (water) => `reposición con ${water}`,
  keptIn: (store) => `se queda en ${store}`,
  drawnFrom: (store) => `sacado de ${store}`,
};
