import type { AdviceOutcome, ProposedChange } from '@leat/core';
import { listed, plain } from './names.js';
import { shown } from './numbers.js';
import { spanPhrase, type DayName } from './verdict.js';

const kilograms = (grams: number): string =>
  grams < 1000 ? `${shown(grams)} g` : `${shown(grams / 1000)} kg`;

/** What a change is, without when. */
function whatPhrase({ name, amount, at }: ProposedChange): string {
  const where = listed(at.map(String));
  switch (name) {
    case 'feed':
      return amount >= 100 ? 'no feed at all' : `${amount} % less feed`;
    case 'harvest-fish':
      return `${amount} % of the fish of ${where} taken out early, and their feed with them`;
    case 'stagger':
      return `${where} stocked in four parts, ${spanPhrase(amount)} apart`;
    case 'fewer':
      return `${amount} % fewer fish put in: ${where}`;
    case 'leave-empty':
      return `${listed(at.slice(0, amount))} cleared and the bed${amount > 1 ? 's' : ''} left empty`;
    case 'salt':
      return `${kilograms(amount)} of common salt once, into ${where}`;
    case 'base':
      return `${kilograms(amount)} of ${plain(where)} more each week`;
    case 'top-up':
      return `top-up of ${shown(amount)} L a day where it is capped lower or shut`;
    case 'change-water':
      return `${amount} % of the water of ${where} changed every day`;
    case 'air':
      return `more air in ${where}: ${amount} 1/h (kLa) on top of what is there`;
    case 'media':
      return `${amount} % more media in ${where}`;
    case 'shade':
      return `shade cloth of ${amount} % over the crops`;
    case 'heat':
      return `water heated to ${amount} degC where it is colder`;
    case 'gentler':
      return amount >= 100
        ? `the bacteria of ${where} left alone when it is cleaned or bathed`
        : `${where} cleaned or bathed ${amount} % more gently`;
    case 'sooner':
      return `${stopNames[where] ?? plain(where)} over after ${spanPhrase(amount / 24)}`;
    case 'smaller-dose':
      return amount >= 100 ? `no ${plain(where)}` : `${amount} % less ${plain(where)}`;
  }
}

const stopNames: Readonly<Record<string, string>> = {
  'power-cut': 'the power cut',
  'pump-off': 'the stop of the pump',
  'air-off': 'the stop of the air',
  'control-off': 'the stop of the doser',
  'top-up': 'the stop of top-up',
};

/** Kinds of changes in a word or two. */
const kindWords: Readonly<Record<ProposedChange['name'], string>> = {
  feed: 'less feed',
  'harvest-fish': 'fish taken out early',
  stagger: 'staggered stock',
  fewer: 'fewer fish',
  'leave-empty': 'beds left empty',
  salt: 'common salt',
  base: 'more base',
  'top-up': 'more top-up',
  'change-water': 'water changes',
  air: 'more air',
  media: 'more media',
  shade: 'shade cloth',
  heat: 'warmer water',
  gentler: 'gentler cleaning',
  sooner: 'a shorter stop',
  'smaller-dose': 'smaller doses',
};

/** A kind of change in a word or two, such as `less feed`. */
export const changeWord = (change: Pick<ProposedChange, 'name'>): string => kindWords[change.name];

/** Whether it is done at one moment, or holds from then on. */
const once = new Set(['harvest-fish', 'leave-empty', 'salt']);
/** What comes with the system or with what the file does already, and has no day of its own. */
const dateless = new Set(['stagger', 'fewer', 'top-up', 'gentler', 'sooner', 'smaller-dose']);

/** A change in a phrase: what, how much, from when and until when. */
export function changePhrase(change: ProposedChange, name: DayName): string {
  const what = whatPhrase(change);
  const { from, until } = change;
  if (dateless.has(change.name)) return what;
  if (from === undefined) return `${what}, from the start`;
  if (once.has(change.name)) return `${what} on ${name(from)}`;
  return `${what} from ${name(from)} ${until === undefined ? 'to the end' : `until ${name(until)}`}`;
}

/** A number beside what it was: `12.3 kg (was 13.1)`; without what it was where it is the same. */
const beside = (now: number, was: number, unit: string): string =>
  shown(now) === shown(was) ? `${shown(now)} ${unit}` : `${shown(now)} ${unit} (was ${shown(was)})`;

/** What a run gives and takes beside another: harvest, fish, feed, water. */
export function yieldPhrase(now: AdviceOutcome, was: AdviceOutcome): string {
  return [
    ...(was.crops > 0 || now.crops > 0 ? [`crops ${beside(now.crops, was.crops, 'kg')}`] : []),
    ...(was.feed > 0 ? [`fish gain ${beside(now.fish, was.fish, 'kg')}`] : []),
    ...(was.feed > 0 ? [`feed ${beside(now.feed, was.feed, 'kg')}`] : []),
    `water ${beside(now.water, was.water, 'm3')}`,
  ].join('; ');
}
