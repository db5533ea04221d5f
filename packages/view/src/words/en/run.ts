import { plural } from '../plural.js';

const many = plural('en');

/** The summary of a run on a screen. */
export const run = {
  day: (day: string): string => `d ${day}`,
  days: (count: string): string => `${count} d`,
  dayAndDate: (day: string, date: string): string => `d ${day} (${date})`,
  brokenOff: (day: string, kind: string): string => `BROKEN OFF on ${day}: ${kind}. What follows ends there.`,
  head: {
    days: (days: number, start: string): string => `${days} d from ${start}`,
    goingOn: (from: string, to: number, start: string): string => `day ${from} to ${to}, from ${start}`,
    vessels: (count: number, volume: string): string =>
      `${count} ${many(count, { one: 'vessel', other: 'vessels' })}, ${volume}`,
    fish: (count: number): string => `${count} fish`,
    planted: (area: string): string => `${area} planted`,
    scenario: (hash: string): string => `scenario ${hash}`,
  },
  keys: {
    where: 'where',
    unit: 'unit',
    start: 'start',
    end: 'end',
    lowest: 'lowest',
    highest: 'highest',
    overTime: 'over time',
    water: 'water',
    fish: 'fish',
    feed: 'feed',
    crop: 'crop',
  },
  limits: {
    passed: 'limits passed',
    limit: 'limit',
    worst: 'worst',
    where: 'where',
    first: 'first',
    lasting: 'for',
    whom: 'for whom',
    none: 'limits passed: none of those that could be judged',
    more: (count: number): string => `${count} more: see --json`,
    unjudged: (count: number): string => `${count} not judged: run shorter than their mean, or nobody there`,
    blind: (days: string): string =>
      `means over less than the output step (${days} d) are resolved for a day after events alone`,
  },
  events: (list: string): string => `events: ${list}`,
  count: (count: number, kind: string): string => `${count} ${kind}`,
  short: (day: string, kind: string, place: string, text: string): string =>
    `! ${day}, ${kind} of ${place}: ${text}`,
  moreShort: (count: number): string => `! ${count} more did less than was asked for: see --json`,
  cameFrom: { nitrogen: 'nitrogen came from', water: 'water came from' },
  wentTo: { nitrogen: 'nitrogen went to', water: 'water went to' },
  base: {
    used: (kind: 'base' | 'acid', amount: string, products: string, perFeed: string): string =>
      `${kind} used: ${amount} eq/d (${products})${perFeed}`,
    into: (product: string, vessel: string): string => `${product} into ${vessel}`,
    perFeed: (amount: string, unit: string): string => `, ${amount} eq per ${unit} of feed`,
    product: (mass: string, product: string): string => `${mass} ${product}`,
  },
};
