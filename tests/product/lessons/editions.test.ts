import { csvTable, readLog, readLogMap } from '@leat/core';
import { placesOf } from '@leat/view/lesson';
import { describe, expect, it } from 'vitest';
import { lessons } from '../../../notebooks/lessons/index.js';
import { blankLog, blankLogMap } from '../../../notebooks/support/blank-log.js';
import type { Edition } from '../../../notebooks/support/edition.js';
import { edition as en } from '../../../notebooks/text/en/index.js';
import { edition as es } from '../../../notebooks/text/es/index.js';

const editions: readonly (readonly [string, Edition])[] = [
  ['en', en],
  ['es', es],
];

/** Every text of an edition by its place in it, such as `lessons.drought.labels.water`. */
function textsOf(of: unknown, path = ''): readonly (readonly [string, string])[] {
  if (typeof of === 'string') return [[path, of]];
  if (typeof of !== 'object' || of === null) throw new TypeError(`${path} is no text`);
  return Object.entries(of).flatMap(([key, part]) => textsOf(part, path === '' ? key : `${path}.${key}`));
}

/** Marks of a text: its elements, in order. */
const marksOf = (text: string): readonly string[] => text.match(/<[^>]+>/g) ?? [];

describe('editions of the lessons', () => {
  const [english, spanish] = [new Map(textsOf(en)), new Map(textsOf(es))];

  it('have the same keys: choices, sliders, readings, labels', () => {
    expect(english.size).toBeGreaterThan(500);
    expect([...spanish.keys()].sort()).toEqual([...english.keys()].sort());
  });

  it('fill the same numbers into the same texts', () => {
    const filled = [...english].filter(([, text]) => placesOf(text).length > 0);
    expect(filled.length).toBeGreaterThan(60);
    for (const [path, text] of filled)
      expect([path, [...placesOf(spanish.get(path) ?? '')].sort()]).toEqual([
        path,
        [...placesOf(text)].sort(),
      ]);
  });

  it('have the same marks in the same texts, so that none is left open', () => {
    const lessonTexts = [...english].filter(([path]) => path.startsWith('lessons.'));
    for (const [path, text] of lessonTexts)
      expect([path, marksOf(spanish.get(path) ?? '').length]).toEqual([path, marksOf(text).length]);
  });

  it('leave no text of the lessons untranslated, but symbols, units and names', () => {
    const same = [...english].filter(
      ([path, text]) =>
        path.startsWith('lessons.') && spanish.get(path) === text && /[a-z]{4,} [a-z]{3,}/i.test(text),
    );
    expect(same).toEqual([]);
  });

  it('name every lesson once, numbered as its file', () => {
    expect(new Set(lessons.map(({ id }) => id)).size).toBe(16);
    for (const [, edition] of editions)
      for (const lesson of lessons)
        expect(lesson.words(edition).title.slice(0, 2)).toBe(lesson.id.slice(0, 2));
  });

  it.each(editions)('%s has a reply for each choice, and asks for a number or a pick', (_, edition) => {
    for (const lesson of lessons) {
      const { choices, replies, guess } = lesson.words(edition);
      expect((choices === undefined) !== (guess === undefined)).toBe(true);
      expect(replies?.length).toBe(choices?.length);
    }
  });

  it.each(editions)('%s has a blank log that is read by its map when it is filled in', (_, edition) => {
    const { logColumns, names } = edition;
    const csv = `${blankLog(logColumns)}2026-03-01,0.25,<0.25,10-20,7.2,100,24.5,60,first day\n2026-03-02,0.5,,20,7.1,,24,0,\n`;
    const table = csvTable(csv, 'log.csv');
    const log = readLog(table, readLogMap(blankLogMap(logColumns, names), 'log.map', table));
    expect(log.readings.map(({ reads }) => reads).sort()).toEqual([
      'alkalinity',
      'ammonia',
      'ammonia',
      'nitrate',
      'nitrate',
      'nitrite',
      'pH',
      'pH',
      'temperature',
      'temperature',
    ]);
    expect(log.feed.map(({ grams }) => grams)).toEqual([60, 0]);
    // A bound and a range are told of, and read.
    expect(log.oddities.map(({ row }) => row)).toEqual([2, 2]);
  });
});
