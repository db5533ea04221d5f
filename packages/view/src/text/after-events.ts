import type { AfterEvent, PassedAfter } from '@leat/core';
import { type Display, plainDisplay } from '../display/display.js';
import { listed } from './names.js';
import { dayNames, eventPhrase, passedPhrase } from './verdict.js';

/** What happened, each once: a power cut is one thing of many pumps. */
function happened({ events }: AfterEvent, display: Display): string {
  return listed([...new Set(events.map((event) => eventPhrase(event, display)))], display);
}

/** A time after an event, as fine as it is known: five minutes, a tenth of an hour, an hour, a tenth of a day. */
function laterPhrase(hours: number, { words, digits }: Display): string {
  const { spans } = words.text;
  if (hours < 1.5) return spans.minutes(String(Math.max(5, Math.round(hours * 12) * 5)));
  if (hours < 10) return spans.hours(digits(hours.toFixed(1)));
  return hours < 48 ? spans.hours(hours.toFixed(0)) : spans.day(digits((hours / 24).toFixed(1)));
}

/** In one vessel what was passed and when, one after another; what means harm is said so. */
function inVessel(place: string, passed: readonly PassedAfter[], display: Display): string {
  const { after } = display.words.text;
  const harms: Readonly<Partial<Record<PassedAfter['harm'], string>>> = after.harm;
  const told = passed.map((each) =>
    after.passed(passedPhrase(each, display), harms[each.harm] ?? '', laterPhrase(each.hours, display)),
  );
  return `${place}: ${told.join(', ')}`;
}

/** Limits of several species that say the same at one place are told once, by the soonest. */
function distinct(passed: readonly PassedAfter[]): readonly PassedAfter[] {
  const seen = new Set<string>();
  return passed.filter((each) => {
    const key = `${each.place} ${passedPhrase(each)}`;
    if (seen.has(key)) return false;
    seen.add(key);
    return true;
  });
}

/** What the limits of one event come to: what was passed, vessel by vessel, and when. */
export interface AfterText {
  /** What happened, and on which day. */
  readonly event: string;
  /** A phrase for each vessel; none: nothing was passed while it was looked at. */
  readonly vessels: readonly string[];
}

/** The events after which a limit for fish was passed, and how long after, in words. */
export function afterTexts(
  after: readonly AfterEvent[],
  startDate: string,
  display: Display = plainDisplay,
): readonly AfterText[] {
  const name = dayNames(startDate, display);
  return after
    .filter(({ passed }) => passed.length > 0)
    .map((each) => {
      const passed = distinct(each.passed);
      const places = [...new Set(passed.map(({ place }) => place))];
      return {
        event: `${happened(each, display)}, ${name(each.time)}`,
        vessels: places.map((place) =>
          inVessel(
            place,
            passed.filter((one) => one.place === place),
            display,
          ),
        ),
      };
    });
}

/** Events after which nothing was passed, by kind and place, and how often. */
function heldLine(after: readonly AfterEvent[], display: Display): readonly string[] {
  const words = display.words.text.after;
  const counts = new Map<string, number>();
  for (const { events } of after.filter(({ passed }) => passed.length === 0)) {
    const kinds = new Set(events.map((event) => eventPhrase({ ...event, text: shortText(event) }, display)));
    for (const kind of kinds) counts.set(kind, (counts.get(kind) ?? 0) + 1);
  }
  if (counts.size === 0) return [];
  const named = [...counts].map(([kind, count]) => (count > 1 ? words.times(kind, count) : kind));
  return [words.held(listed(named, display))];
}

/** The text of an event as far as its kind depends on it: a stop or a power cut. */
const shortText = ({ kind, text }: AfterEvent['events'][number]): string =>
  text.endsWith('power cut') || kind === 'pump' || kind === 'top-up' ? text : '';

/**
 * How long after each event every limit for fish was held, in lines: what happened and when, then each vessel with the
 * hours until what. Nothing where nothing happened.
 * @param startDate date of day 0, `yyyy-mm-dd`
 */
export function afterLines(
  after: readonly AfterEvent[],
  startDate: string,
  display: Display = plainDisplay,
): readonly string[] {
  if (after.length === 0) return [];
  return [
    display.words.text.after.head,
    ...afterTexts(after, startDate, display).flatMap(({ event, vessels }) => [
      `  ${event}`,
      ...vessels.map((vessel) => `    ${vessel}`),
    ]),
    ...heldLine(after, display).map((line) => `  ${line}`),
  ];
}
