import type { Beginning, Harvest, RunVerdict, Trouble } from '@leat/core';
import { boundUnit } from './limits.js';
import { listed, plain, quantityPhrase } from './names.js';
import { day, shown } from './numbers.js';

/** Months as they are written beside days and on axes, January at the head. */
export const monthNames = 'Jan Feb Mar Apr May Jun Jul Aug Sep Oct Nov Dec'.split(' ');

/** Names days of a run: `day 40 (9 Nov)`. */
export type DayName = (time: number) => string;

/** Names days of a run that begins on a date, `yyyy-mm-dd`: `day 40 (9 Nov)`. */
export function dayNames(startDate: string): DayName {
  const start = Date.parse(`${startDate}T00:00:00Z`);
  return (time) => {
    const date = new Date(start + Math.floor(time) * 86_400_000);
    return `day ${day(time)} (${date.getUTCDate()} ${monthNames[date.getUTCMonth()]})`;
  };
}

/** How long, in the unit a person would say it in: minutes, hours or days. */
export function spanPhrase(days: number): string {
  if (days < 1.5 / 24) return `${Math.max(1, Math.round(days * 1440))} min`;
  if (days < 2) return `${shown(days * 24)} h`;
  return `${shown(days)} d`;
}

const places = (trouble: Trouble): string =>
  listed(
    trouble.places.slice(0, 3).concat(trouble.places.length > 3 ? [`${trouble.places.length - 3} more`] : []),
  );

/** What was passed, in words: `nitrite above 1 mg N/L`. */
export function passedPhrase(trouble: Pick<Trouble, 'quantity' | 'direction' | 'value' | 'unit'>): string {
  const { quantity, direction, value } = trouble;
  if (quantity === 'chloride-shortage') return 'too little chloride against nitrite';
  return `${quantityPhrase(quantity)} ${direction} ${shown(value)}${boundUnit(trouble)}`;
}

/** How far it went: `at worst 413 on day 60`. */
function worstPhrase({ quantity, worst, worstAt }: Trouble, name: DayName): string {
  return quantity === 'chloride-shortage' ? '' : `, at worst ${shown(worst)} on ${name(worstAt)}`;
}

function deathsPhrase({ deaths }: NonNullable<RunVerdict['fish']>): string {
  if (deaths.length === 0) return '';
  const shares = deaths.map(({ cohort, share, cause, wipedOut }) => ({
    cohort,
    cause: cause === 'oxygen' ? 'want of oxygen' : cause === 'other' ? 'other causes' : cause,
    part: wipedOut !== undefined || share > 0.995 ? 'all' : `${Math.round(share * 100)} %`,
  }));
  const told = [...new Set(shares.map(({ cause }) => cause))].map((cause) => {
    const of = shares.filter((each) => each.cause === cause);
    const parts = [...new Set(of.map(({ part }) => part))].map(
      (part) => `${part} of ${listed(of.filter((each) => each.part === part).map(({ cohort }) => cohort))}`,
    );
    return `${listed(parts)}, of ${cause}`;
  });
  return ` Dead: ${told.join('; ')}.`;
}

function fishLine(fish: NonNullable<RunVerdict['fish']>, name: DayName): string {
  const { state, from } = fish;
  const [trouble, ...others] = fish.troubles as readonly (Trouble | undefined)[];
  const since = from === undefined ? '' : ` from ${name(from)}`;
  const also = others.flatMap((other) => (other === undefined ? [] : [passedPhrase(other)]));
  const howLong = (of: Trouble): string =>
    state === 'dead' ? ` from ${name(of.first)}` : ` for ${spanPhrase(of.total)}${worstPhrase(of, name)}`;
  const cause =
    trouble === undefined
      ? ''
      : `: ${passedPhrase(trouble)} in ${places(trouble)}${howLong(trouble)}` +
        (also.length > 0 ? `; also ${listed(also)}` : '');
  // What a limit counts after the fish are dead is no forecast: only when it began is told.
  const noForecast = 'What follows is no forecast.';
  switch (state) {
    case 'dead':
      return `Fish: half or more dead by ${name(from ?? 0)}${cause}.${deathsPhrase(fish)} ${noForecast}`;
    case 'lethal':
      return `Fish: in deadly water${since}${cause}.${deathsPhrase(fish)} ${noForecast}`;
    case 'at-risk':
      return `Fish: at risk${since}${cause}.${deathsPhrase(fish)}`;
    case 'uncomfortable':
      return `Fish: safe, but not at ease${since}${cause}.`;
    case 'safe':
      return 'Fish: safe.';
  }
}

const volume = (perDay: number): string =>
  perDay < 1 ? `${shown(perDay * 1000)} L a day` : `${shown(perDay)} m3 a day`;

function waterLine({ water }: RunVerdict, name: DayName): string {
  const { state, dry, dryFirst, pumps, rainTankEmpty, capDays, capFirst, lowFirst, lowest = 1 } = water;
  const amiss = [
    ...(dry.length > 0
      ? [`${listed(dry)} run${dry.length > 1 ? '' : 's'} dry from ${name(dryFirst ?? 0)}`]
      : []),
    ...pumps.map(
      ({ pump, times, first, total }) =>
        `pump ${pump} sucks air ${times === 1 ? '' : `${times} times `}from ${name(first)}, ${spanPhrase(total)} in all`,
    ),
    ...(lowFirst === undefined
      ? []
      : [`reservoir low from ${name(lowFirst)}, down to ${Math.round(lowest * 100)} % of its float level`]),
  ];
  const told = [
    ...(rainTankEmpty === undefined ? [] : [`rain tank empty on ${name(rainTankEmpty)}`]),
    ...(capDays > 0
      ? [`cap reached on ${capDays} day${capDays > 1 ? 's' : ''} from ${name(capFirst ?? 0)}`]
      : []),
  ];
  const word = state === 'enough' ? 'enough' : 'short';
  const all = [...amiss, ...told];
  return `Water: ${word}, ${volume(water.perDay)}${all.length > 0 ? `; ${all.join('; ')}` : ''}.`;
}

const heldPhrases: Readonly<Record<NonNullable<NonNullable<RunVerdict['filter']>['held']>, string>> = {
  young: 'its bacteria were not grown in',
  covered: 'what grows on organic matter covers its bacteria',
  stunned: 'its bacteria are stunned, by a bath or for want of air',
  oxygen: 'short of oxygen',
  carbon: 'short of alkalinity',
  acid: 'the water too acid for it',
  cold: 'too cold',
  load: 'more to do than it can',
};

function filterLine(filter: NonNullable<RunVerdict['filter']>, name: DayName): string {
  const { state, by, from, until, ammonia, nitrite, held } = filter;
  const most = `ammonia at most ${shown(ammonia)}, nitrite ${shown(nitrite)} mg N/L`;
  if (state === 'keeps-up') return `Filter: keeps up (${most}).`;
  const why = held === undefined ? '' : `, ${heldPhrases[held]}`;
  const behind = `falls behind from ${name(from ?? 0)}${why}`;
  return state === 'caught-up'
    ? `Filter: ${behind}; most of all in ${by}; keeps up again from ${name(until ?? 0)} (${most}).`
    : `Filter: ${behind}; most of all in ${by}, to the end (${most}).`;
}

const kilograms = (grams: number): string => `${shown(grams / 1000)} kg`;

/** Share of the time short of nitrogen that is told. */
const TOLD = 0.1;

function cropsLine(crops: NonNullable<RunVerdict['crops']>, name: DayName): string {
  const { harvested, shortOfNitrogen, salt } = crops;
  const given = harvested
    .filter(({ mass }) => mass > 0)
    .map(({ crop, mass, dry }) => `${kilograms(mass)} ${plain(crop)}${dry ? ' (dry)' : ''}`);
  const yields = given.length === 0 ? 'nothing harvested' : `${listed(given)} harvested`;
  const hungry =
    shortOfNitrogen >= TOLD ? [`short of nitrogen ${Math.round(shortOfNitrogen * 100)} % of the time`] : [];
  const salty =
    salt === undefined
      ? []
      : [`salt: ${passedPhrase(salt)} for ${plain(salt.whom)} from ${name(salt.first)}`];
  return `Crops: ${[...salty, ...hungry, yields].join('; ')}.`;
}

function whatBegan({ what }: Beginning): string {
  if (what.kind === 'limit') return `${passedPhrase(what.trouble)} in ${places(what.trouble)}`;
  if (what.kind === 'water') return eventPhrase(what.event);
  const { held } = what.filter;
  return `the filter behind${held === undefined ? '' : `, ${heldPhrases[held]}`}`;
}

/** Something that happened, in a sentence. */
export function eventPhrase({ kind, place, text }: NonNullable<Beginning['after']>): string {
  if (text.endsWith('power cut')) return 'a power cut';
  if (kind === 'pump' && text === 'off') return `the stop of pump ${place}`;
  if (kind === 'top-up' && text === 'stopped') return 'the stop of top-up';
  if (kind === 'rain-tank-empty') return 'the rain tank empty';
  if (kind === 'cap-reached') return `the cap of ${place} reached`;
  if (kind === 'pump-trip') return `pump ${place} sucking air`;
  if (kind === 'dry') return `${place} dry`;
  return `${plain(kind)} of ${place}${text === '' ? '' : ` (${text})`}`;
}

/** Where trouble began, unless the first line says it: what was amiss, and what had been done before. */
function beganPhrase(beginning: Beginning, first: string, name: DayName): string {
  const { time, after } = beginning;
  const amiss = whatBegan(beginning);
  const said = first.includes(amiss) || (beginning.what.kind === 'filter' && first.startsWith('Filter'));
  if (after === undefined) return said ? '' : ` It began on ${name(time)} with ${amiss}.`;
  const lag = time - after.time;
  const since = lag > 1 / 48 ? `${spanPhrase(lag)} after` : 'with';
  const before = `${since} ${eventPhrase(after)}`;
  return said ? ` It began ${before}.` : ` It began on ${name(time)} with ${amiss}, ${before}.`;
}

/** Pumps that sucked air before fish came to harm: the line of the fish says so, since it is why. */
function pumpsBefore({ fish, water }: RunVerdict, name: DayName): string {
  const hurt = fish?.troubles.at(0)?.first;
  if (hurt === undefined || fish?.state === 'uncomfortable') return '';
  return water.pumps
    .filter(({ first }) => first <= hurt)
    .map(({ pump, first }) => ` Pump ${pump} sucks air from ${name(first)}.`)
    .join('');
}

/** What stands before all else: from when on a run is no forecast, where it is not for the fish, whose line says it. */
function holdsLine({ holdsUntil }: RunVerdict, name: DayName): readonly string[] {
  if (holdsUntil === undefined || holdsUntil.why === 'fish') return [];
  const { time, why, trouble } = holdsUntil;
  if (why === 'broken-off' || trouble === undefined)
    return [`Broken off on ${name(time)}: of what follows nothing is known.`];
  return [
    `No forecast from ${name(time)} on: ${passedPhrase(trouble)} in ${places(trouble)}, where what the model knows was not measured.`,
  ];
}

/** How bad each line is: the worst stands first; of equals the order fish, filter, water, crops. */
function badness({
  fish,
  filter,
  water,
  crops,
}: RunVerdict): Record<'fish' | 'filter' | 'water' | 'crops', number> {
  const fishStates = { dead: 6, lethal: 5, 'at-risk': 4, uncomfortable: 1, safe: 0 };
  const waterStates = { dry: 3, pump: 3, short: 2, enough: 0 };
  const filterStates = { 'falls-behind': 3, 'caught-up': 2, 'keeps-up': 0 };
  return {
    fish: fish === undefined ? -1 : fishStates[fish.state],
    filter: filter === undefined ? -1 : filterStates[filter.state],
    water: waterStates[water.state],
    crops: crops === undefined ? -1 : crops.shortOfNitrogen >= TOLD || crops.salt ? 1 : 0,
  };
}

/**
 * A verdict in lines, the worst first: fish, filter, water, crops, and where trouble began behind the first. No line
 * for what the system does not have.
 * @param startDate date of day 0, `yyyy-mm-dd`
 */
export function verdictLines(verdict: RunVerdict, startDate: string): readonly string[] {
  const name = dayNames(startDate);
  const { fish, filter, crops, beginning } = verdict;
  const bad = badness(verdict);
  const lines = [
    { bad: bad.fish, text: fish === undefined ? '' : fishLine(fish, name) },
    { bad: bad.filter, text: filter === undefined ? '' : filterLine(filter, name) },
    { bad: bad.water, text: waterLine(verdict, name) },
    { bad: bad.crops, text: crops === undefined ? '' : cropsLine(crops, name) },
  ].filter(({ text }) => text !== '');
  lines.sort((a, b) => b.bad - a.bad);
  const [first, ...others] = lines.map(({ text }) => text);
  const began = beginning === undefined ? '' : beganPhrase(beginning, first, name);
  const pumps = first.startsWith('Fish') ? pumpsBefore(verdict, name) : '';
  return [...holdsLine(verdict, name), `${first}${pumps}${began}`, ...others];
}

/** Order of the states of fish, filter and water, the best first. */
const order = {
  fish: ['safe', 'uncomfortable', 'at-risk', 'lethal', 'dead'],
  filter: ['keeps-up', 'caught-up', 'falls-behind'],
  water: ['enough', 'short', 'pump', 'dry'],
} as const;

/** Harvests nearer than this share are alike. */
const ALIKE = 0.02;

/** On what several runs are best, in a line: fish, filter, water, harvest. */
export function betterLine(runs: readonly { readonly name: string; readonly verdict: RunVerdict }[]): string {
  const best = (ranks: readonly (number | undefined)[]): string => {
    const known = ranks.filter((rank) => rank !== undefined);
    const top = Math.min(...known);
    if (known.length < 2 || known.every((rank) => rank === top)) return 'alike';
    return listed(runs.flatMap(({ name }, i) => (ranks[i] === top ? [name] : [])));
  };
  const rank = (list: readonly string[], state: string | undefined): number | undefined =>
    state === undefined ? undefined : list.indexOf(state);
  const harvests = runs.map(({ verdict: { crops } }) =>
    crops?.harvested.reduce((total, { mass }) => total + mass, 0),
  );
  const most = Math.max(0, ...harvests.filter((mass) => mass !== undefined));
  const nearest = harvests.map((mass) =>
    mass === undefined ? undefined : mass >= most * (1 - ALIKE) ? 0 : 1,
  );
  return (
    'better on fish: ' +
    [
      best(runs.map(({ verdict }) => rank(order.fish, verdict.fish?.state))),
      `on the filter: ${best(runs.map(({ verdict }) => rank(order.filter, verdict.filter?.state)))}`,
      `on water: ${best(runs.map(({ verdict }) => rank(order.water, verdict.water.state)))}`,
      `on harvest: ${best(nearest)}`,
    ].join('; ')
  );
}

/** A harvest in lines: each crop and the fish, and how much per square metre, per kilogram of feed and of water. */
export function harvestLines({ crops, fish, fresh, area, feed, water }: Harvest): readonly string[] {
  const lines = crops
    .filter(({ dry }) => dry > 0)
    .map(({ planting, crop, dry, fresh: mass, plants }) => {
      const named = planting === crop ? plain(crop) : `${planting} (${plain(crop)})`;
      const count = plants === undefined ? '' : `, ${shown(plants)} plants`;
      return `  ${named}: ${mass === undefined ? `${kilograms(dry)} dry` : `${kilograms(mass)} fresh`}${count}`;
    });
  const sold = fish
    .filter(({ number }) => number > 0)
    .map(({ cohort, number, mass }) => `  ${cohort}: ${shown(number)} fish, ${kilograms(mass)}`);
  const per = [
    ...(area > 0 ? [`${kilograms(fresh / area)} per m2`] : []),
    ...(feed > 0 ? [`${kilograms((fresh / feed) * 1000)} per kg of feed`] : []),
    ...(water > 0 ? [`${kilograms(fresh / water)} per m3 of water`] : []),
  ];
  const all = [
    ...lines,
    ...(fresh > 0 ? [`  crops in all: ${kilograms(fresh)} fresh, ${per.join(', ')}`] : []),
    ...sold,
  ];
  return all.length === 0 ? ['harvest: none'] : ['harvest', ...all];
}
