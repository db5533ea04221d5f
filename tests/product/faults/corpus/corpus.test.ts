import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { smallSystem } from '../../../support/small-text.js';
import { logSlips, logText, mapSlips, mapText } from './log-slips.js';
import { optionSlips } from './option-slips.js';
import { toldOf, type Kind } from './run-slips.js';
import { scenarioSlips } from './scenario-slips.js';
import type { Slip } from './slip.js';
import { tableSlips, tableText } from './table-slips.js';
import { siteSlips, weatherSlips, weatherSystem, weatherText } from './weather-slips.js';
import { folderWith, leat } from '../../../support/leat.js';

const small = { 'small.yaml': smallSystem };
const log = { ...small, 'log.csv': logText, 'log.map': mapText };
const weather = { 'small.yaml': weatherSystem, 'w.csv': weatherText };
const table = { ...small, 'mine.tsv': tableText };
const logArgs = ['log', 'log.csv', '--map', 'log.map', '--system', 'small.yaml'];

/** Every kind of input: its valid files, which of them is faulty, the command that reads it, and the slips. */
const kinds: Readonly<Record<string, Kind & { readonly slips: readonly Slip[] }>> = {
  scenario: { files: small, faulty: 'small.yaml', args: ['check', 'small.yaml'], slips: scenarioSlips },
  log: { files: log, faulty: 'log.csv', args: logArgs, forgiving: true, slips: logSlips },
  map: { files: log, faulty: 'log.map', args: logArgs, slips: mapSlips },
  weather: { files: weather, faulty: 'w.csv', args: ['check', 'small.yaml'], slips: weatherSlips },
  site: { files: weather, faulty: 'small.yaml', args: ['check', 'small.yaml'], slips: siteSlips },
  table: {
    files: table,
    faulty: 'mine.tsv',
    args: ['check', 'small.yaml', '--tables', 'mine.tsv'],
    slips: tableSlips,
  },
  option: { files: small, faulty: 'small.yaml', args: ['run', 'small.yaml'], slips: optionSlips },
};

const messages = (name: string): string =>
  join(fileURLToPath(new URL('messages/', import.meta.url)), `${name}.txt`);

describe('faulty inputs', () => {
  it.each(Object.entries(kinds))('%s', async (name, { slips, ...kind }) => {
    await expect(await toldOf(kind, slips)).toMatchFileSnapshot(messages(name));
  });

  it.each(Object.entries(kinds).filter(([, { args }]) => args[0] !== 'run'))(
    '%s: what the slips are made in is sound',
    async (_, { files, args }) => {
      expect(await leat(args, folderWith(files))).toMatchObject({ code: 0 });
    },
  );

  it('are at least 200, each under a name of its own', () => {
    const all = Object.values(kinds).flatMap(({ slips }, kind) => slips.map(({ name }) => `${kind} ${name}`));
    expect(all.length).toBeGreaterThanOrEqual(200);
    expect(new Set(all).size).toBe(all.length);
  });
});
