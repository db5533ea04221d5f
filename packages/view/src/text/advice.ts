import type { AdviceOutcome, ProposedChange } from '@leat/core';
import { type Display, plainDisplay } from '../display/display.js';
import { listed, plain } from './names.js';
import { spanPhrase, type DayName } from './verdict.js';

const mass = (grams: number, display: Display): string =>
  grams < 1000 ? display.amount(grams, 'g') : display.amount(grams / 1000, 'kg');

/** What a change is, without when. */
function whatPhrase({ name, amount, at }: ProposedChange, display: Display): string {
  const words = display.words.advice;
  const places = at.map(String);
  const where = listed(places, display);
  switch (name) {
    case 'feed':
    case 'shade':
      return words[name](amount);
    case 'harvest-fish':
    case 'fewer':
    case 'change-water':
    case 'air':
    case 'media':
    case 'gentler':
      return words[name](amount, where);
    case 'stagger':
      return words.stagger(where, spanPhrase(amount, display));
    case 'leave-empty':
      return words['leave-empty'](amount, listed(places.slice(0, amount), display));
    case 'salt':
      return words.salt(mass(amount, display), where);
    case 'base':
      return words.base(mass(amount, display), plain(where, display));
    case 'top-up':
      return words['top-up'](display.amount(amount, 'L'));
    case 'heat':
      return words.heat(display.amount(amount, 'degC'));
    case 'sooner': {
      const stops: Readonly<Record<string, string>> = words.stops;
      return words.sooner(stops[where] ?? plain(where, display), spanPhrase(amount / 24, display));
    }
    case 'smaller-dose':
      return words['smaller-dose'](amount, plain(where, display));
  }
}

/** A kind of change in a word or two, such as `less feed`. */
export const changeWord = (
  { name }: Pick<ProposedChange, 'name'>,
  { words }: Display = plainDisplay,
): string => words.advice.kinds[name];

/** Whether it is done at one moment, or holds from then on. */
const once = new Set(['harvest-fish', 'leave-empty', 'salt']);
/** What comes with the system or with what the file does already, and has no day of its own. */
const dateless = new Set(['stagger', 'fewer', 'top-up', 'gentler', 'sooner', 'smaller-dose']);

/** A change in a phrase: what, how much, from when and until when. */
export function changePhrase(change: ProposedChange, name: DayName, display: Display = plainDisplay): string {
  const words = display.words.advice;
  const what = whatPhrase(change, display);
  const { from, until } = change;
  if (dateless.has(change.name)) return what;
  if (from === undefined) return words.fromTheStart(what);
  if (once.has(change.name)) return words.on(what, name(from));
  return until === undefined ? words.toTheEnd(what, name(from)) : words.until(what, name(from), name(until));
}

/** What a run gives and takes beside another: harvest, fish, feed, water, each with what it was where that differs. */
export function yieldPhrase(now: AdviceOutcome, was: AdviceOutcome, display: Display = plainDisplay): string {
  const { yields, was: before } = display.words.advice;
  const beside = (one: number, other: number, unit: string): string => {
    const told = display.amount(one, unit);
    const old = display.number(display.value(other, unit));
    return display.number(display.value(one, unit)) === old ? told : before(told, old);
  };
  return [
    ...(was.crops > 0 || now.crops > 0 ? [yields.crops(beside(now.crops, was.crops, 'kg'))] : []),
    ...(was.feed > 0 ? [yields.fish(beside(now.fish, was.fish, 'kg'))] : []),
    ...(was.feed > 0 ? [yields.feed(beside(now.feed, was.feed, 'kg'))] : []),
    yields.water(beside(now.water, was.water, 'm3')),
  ].join('; ');
}
