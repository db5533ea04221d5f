import { choice, positive, quantity, section, share, word } from './values.js';
import { waterTemperature } from './water-temperature-schema.js';

const drain = section(
  {
    rate: positive('volume-flow', 'what the lower outlet passes'),
    to: positive('volume', 'volume it drains down to'),
  },
  'a second, lower outlet of a bed that floods and drains',
);

const media = section(
  {
    type: word('a medium of the library'),
    volume: positive('volume', 'bulk volume of the medium'),
  },
  'filling that carries biofilm',
);

/** Kinds of vessel; the kind sets the defaults of areas. */
const kinds = [
  'fish-tank',
  'settler',
  'screen',
  'biofilter',
  'media-bed',
  'raft-bed',
  'channel',
  'sump',
  'vessel',
] as const;

/** One vessel of `vessels`. */
export const vesselSchema = section(
  {
    kind: choice('what it is', kinds),
    volume: positive('volume', 'water it holds at its standpipe; for the reservoir, at its overflow'),
    area: positive('area', 'area of the water or bed seen from above').optional(),
    media: media.optional(),
    surface: quantity('area', 'wetted surface for biofilm, in place of walls and media reckoned').optional(),
    floor: quantity(
      'area',
      'floor on which solids settle; default: area, none where water keeps them moving',
    ).optional(),
    open: quantity('area', 'open water; default: area, none under rafts, media and lids').optional(),
    covered: quantity(
      'area',
      'covered water or wet media; default: area of a raft bed, media bed or channel',
    ).optional(),
    aeration: quantity('rate', 'oxygen transfer coefficient of the aeration at 20 degC').optional(),
    capture: share('share of the incoming solids caught', 'below-one').optional(),
    temperature: waterTemperature('water temperature; default: that of the climate').optional(),
    leak: quantity('volume-flow', 'steady loss of water').optional(),
    exchange: quantity('volume-flow', 'steady discharge for water exchange').optional(),
    drain: drain.optional(),
  },
  'a well-mixed vessel',
);
