import { csvTable, readLog, readLogMap, readOwnTables, readScenario } from '@leat/core';
import { describe, expect, it } from 'vitest';
import { at } from './documents.js';

/** The first piece of a document in a language that begins so. */
function piece(path: string, language: string, begins = ''): string {
  const found = new RegExp(`\`\`\`${language}\\n(${begins}[\\s\\S]*?)\`\`\``).exec(at(path));
  if (found === null) throw new Error(`${path} shows no ${language}`);
  return found[1];
}

describe('numbers and logs as the documents show them', () => {
  it('a table of the user is read', () => {
    const text = piece('packages/cli/docs/numbers.md', 'tsv');
    const { overrides } = readOwnTables(['my-numbers.tsv'], () => text);
    expect(overrides.map(({ id }) => id)).toEqual([
      'aob.growth',
      'fish.nile-tilapia.mortality',
      'media.broken-brick.surface',
    ]);
  });

  it('numbers in the system file are read', () => {
    const yaml = piece('packages/cli/docs/numbers.md', 'yaml');
    const whole = piece('packages/cli/docs/system-file.md', 'yaml');
    const { overrides } = readScenario(`include: whole.yaml\n${yaml}`, {
      file: 'piece.yaml',
      load: () => whole,
    });
    expect(overrides.map(({ id, value }) => [id, value])).toEqual([
      ['aob.growth', 0.5],
      ['nob.growth', 0.6],
    ]);
  });

  it('a log is read by its map, and what is odd is what the document says', () => {
    const table = csvTable(piece('packages/cli/docs/logs.md', 'csv'), 'log.csv');
    const map = readLogMap(piece('packages/cli/docs/logs.md', 'yaml', 'version: 1'), 'log.map', table);
    const log = readLog(table, map);
    expect(log.readings.length).toBe(24);
    expect(log.oddities.map(({ text }) => text)).toEqual([
      '<0.25',
      '10-20',
      'trace',
      'added 50 g baking soda',
    ]);
  });
});
