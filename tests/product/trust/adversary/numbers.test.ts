import { describe, expect, it } from 'vitest';
import { InputError } from '../../../../packages/core/src/base/faults.js';
import { readScenario } from '../../../../packages/core/src/scenario/read-scenario.js';
import { full } from '../../../support/length.js';
import { smallSystem } from '../../../support/small-text.js';

/** Every place of a valid system where a number with a unit stands. */
const places = [
  ...smallSystem.matchAll(/([a-z][\w-]*|pH): (\d+(?:\.\d+)?) ?([a-zA-Z%1][\w/% ]*?)?(?=[,\n }])/g),
]
  .filter(([whole]) => !/date|days/.test(whole))
  .map(([whole, key, number, unit = ''], i) => ({
    name: `${key} ${number} ${unit} (${i})`,
    whole,
    key,
    number,
    unit,
    at: 0,
  }));
let from = 0;
for (const place of places) {
  place.at = smallSystem.indexOf(place.whole, from);
  from = place.at + 1;
}

/** Numbers that a person or a program may write and that must not be taken for another. */
const traps: readonly (readonly [name: string, write: (number: string, unit: string) => string])[] = [
  ['beyond all doubles', (_, unit) => `1e400 ${unit}`],
  ['no number', (_, unit) => `NaN ${unit}`],
  ['infinite in YAML', () => '.inf'],
  ['infinite in words', (_, unit) => `Infinity ${unit}`],
  ['a decimal comma', (number, unit) => `"${number},5 ${unit}"`],
  ['thousands parted by commas', (number, unit) => `"${number},000 ${unit}"`],
  ['thousands parted by a thin space', (number, unit) => `${number}\u2009000 ${unit}`],
  ['thousands parted by an apostrophe', (number, unit) => `"${number}'000 ${unit}"`],
  ['an underscore', (number, unit) => `${number}_0 ${unit}`],
  ['a minus of typography', (number, unit) => `\u2212${number} ${unit}`],
  ['a minus', (number, unit) => `-${number} ${unit}`],
  ['figures of another script', (_, unit) => `\u0662 ${unit}`],
  ['figures of full width', (_, unit) => `\uff12 ${unit}`],
  ['hexadecimal', (_, unit) => `"0x10 ${unit}"`],
  ['two numbers', (number, unit) => `"${number} ${number} ${unit}"`],
  ['a sum', (number, unit) => `"${number}+1 ${unit}"`],
  ['a fraction', (number, unit) => `"${number}/3 ${unit}"`],
  ['an exponent cut short', (number, unit) => `${number}e ${unit}`],
  ['a unit of nothing', (number) => `${number} furlongs`],
  ['a unit twice', (number, unit) => (unit === '' ? `${number} 1 1` : `${number} ${unit} ${unit}`)],
  ['a letter that looks like another', (number) => `${number} \u043c3`],
  ['a truth', () => 'yes'],
  ['a list', (number, unit) => `[${number} ${unit}]`],
  ['a map', (number, unit) => `{ value: ${number} ${unit} }`],
];

function refusal(text: string): InputError | undefined {
  try {
    readScenario(text, { file: 'system.yaml' });
    return undefined;
  } catch (error) {
    if (error instanceof InputError) return error;
    throw error;
  }
}

describe('the system that numbers are slipped into', () => {
  it('is sound, and has numbers enough', () => {
    expect(refusal(smallSystem)).toBeUndefined();
    expect(places.length).toBeGreaterThan(25);
    expect(places.length * traps.length).toBeGreaterThan(300);
  });
});

/** What a minus may truly mean. */
const mayBeNegative = /water-temperature/;
/** The short form tries each trap in every fourth place, another fourth for each. */
const tried = (turn: number): readonly (readonly [string, (typeof places)[number]])[] =>
  places.filter((_, i) => full || (i + turn) % 4 === 0).map((place) => [place.name, place] as const);

describe.each(traps.map(([name, write], turn) => [name, write, turn] as const))('%s', (name, write, turn) => {
  it.each(tried(turn))('is refused as %s', (_, place) => {
    const { whole, key, number, unit, at } = place;
    if (name === 'a minus' && mayBeNegative.test(key)) return;
    const text = `${smallSystem.slice(0, at)}${key}: ${write(number, unit)}${smallSystem.slice(at + whole.length)}`;
    const error = refusal(text);
    const line = smallSystem.slice(0, at).split('\n').length;
    expect(error, `taken for a number:\n${text.split('\n')[line - 1]}`).toBeDefined();
    const faults = error?.faults ?? [];
    // Told at its line, or, where it leaves the text no YAML, at the next.
    expect(
      faults.some((fault) => fault.file === 'system.yaml' && Math.abs((fault.line ?? 0) - line) <= 1),
      JSON.stringify(faults),
    ).toBe(true);
  });
});

describe('a key with nothing behind it', () => {
  it.each(
    places
      .map((place) => [place.name, place] as const)
      .filter(([, { key }]) => ['aeration', 'surface', 'batches', 'age', 'light'].includes(key)),
  )('is as if it were not there: %s', (_, { whole, key, at }) => {
    const [before, after] = [smallSystem.slice(0, at), smallSystem.slice(at + whole.length)];
    const empty = readScenario(`${before}${key}: ${after}`, { file: 'system.yaml' });
    expect(empty).toEqual(readScenario(before.replace(/, $/, '') + after, { file: 'system.yaml' }));
  });
});
