import type { Beginning, RunVerdict, Trouble } from '@leat/core';
import { type Display, plainDisplay } from '../display/display.js';
import { listed, plain, quantityPhrase } from './names.js';
import { day, shown } from './numbers.js';

/** Names days of a run: `day 40 (9 Nov)`. */
export type DayName = (time: number) => string;

/** Names the dates of days of a run that begins on a date, `yyyy-mm-dd`: `9 Nov`. */
export function dateNames(startDate: string, display: Display = plainDisplay): DayName {
  const start = Date.parse(`${startDate}T00:00:00Z`);
  return (time) => {
    const date = new Date(start + Math.floor(time) * 86_400_000);
    return display.words.verdict.date(date.getUTCDate(), display.months[date.getUTCMonth()]);
  };
}

/** Names days of a run that begins on a date, `yyyy-mm-dd`: `day 40 (9 Nov)`. */
export function dayNames(startDate: string, display: Display = plainDisplay): DayName {
  const dates = dateNames(startDate, display);
  return (time) => display.words.verdict.day(day(time, display), dates(time));
}

/** How long, in the unit a person would say it in: minutes, hours or days. */
export function spanPhrase(days: number, display: Display = plainDisplay): string {
  const { spans } = display.words.text;
  if (days < 1.5 / 24) return spans.minutes(String(Math.max(1, Math.round(days * 1440))));
  if (days < 2) return spans.hours(shown(days * 24, display));
  return spans.day(shown(days, display));
}

/** What lines of a verdict are told with: days by name, and the words and units of the display. */
interface Telling {
  readonly name: DayName;
  readonly display: Display;
}

const places = (trouble: Trouble, display: Display): string =>
  listed(
    trouble.places
      .slice(0, 3)
      .concat(trouble.places.length > 3 ? [display.words.verdict.nMore(trouble.places.length - 3)] : []),
    display,
  );

/** What was passed, in words: `nitrite above 1 mg N/L`. */
export function passedPhrase(
  trouble: Pick<Trouble, 'quantity' | 'direction' | 'value' | 'unit'>,
  display: Display = plainDisplay,
): string {
  const { quantity, direction, value, unit } = trouble;
  const words = display.words.verdict;
  if (quantity === 'chloride-shortage') return words.tooLittleChloride;
  return `${quantityPhrase(quantity, display)} ${words.directions[direction]} ${display.amount(value, unit, quantity)}`;
}

/** What was passed and where: `nitrite above 1 mg N/L in tank-1`. */
const passedWhere = (trouble: Trouble, display: Display): string =>
  display.words.verdict.inPlaces(passedPhrase(trouble, display), places(trouble, display));

/** How far it went: `at worst 413 on day 60`. */
function worstPhrase({ quantity, unit, worst, worstAt }: Trouble, { name, display }: Telling): string {
  if (quantity === 'chloride-shortage') return '';
  return display.words.verdict.worst(shown(display.value(worst, unit, quantity), display), name(worstAt));
}

function deathsPhrase({ deaths }: NonNullable<RunVerdict['fish']>, { display }: Telling): string {
  if (deaths.length === 0) return '';
  const words = display.words.verdict;
  const shares = deaths.map(({ cohort, share, cause, wipedOut }) => ({
    cohort,
    cause: words.causes[cause],
    part: wipedOut !== undefined || share > 0.995 ? words.all : `${Math.round(share * 100)} %`,
  }));
  const told = [...new Set(shares.map(({ cause }) => cause))].map((cause) => {
    const of = shares.filter((each) => each.cause === cause);
    const parts = [...new Set(of.map(({ part }) => part))].map((part) =>
      words.deadOf(
        part,
        listed(
          of.filter((each) => each.part === part).map(({ cohort }) => cohort),
          display,
        ),
      ),
    );
    return words.deadFrom(listed(parts, display), cause);
  });
  return words.dead(told.join('; '));
}

/** Fish that the file says were lost: not what the model foretells, but never left unsaid. */
function lossesPhrase({ lost = [] }: NonNullable<RunVerdict['fish']>, { name, display }: Telling): string {
  const words = display.words.verdict;
  if (lost.length === 0) return '';
  const told = lost.map(({ cohort, number, share, from }) =>
    words.lostOf(share > 0.995 ? words.all : shown(number, display), cohort, name(from)),
  );
  return words.lost(told.join('; '));
}

/** Fish that grew lighter: ` Lighter: tilapia by 30 % from day 0 to day 120.` */
function thinPhrase({ thin = [] }: NonNullable<RunVerdict['fish']>, { name, display }: Telling): string {
  const words = display.words.verdict;
  if (thin.length === 0) return '';
  const told = thin.map(({ cohort, share, from, until }) =>
    words.thinOf(cohort, Math.round(100 * share), name(from), name(until)),
  );
  return words.thin(told.join('; '));
}

function fishLine(fish: NonNullable<RunVerdict['fish']>, telling: Telling): string {
  return stateLine(fish, telling) + thinPhrase(fish, telling) + lossesPhrase(fish, telling);
}

/** A line of feed that was left: `Feed: not eaten, 43 % of that of tilapia.`; none where little was. */
function uneatenLine(fish: NonNullable<RunVerdict['fish']>, { name, display }: Telling): readonly string[] {
  const { uneaten = [] } = fish;
  const words = display.words.verdict;
  if (uneaten.length === 0) return [];
  const told = uneaten.map(({ share, cohort, until }) =>
    words.uneatenOf(Math.round(100 * share), cohort, until === undefined ? undefined : name(until)),
  );
  return [words.uneaten(listed(told, display))];
}

function stateLine(fish: NonNullable<RunVerdict['fish']>, telling: Telling): string {
  const { name, display } = telling;
  const words = display.words.verdict;
  const { state, from } = fish;
  const [trouble, ...others] = fish.troubles as readonly (Trouble | undefined)[];
  const since = from === undefined ? '' : words.from(name(from));
  const also = others.flatMap((other) => (other === undefined ? [] : [passedPhrase(other, display)]));
  const howLong = (of: Trouble): string =>
    state === 'dead'
      ? words.from(name(of.first))
      : words.lasting(spanPhrase(of.total, display)) + worstPhrase(of, telling);
  const cause =
    trouble === undefined
      ? ''
      : `: ${passedWhere(trouble, display)}${howLong(trouble)}` +
        (also.length > 0 ? words.also(listed(also, display)) : '');
  // What a limit counts after the fish are dead is no forecast: only when it began is told.
  switch (state) {
    case 'dead':
      return `${words.fish.dead(name(from ?? 0), cause)}${deathsPhrase(fish, telling)} ${words.noForecast}`;
    case 'lethal':
      return `${words.fish.lethal(since, cause)}${deathsPhrase(fish, telling)} ${words.noForecast}`;
    case 'at-risk':
      return `${words.fish['at-risk'](since, cause)}${deathsPhrase(fish, telling)}`;
    case 'uncomfortable':
      return words.fish.uncomfortable(since, cause);
    case 'safe':
      return words.fish.safe;
  }
}

const volume = (perDay: number, display: Display): string =>
  display.words.verdict.perDay(
    perDay < 1 ? display.amount(perDay * 1000, 'L') : display.amount(perDay, 'm3'),
  );

function waterLine({ water }: RunVerdict, { name, display }: Telling): string {
  const { state, dry, dryFirst, pumps, over, rainTankEmpty, capDays, capFirst, lowFirst, lowest = 1 } = water;
  const words = display.words.verdict.water;
  const amiss = [
    ...(dry.length > 0 ? [words.dry(dry.length, listed(dry, display), name(dryFirst ?? 0))] : []),
    ...pumps.map(({ pump, times, first, total }) =>
      words.pump(pump, times, name(first), spanPhrase(total, display)),
    ),
    ...(over === undefined ? [] : [words.over(volume(over, display))]),
    ...(lowFirst === undefined ? [] : [words.low(name(lowFirst), Math.round(lowest * 100))]),
  ];
  const told = [
    ...(rainTankEmpty === undefined ? [] : [words.rainTank(name(rainTankEmpty))]),
    ...(capDays > 0 ? [words.cap(capDays, name(capFirst ?? 0))] : []),
  ];
  const all = [...amiss, ...told];
  return words.line(
    state === 'enough',
    volume(water.perDay, display),
    all.length > 0 ? `; ${all.join('; ')}` : '',
  );
}

/** The most ammonia and nitrite; the unit once where it is the same. */
function mostPhrase({ ammonia, nitrite }: NonNullable<RunVerdict['filter']>, display: Display): string {
  const unit = 'mg N/L';
  const same = display.unit(unit, 'tan') === display.unit(unit, 'nitrite');
  return display.words.verdict.filter.most(
    same ? shown(ammonia, display) : display.amount(ammonia, unit, 'tan'),
    display.amount(nitrite, unit, 'nitrite'),
  );
}

function filterLine(filter: NonNullable<RunVerdict['filter']>, { name, display }: Telling): string {
  const { state, by, from, until, held } = filter;
  const words = display.words.verdict.filter;
  const most = mostPhrase(filter, display);
  if (state === 'keeps-up') return words.keepsUp(most);
  const why = held === undefined ? '' : `, ${words.held[held]}`;
  const behind = words.behind(name(from ?? 0), why);
  return state === 'caught-up'
    ? words.caughtUp(behind, words.by[by], name(until ?? 0), most)
    : words.toTheEnd(behind, words.by[by], most);
}

/** Share of the time short of nitrogen that is told. */
const TOLD = 0.1;

function cropsLine(crops: NonNullable<RunVerdict['crops']>, { name, display }: Telling): string {
  const { harvested, shortOfNitrogen, salt } = crops;
  const words = display.words.verdict.crops;
  const given = harvested
    .filter(({ mass }) => mass > 0)
    .map(
      ({ crop, mass, dry }) =>
        `${words.massOf(display.amount(mass / 1000, 'kg'), plain(crop, display))}${dry ? words.dry : ''}`,
    );
  const yields = given.length === 0 ? words.none : words.harvested(listed(given, display));
  const hungry = shortOfNitrogen >= TOLD ? [words.hungry(Math.round(shortOfNitrogen * 100))] : [];
  const salty =
    salt === undefined
      ? []
      : [words.salt(passedPhrase(salt, display), plain(salt.whom, display), name(salt.first))];
  return words.line([...salty, ...hungry, yields].join('; '));
}

function whatBegan({ what }: Beginning, display: Display): string {
  if (what.kind === 'limit') return passedWhere(what.trouble, display);
  if (what.kind === 'water') return eventPhrase(what.event, display);
  const { began, held: phrases } = display.words.verdict.filter;
  const { held } = what.filter;
  return began(held === undefined ? '' : `, ${phrases[held]}`);
}

/** Something that happened, in a sentence. */
export function eventPhrase(
  { kind, place, text }: NonNullable<Beginning['after']>,
  display: Display = plainDisplay,
): string {
  const words = display.words.verdict.events;
  if (text.endsWith('power cut')) return words.powerCut;
  if (kind === 'pump' && text === 'off') return words.pumpOff(place);
  if (kind === 'top-up' && text === 'stopped') return words.topUpStopped;
  if (kind === 'rain-tank-empty') return words.rainTankEmpty;
  if (kind === 'cap-reached') return words.capReached(place);
  if (kind === 'pump-trip') return words.pumpTrip(place);
  if (kind === 'dry') return words.dry(place);
  return words.other(plain(kind, display), place, eventText(text, display));
}

/** What a run wrote of an event, in the words of the language. */
export const eventText = (text: string, { words, digits }: Display = plainDisplay): string =>
  digits(words.names.eventText(text));

/** Where trouble began, unless the first line says it: what was amiss, and what had been done before. */
function beganPhrase(
  beginning: Beginning,
  first: { readonly text: string; readonly of: Part },
  { name, display }: Telling,
): string {
  const { time, after } = beginning;
  const words = display.words.verdict.began;
  const amiss = whatBegan(beginning, display);
  const said = first.text.includes(amiss) || (beginning.what.kind === 'filter' && first.of === 'filter');
  if (after === undefined) return said ? '' : words.alone(name(time), amiss);
  const lag = time - after.time;
  const event = eventPhrase(after, display);
  const before = lag > 1 / 48 ? words.after(spanPhrase(lag, display), event) : words.with(event);
  return said ? words.said(before) : words.whole(name(time), amiss, before);
}

/** Pumps that sucked air before fish came to harm: the line of the fish says so, since it is why. */
function pumpsBefore({ fish, water }: RunVerdict, { name, display }: Telling): string {
  const hurt = fish?.troubles.at(0)?.first;
  if (hurt === undefined || fish?.state === 'uncomfortable') return '';
  return water.pumps
    .filter(({ first }) => first <= hurt)
    .map(({ pump, first }) => display.words.verdict.pumpBefore(pump, name(first)))
    .join('');
}

/** What stands before all else: from when on a run is no forecast, where it is not for the fish, whose line says it. */
function holdsLine({ holdsUntil }: RunVerdict, { name, display }: Telling): readonly string[] {
  if (holdsUntil === undefined || holdsUntil.why === 'fish') return [];
  const { time, why, trouble } = holdsUntil;
  const words = display.words.verdict;
  if (why === 'broken-off' || trouble === undefined) return [words.brokenOff(name(time))];
  return [words.outside(name(time), passedWhere(trouble, display))];
}

/** What a line of a verdict is about. */
type Part = 'fish' | 'filter' | 'water' | 'crops';

/** A line of a verdict, and what it is about: from when on the run is no forecast, a part of the system, or feed that was left. */
export interface VerdictLine {
  readonly of: Part | 'forecast' | 'feed';
  readonly text: string;
}

/** How bad each line is: the worst stands first; of equals the order fish, filter, water, crops. */
function badness({ fish, filter, water, crops }: RunVerdict): Record<Part, number> {
  const fishStates = { dead: 6, lethal: 5, 'at-risk': 4, uncomfortable: 1, safe: 0 };
  const waterStates = { dry: 3, pump: 3, short: 2, enough: 0 };
  const filterStates = { 'falls-behind': 3, 'caught-up': 2, 'keeps-up': 0 };
  return {
    fish: fish === undefined ? -1 : Math.max(fishStates[fish.state], fish.thin === undefined ? 0 : 1),
    filter: filter === undefined ? -1 : filterStates[filter.state],
    water: Math.max(waterStates[water.state], water.over === undefined ? 0 : 1),
    crops: crops === undefined ? -1 : crops.shortOfNitrogen >= TOLD || crops.salt ? 1 : 0,
  };
}

/**
 * A verdict in lines, the worst first: fish, filter, water, crops, and where trouble began behind the first. No line
 * for what the system does not have; before all, from when on the run is no forecast; last, feed that was left.
 * @param startDate date of day 0, `yyyy-mm-dd`
 */
export function verdictTold(
  verdict: RunVerdict,
  startDate: string,
  display: Display = plainDisplay,
): readonly VerdictLine[] {
  const telling = { name: dayNames(startDate, display), display };
  const { fish, filter, crops, beginning } = verdict;
  const bad = badness(verdict);
  const texts: Readonly<Record<Part, string>> = {
    fish: fish === undefined ? '' : fishLine(fish, telling),
    filter: filter === undefined ? '' : filterLine(filter, telling),
    water: waterLine(verdict, telling),
    crops: crops === undefined ? '' : cropsLine(crops, telling),
  };
  const lines = (['fish', 'filter', 'water', 'crops'] as const)
    .map((of) => ({ of, text: texts[of] }))
    .filter(({ text }) => text !== '');
  lines.sort((a, b) => bad[b.of] - bad[a.of]);
  const [first, ...others] = lines;
  const began = beginning === undefined ? '' : beganPhrase(beginning, first, telling);
  const pumps = first.of === 'fish' ? pumpsBefore(verdict, telling) : '';
  const holds = holdsLine(verdict, telling).map((text) => ({ of: 'forecast' as const, text }));
  const left = fish === undefined ? [] : uneatenLine(fish, telling);
  return [
    ...holds,
    { of: first.of, text: `${first.text}${pumps}${began}` },
    ...others,
    ...left.map((text) => ({ of: 'feed' as const, text })),
  ];
}

/** The lines of a verdict as `verdictTold` gives them, without what each is about. */
export function verdictLines(
  verdict: RunVerdict,
  startDate: string,
  display: Display = plainDisplay,
): readonly string[] {
  return verdictTold(verdict, startDate, display).map(({ text }) => text);
}
