import { plural } from '../plural.js';

const many = plural('en');

/** What a verdict says of fish, water, filter and crops. */
export const verdict = {
  day: (day: string, date: string): string => `day ${day} (${date})`,
  date: (day: number, month: string): string => `${day} ${month}`,
  directions: { above: 'above', below: 'below' },
  tooLittleChloride: 'too little chloride against nitrite',
  nMore: (count: number): string => `${count} more`,
  worst: (worst: string, day: string): string => `, at worst ${worst} on ${day}`,
  causes: {
    other: 'other causes',
    cold: 'cold',
    heat: 'heat',
    oxygen: 'want of oxygen',
    'un-ionised ammonia': 'un-ionised ammonia',
    nitrite: 'nitrite',
    'carbon dioxide': 'carbon dioxide',
  },
  all: 'all',
  deadOf: (part: string, cohorts: string): string => `${part} of ${cohorts}`,
  deadFrom: (parts: string, cause: string): string => `${parts}, of ${cause}`,
  dead: (told: string): string => ` Dead: ${told}.`,
  lostOf: (count: string, cohort: string, day: string): string => `${count} of ${cohort} from ${day}`,
  lost: (told: string): string => ` Lost as the file says: ${told}.`,
  uneatenOf: (share: number, cohort: string, until?: string): string =>
    `${share} % of that of ${cohort}${until === undefined ? '' : ` until ${until}`}`,
  thinOf: (cohort: string, share: number, from: string, until: string): string =>
    `${cohort} by ${share} % from ${from} to ${until}`,
  thin: (told: string): string => ` Lighter: ${told}.`,
  uneaten: (told: string): string => `Feed: not eaten, ${told}.`,
  from: (day: string): string => ` from ${day}`,
  lasting: (span: string): string => ` for ${span}`,
  inPlaces: (what: string, places: string): string => `${what} in ${places}`,
  also: (list: string): string => `; also ${list}`,
  noForecast: 'What follows is no forecast.',
  fish: {
    dead: (day: string, cause: string): string => `Fish: half or more dead by ${day}${cause}.`,
    lethal: (since: string, cause: string): string => `Fish: in deadly water${since}${cause}.`,
    'at-risk': (since: string, cause: string): string => `Fish: at risk${since}${cause}.`,
    uncomfortable: (since: string, cause: string): string => `Fish: safe, but not at ease${since}${cause}.`,
    safe: 'Fish: safe.',
  },
  perDay: (volume: string): string => `${volume} a day`,
  water: {
    dry: (count: number, places: string, day: string): string =>
      `${places} ${many(count, { one: 'runs', other: 'run' })} dry from ${day}`,
    pump: (pump: string, times: number, day: string, total: string): string =>
      `pump ${pump} sucks air ${times === 1 ? '' : `${times} times `}from ${day}, ${total} in all`,
    low: (day: string, share: number): string =>
      `reservoir low from ${day}, down to ${share} % of its float level`,
    over: (volume: string): string => `${volume} runs over the rim of the reservoir`,
    rainTank: (day: string): string => `rain tank empty on ${day}`,
    cap: (count: number, day: string): string =>
      `cap reached on ${count} ${many(count, { one: 'day', other: 'days' })} from ${day}`,
    line: (enough: boolean, perDay: string, more: string): string =>
      `Water: ${enough ? 'enough' : 'short'}, ${perDay}${more}.`,
  },
  filter: {
    held: {
      young: 'its bacteria were not grown in',
      covered: 'what grows on organic matter covers its bacteria',
      stunned: 'its bacteria are stunned, by a bath or for want of air',
      oxygen: 'short of oxygen',
      carbon: 'short of alkalinity',
      acid: 'the water too acid for it',
      cold: 'too cold',
      load: 'more to do than it can',
    },
    most: (ammonia: string, nitrite: string): string => `ammonia at most ${ammonia}, nitrite ${nitrite}`,
    by: { ammonia: 'ammonia', nitrite: 'nitrite' },
    keepsUp: (most: string): string => `Filter: keeps up (${most}).`,
    behind: (day: string, why: string): string => `falls behind from ${day}${why}`,
    caughtUp: (behind: string, by: string, day: string, most: string): string =>
      `Filter: ${behind}; most of all in ${by}; keeps up again from ${day} (${most}).`,
    toTheEnd: (behind: string, by: string, most: string): string =>
      `Filter: ${behind}; most of all in ${by}, to the end (${most}).`,
    began: (why: string): string => `the filter behind${why}`,
  },
  crops: {
    dry: ' (dry)',
    none: 'nothing harvested',
    massOf: (mass: string, crop: string): string => `${mass} ${crop}`,
    harvested: (list: string): string => `${list} harvested`,
    hungry: (share: number): string => `short of nitrogen ${share} % of the time`,
    salt: (passed: string, whom: string, day: string): string => `salt: ${passed} for ${whom} from ${day}`,
    line: (told: string): string => `Crops: ${told}.`,
  },
  events: {
    powerCut: 'a power cut',
    pumpOff: (place: string): string => `the stop of pump ${place}`,
    topUpStopped: 'the stop of top-up',
    rainTankEmpty: 'the rain tank empty',
    capReached: (place: string): string => `the cap of ${place} reached`,
    pumpTrip: (place: string): string => `pump ${place} sucking air`,
    dry: (place: string): string => `${place} dry`,
    other: (kind: string, place: string, text: string): string =>
      `${kind} of ${place}${text === '' ? '' : ` (${text})`}`,
  },
  began: {
    alone: (day: string, amiss: string): string => ` It began on ${day} with ${amiss}.`,
    after: (span: string, event: string): string => `${span} after ${event}`,
    with: (event: string): string => `with ${event}`,
    said: (before: string): string => ` It began ${before}.`,
    whole: (day: string, amiss: string, before: string): string =>
      ` It began on ${day} with ${amiss}, ${before}.`,
  },
  pumpBefore: (pump: string, day: string): string => ` Pump ${pump} sucks air from ${day}.`,
  brokenOff: (day: string): string => `Broken off on ${day}: of what follows nothing is known.`,
  outside: (day: string, what: string): string =>
    `No forecast from ${day} on: ${what}, where what the model knows was not measured.`,
  better: {
    alike: 'alike',
    line: (fish: string, filter: string, water: string, harvest: string): string =>
      `better on fish: ${fish}; on the filter: ${filter}; on water: ${water}; on harvest: ${harvest}`,
  },
  harvest: {
    head: 'harvest',
    none: 'harvest: none',
    dry: (mass: string): string => `${mass} dry`,
    fresh: (mass: string): string => `${mass} fresh`,
    plants: (count: string): string => `, ${count} plants`,
    fish: (count: string, mass: string): string => `${count} fish, ${mass}`,
    perArea: (mass: string, unit: string): string => `${mass} per ${unit}`,
    perFeed: (mass: string, unit: string): string => `${mass} per ${unit} of feed`,
    perWater: (mass: string, unit: string): string => `${mass} per ${unit} of water`,
    byMonth: (unit: string): string => `by month, ${unit}`,
    all: (mass: string, per: string): string => `crops in all: ${mass} fresh, ${per}`,
  },
};
