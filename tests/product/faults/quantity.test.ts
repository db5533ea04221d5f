import { expect, it, describe } from 'vitest';
import { edited, messagesOf } from './small-system.js';

/** What is changed in the small system, and every message that follows. */
const cases: { name: string; edits: [string, string][]; messages: string[] }[] = [
  {
    name: 'a bare number where a unit is needed',
    edits: [['volume: 500 L', 'volume: 500']],
    messages: [
      'small.yaml:12:31: vessels.sump.volume: a number without a unit; got 500; expected a volume such as "1.8 m3" or "450 L"',
    ],
  },
  {
    name: 'a quoted bare number',
    edits: [['volume: 500 L', "volume: '500'"]],
    messages: [
      'small.yaml:12:31: vessels.sump.volume: a number without a unit; got "500"; expected a volume such as "1.8 m3" or "450 L"',
    ],
  },
  {
    name: 'a wrong dimension',
    edits: [['volume: 500 L', 'volume: 500 kg']],
    messages: [
      'small.yaml:12:31: vessels.sump.volume: wrong dimension: this is a mass; got "500 kg"; expected a volume such as "1.8 m3" or "450 L"',
    ],
  },
  {
    name: 'an unknown unit',
    edits: [['volume: 500 L', 'volume: 500 litrs']],
    messages: [
      'small.yaml:12:31: vessels.sump.volume: unknown unit "litrs"; got "500 litrs"; expected a volume such as "1.8 m3" or "450 L"; did you mean litre?',
    ],
  },
  {
    name: 'a unit that resembles none',
    edits: [['volume: 500 L', 'volume: 500 bushels']],
    messages: [
      'small.yaml:12:31: vessels.sump.volume: unknown unit "bushels"; got "500 bushels"; expected a volume such as "1.8 m3" or "450 L"',
    ],
  },
  {
    name: 'nitrogen as bare mg/L',
    edits: [['nitrate: 1 mg N/L', 'nitrate: 1 mg/L']],
    messages: [
      'small.yaml:8:21: waters.mains.nitrate: ambiguous unit: it may mean nitrogen or the whole ion; got "1 mg/L"; expected "mg N/L" for nitrogen or "mg/L as NO3" for the ion',
    ],
  },
  {
    name: 'ammonia as bare ppm',
    edits: [['nitrate: 1 mg N/L', 'nitrate: 1 mg N/L, ammonia: 0.5 ppm']],
    messages: [
      'small.yaml:8:40: waters.mains.ammonia: ambiguous unit: it may mean nitrogen or the whole ion; got "0.5 ppm"; expected "mg N/L" for nitrogen or "mg/L as NH4" for the ion',
    ],
  },
  {
    name: 'ammonia as nitrate',
    edits: [['nitrate: 1 mg N/L', 'nitrate: 1 mg N/L, ammonia: 0.5 mg/L as NO3']],
    messages: [
      'small.yaml:8:40: waters.mains.ammonia: wrong dimension: this is a nitrate nitrogen; got "0.5 mg/L as NO3"; expected an ammonia nitrogen such as "0.5 mg N/L" or "0.6 mg/L as NH4"',
    ],
  },
  {
    name: 'alkalinity as bare mg/L',
    edits: [['alkalinity: 2 meq/L', 'alkalinity: 100 mg/L']],
    messages: [
      'small.yaml:8:43: waters.mains.alkalinity: ambiguous unit: it does not say as what; got "100 mg/L"; expected an alkalinity such as "100 mg/L as CaCO3" or "5.6 dKH"',
    ],
  },
  {
    name: 'a negative volume',
    edits: [['volume: 500 L', 'volume: -500 L']],
    messages: [
      'small.yaml:12:31: vessels.sump.volume: negative; got "-500 L"; expected a volume such as "1.8 m3" or "450 L"',
    ],
  },
  {
    name: 'a zero volume',
    edits: [['volume: 500 L', 'volume: 0 L']],
    messages: [
      'small.yaml:12:31: vessels.sump.volume: must be more than zero; got "0 L"; expected a volume such as "1.8 m3" or "450 L"',
    ],
  },
  {
    name: 'a decimal comma',
    edits: [['volume: 500 L', 'volume: "0,5 m3"']],
    messages: [
      'small.yaml:12:31: vessels.sump.volume: a comma in a number: write a decimal point and no thousands separator; got "0,5 m3"; expected a volume such as "1.8 m3" or "450 L"',
    ],
  },
  {
    name: 'not a number',
    edits: [['volume: 500 L', 'volume: .nan']],
    messages: [
      'small.yaml:12:31: vessels.sump.volume: not a finite number; got .nan; expected a volume such as "1.8 m3" or "450 L"',
    ],
  },
  {
    name: 'NaN with a unit',
    edits: [['volume: 500 L', 'volume: NaN L']],
    messages: [
      'small.yaml:12:31: vessels.sump.volume: not a finite number; got "NaN L"; expected a volume such as "1.8 m3" or "450 L"',
    ],
  },
  {
    name: 'infinite',
    edits: [['volume: 500 L', 'volume: 1e999 L']],
    messages: [
      'small.yaml:12:31: vessels.sump.volume: not a finite number; got "1e999 L"; expected a volume such as "1.8 m3" or "450 L"',
    ],
  },
  {
    name: 'a word for a number',
    edits: [['volume: 500 L', 'volume: plenty']],
    messages: [
      'small.yaml:12:31: vessels.sump.volume: not a quantity; got "plenty"; expected a volume such as "1.8 m3" or "450 L"',
    ],
  },
  {
    name: 'a list for a quantity',
    edits: [['volume: 500 L', 'volume: [500 L]']],
    messages: [
      'small.yaml:12:23: vessels.sump.volume: wrong kind of value; got a list of 1; expected a volume such as "1.8 m3" or "450 L"',
    ],
  },
  {
    name: 'a pH out of range',
    edits: [['pH: 7.5', 'pH: 75']],
    messages: ['small.yaml:8:56: waters.mains.pH: out of range; got 75; expected a number from 4 to 10.5'],
  },
  {
    name: 'a share over 1',
    edits: [['volume: 500 L', 'volume: 500 L, capture: 140 %']],
    messages: [
      'small.yaml:12:47: vessels.sump.capture: out of range; got "140 %"; expected a share from 0 to below 1, such as "60 %" or 0.6',
    ],
  },
  {
    name: 'capture of everything',
    edits: [['volume: 500 L', 'volume: 500 L, capture: 1']],
    messages: [
      'small.yaml:12:47: vessels.sump.capture: out of range; got 1; expected a share from 0 to below 1, such as "60 %" or 0.6',
    ],
  },
  {
    name: 'water as hot as tea',
    edits: [['24 degC', '75 degC']],
    messages: [
      'small.yaml:5:22: climate.water-temperature: out of range; got "75 degC"; expected 0 degC to 45 degC',
    ],
  },
  {
    name: 'a bare daily value',
    edits: [['et0: 4 mm/d', 'et0: 4']],
    messages: [
      'small.yaml:6:8: climate.et0: a number without a unit; got 4; expected a depth of water a day such as "5 mm/d" or "0.2 in/d", or a map of monthly, daily or csv',
    ],
  },
  {
    name: 'eleven months',
    edits: [['et0: 4 mm/d', 'et0: { monthly: [1,2,3,4,5,6,7,8,9,10,11], unit: mm/d }']],
    messages: ['small.yaml:6:10: climate.et0.monthly: not twelve values; expected January to December'],
  },
  {
    name: 'monthly numbers without a unit',
    edits: [
      [
        'et0: 4 mm/d',
        'et0: { monthly: [1 mm/d, 2, 3 mm/d, 4 mm/d, 5 mm/d, 6 mm/d, 7 mm/d, 8 mm/d, 9 mm/d, 9 mm/d, 9 mm/d, 9 mm/d] }',
      ],
    ],
    messages: [
      'small.yaml:6:28: climate.et0.monthly[1]: a number without a unit; got 2; expected a depth of water a day such as "5 mm/d" or "0.2 in/d", or `unit` beside the list',
    ],
  },
  {
    name: 'a ration of another kind',
    edits: [['ration: 80 g/d', 'ration: 80 g']],
    messages: [
      'small.yaml:21:97: fish.tilapia.ration: wrong dimension: this is a mass; got "80 g"; expected a ration such as "80 g/d" or "1.5 %/d", or a table of mass and ration',
    ],
  },
  {
    name: 'a pH that no carbon content gives',
    edits: [['alkalinity: 2 meq/L, pH: 7.5', 'alkalinity: 0 meq/L, pH: 9']],
    messages: [
      'small.yaml:8:56: waters.mains.pH: no water of this alkalinity has this pH; got 9; expected a lower pH, or more alkalinity',
    ],
  },
];

describe('messages about values and their units', () => {
  it.each(cases)('$name', ({ edits, messages }) => {
    expect(messagesOf(edited(...edits))).toEqual(messages);
  });
});
