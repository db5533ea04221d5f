import { sealed } from '@leat/core';
import { readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { deflateRawSync } from 'node:zlib';
import { describe, expect, it } from 'vitest';
import { folderWith, leat } from '../../../support/leat.js';
import { xlsx } from '../../../support/xlsx.js';

/** What was saved of the small system after two days. */
const home = folderWith();
await leat(['run', 'small.yaml', '--days', '2', '--save', 'end.state', '--quiet'], home);

interface Saved {
  readonly states: readonly Record<string, unknown>[];
  readonly volumes: Record<string, number>;
  readonly operation: Record<string, unknown>;
  readonly morning: Record<string, Record<string, unknown>>;
  readonly memory: Record<string, unknown>;
  readonly ages: Record<string, number>;
  readonly crops: Record<string, string>;
  readonly sources: readonly Record<string, unknown>[];
  readonly [key: string]: unknown;
}
const { hash, ...state } = JSON.parse(readFileSync(join(home, 'end.state'), 'utf8')) as Saved & {
  hash: string;
};

const stateAt = (place: number, change: Record<string, unknown>): object => ({
  states: state.states.map((each, i) => (i === place ? { ...each, ...change } : each)),
});

/** What somebody may make of a saved state who also knows how its hash is made: each is refused by name. */
const forged: readonly (readonly [name: string, change: object])[] = [
  ['another schema', { schema: 'leat-run' }],
  ['no schema', { schema: undefined }],
  ['a version to come', { version: 99 }],
  ['a version in words', { version: '2' }],
  ['no states', { states: [] }],
  ['states that are none', { states: null }],
  ['states in a map', { states: { tan: 1 } }],
  ['a state less', { states: state.states.slice(1) }],
  ['a state twice', { states: [...state.states, state.states[0]] }],
  ['a state of no component', stateAt(0, { component: 'gold' })],
  ['a state of a prototype', stateAt(0, { component: '__proto__' })],
  ['a state in no place', stateAt(0, { place: 'pond' })],
  ['an amount below zero', stateAt(0, { amount: -5 })],
  ['an amount that is none', stateAt(0, { amount: null })],
  ['an amount in words', stateAt(0, { amount: '0.5' })],
  ['no time', { time: undefined }],
  ['time in words', { time: '2 d' }],
  ['time before the start', { time: -2 }],
  ['a date that is none', { date: '2025-02-30' }],
  ['a date in other order', { date: '03/03/2025' }],
  ['no volumes', { volumes: {} }],
  ['a volume less than nothing', { volumes: { ...state.volumes, tank: -1 } }],
  ['a volume beyond the edge', { volumes: { ...state.volumes, tank: 1e6 } }],
  ['a volume of no vessel', { volumes: { ...state.volumes, pond: 1 } }],
  ['a volume in words', { volumes: { ...state.volumes, tank: '2 m3' } }],
  ['a species that is none', { species: { tilapia: 'dragon' } }],
  [
    'an age less than nothing',
    { ages: Object.fromEntries(Object.keys(state.ages).map((each) => [each, -1])) },
  ],
  ['ages in words', { ages: Object.fromEntries(Object.keys(state.ages).map((each) => [each, 'old'])) }],
  ['pumps off in words', { operation: { ...state.operation, pumpsOff: 'main' } }],
  ['no operation', { operation: undefined }],
  ['a ration of no fish', { operation: { ...state.operation, rations: { trout: 1 } } }],
  ['no morning', { morning: undefined }],
  ['water that evaporates in words', { morning: { ...state.morning, evaporation: { tank: 'much' } } }],
  [
    'a source that gave less than nothing',
    { sources: state.sources.map((each) => ({ ...each, today: -1 })) },
  ],
  ['tripped in words', { tripped: 'no' }],
];

/** What a file that was changed since has no more, or never had, says nothing of it: the run is that of the state as it was. */
const passedOver: readonly (readonly [name: string, change: object])[] = [
  ['a key that is none', { more: 1 }],
  ['crops of no planting', { crops: { ...state.crops, 'moss#1': 'moss' } }],
  ['a pump off that is none', { operation: { ...state.operation, pumpsOff: ['other'] } }],
  ['air off where there is nothing', { operation: { ...state.operation, airOff: ['pond'] } }],
  ['a pump tripped that is none', { tripped: ['other'] }],
];

describe('a saved state whose hash is right', () => {
  const on = (text: string) => {
    const folder = folderWith({ 'end.state': text });
    const call = ['run', 'small.yaml', '--days', '3', '--set', 'start.saved=end.state', '--csv', 'out.csv'];
    return { folder, said: leat(call, folder) };
  };

  it('is gone on from as it is', async () => {
    expect(sealed(state).hash).toBe(hash);
    const { code, err } = await on(JSON.stringify(sealed(state))).said;
    expect([code, err]).toEqual([0, '']);
  });

  it.each(passedOver)('is gone on from, and the same comes of it, with %s', async (_name, change) => {
    const [plain, other] = [{}, change].map((each) => on(JSON.stringify(sealed({ ...state, ...each }))));
    expect((await other.said).err).toBe('');
    await plain.said;
    const [first, second] = [plain, other].map(({ folder }) => readFileSync(join(folder, 'out.csv'), 'utf8'));
    expect(second).toBe(first);
  });

  it('ends by a name where an amount is beyond all numbers', async () => {
    const { code, err } = await on(JSON.stringify(sealed({ ...state, ...stateAt(0, { amount: 1e308 }) })))
      .said;
    expect(code).toBe(3);
    expect(err).toMatch(/^not finished: not-finite on day 2 at tan@tank/m);
  });

  it.each(forged)('is refused by its name, and nothing is written: %s', async (_name, change) => {
    const { folder, said } = on(JSON.stringify(sealed({ ...state, ...change })));
    const { code, out, err } = await said;
    expect({ code, out }, err).toEqual({ code: 2, out: '' });
    expect(err).toMatch(/end\.state|start\.saved/);
    expect(err).not.toMatch(/^\s+at |TypeError|undefined|\[object/m);
    expect(readdirSync(folder).sort()).toEqual(['end.state', 'small.yaml']);
  });
});

const map = 'date: { column: Date }\ncolumns: { TAN: { reads: ammonia, in: tank, unit: mg N/L } }\n';
const head = ['Date', 'TAN'];
const row = ['2026-03-01', '0.5'];
const sound = Buffer.from(xlsx({ Log: [head, row] }));
const part = 'xl/worksheets/sheet1.xml';
const sheet = (data: string): string =>
  `<worksheet xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><sheetData>${data}</sheetData></worksheet>`;
const withSheet = (data: string): Buffer =>
  Buffer.from(xlsx({ Log: [head, row] }, { more: { [part]: data } }));
const poked = (at: number, value: number): Buffer => {
  const copy = Buffer.from(sound);
  copy.writeUInt32LE(value >>> 0, at < 0 ? copy.length + at : at);
  return copy;
};

/** Files that end in .xlsx and are no log: each is refused by name. */
const broken: readonly (readonly [name: string, bytes: Uint8Array | string])[] = [
  ['nothing', ''],
  ['text', 'Date,TAN\n2026-03-01,0.5\n'],
  ['four letters of an archive', 'PK\u0003\u0004'],
  ['an end without a directory', Buffer.concat([Buffer.from('PK\u0005\u0006'), Buffer.alloc(18)])],
  ['the first half', sound.subarray(0, sound.length >> 1)],
  ['the second half', sound.subarray(sound.length >> 1)],
  ['all but its last byte', sound.subarray(0, -1)],
  ['a directory that begins beyond the end', poked(-6, 0x7fffffff)],
  ['a directory that begins at its first byte', poked(-6, 0)],
  ['one entry more than there are', poked(-12, 0x00060006)],
  ['a cell by no name', withSheet(sheet('<row r="1"><c r="1A" t="e"><v>#N/A</v></c></row>'))],
  ['a cell far to the right', withSheet(sheet('<row r="1"><c r="ZZZ1" t="e"><v>#N/A</v></c></row>'))],
  ['a cell far below', withSheet(sheet('<row r="200002"><c r="A200002" t="e"><v>#N/A</v></c></row>'))],
  ['a sheet without a row', withSheet(sheet(''))],
  ['a sheet of another kind', withSheet('<html><body>no</body></html>')],
  [
    'a workbook without sheets',
    Buffer.from(xlsx({ Log: [head, row] }, { more: { 'xl/workbook.xml': '<workbook/>' } })),
  ],
  [
    'relations to nothing',
    Buffer.from(xlsx({ Log: [head, row] }, { more: { 'xl/_rels/workbook.xml.rels': '<Relationships/>' } })),
  ],
  ['a packed part that is no packed part', deflateRawSync(sound)],
];

describe('a spreadsheet', () => {
  const read = (bytes: Uint8Array | string, ...more: readonly string[]) =>
    leat(['log', 'log.xlsx', ...more], folderWith({ 'log.xlsx': bytes, 'log.map': map }));

  it('is read where it is sound', async () => {
    const { code, out, err } = await read(sound, '--map', 'log.map', '--json');
    expect([code, err]).toEqual([0, '']);
    expect(JSON.parse(out)).toMatchObject({ from: '2026-03-01', days: 1 });
  });

  it.each(broken)('is refused by its name: %s', async (_name, bytes) => {
    for (const more of [[], ['--map', 'log.map']]) {
      const { code, out, err } = await read(bytes, ...more);
      expect({ code, out }, err).toEqual({ code: 2, out: '' });
      expect(err).toMatch(/^log\.(?:xlsx|map)/);
      expect(err).toContain('log.xlsx');
      expect(err).not.toMatch(/^\s+at |TypeError|undefined|\[object/m);
    }
  });

  it.each([
    ['a text', '<c r="B2" t="inlineStr"><is><t>=1+1</t></is></c>', '=1+1'],
    ['true', '<c r="B2" t="b"><v>1</v></c>', 'true'],
    ['no number', '<c r="B2" t="e"><v>#NUM!</v></c>', '#NUM!'],
    ['letters that a terminal obeys', '<c r="B2" t="inlineStr"><is><t>&#x202e;5</t></is></c>', '\\u202e5'],
  ])('that holds %s for a number is told of it', async (_name, cell, text) => {
    const { code, out, err } = await read(
      xlsx({ Log: [head, ['2026-03-01', cell], ['2026-03-02', '1']] }),
      '--map',
      'log.map',
    );
    expect([code, err]).toEqual([0, '']);
    expect(out).toContain(`"${text}"`);
    expect(out).toContain('odd values: 1');
  });
});
