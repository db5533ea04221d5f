import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { defaultAnswers, isAsked, questions, questionWords, writeSystem } from '@leat/view/questions';
import {
  type Asking,
  askForSystem,
  numberIn,
  type Prompts,
} from '../../../packages/cli/src/commands/new/ask.js';
import { folderWith, leat } from '../../support/leat.js';
import { hasScript, inTerminal, type Step } from '../../support/pseudo-terminal.js';

const words = questionWords.en;
const defaults = defaultAnswers();
const asked = questions.filter((question) => isAsked(question, defaults));
const schemaLine = './leat.schema.json';
/** Files of a folder but the one that every folder of these tests has. */
const filesIn = (folder: string): readonly string[] =>
  readdirSync(folder).filter((name) => name !== 'small.yaml');

/** A person who answers some questions by what stands here, the others by what is usual, and may break off. */
function person(
  said: Readonly<Record<string, string>>,
  breakOffAt?: string,
): { readonly prompts: Prompts; readonly told: string[]; readonly ended: string[] } {
  const told: string[] = [];
  const ended: string[] = [];
  const find = (message: string): string =>
    questions.find(({ id }) => message.startsWith(words.questions[id].ask))?.id ?? message;
  const answer = (asking: Asking, usual: unknown, read: (text: string) => unknown): Promise<unknown> => {
    const id = find(asking.message);
    if (id === breakOffAt) return Promise.resolve(undefined);
    const wished = id in said ? read(said[id]) : usual;
    const problem = asking.problem(wished);
    if (problem === undefined) return Promise.resolve(wished);
    told.push(`${id}: ${problem}`);
    return Promise.resolve(usual);
  };
  const prompts: Prompts = {
    begin: () => undefined,
    end: (text) => ended.push(text),
    text: (asking, usual, read) => answer(asking, read(usual), read),
    one: (asking, usual) => answer(asking, usual, (text) => text),
    some: (asking, usual) => answer(asking, usual, (text) => text.split(' ')),
  };
  return { prompts, told, ended };
}

async function askedIn(
  folder: string,
  { prompts }: { readonly prompts: Prompts },
): Promise<{ readonly code: number; readonly err: string }> {
  let err = '';
  const streams = {
    result: () => undefined,
    note: (text: string) => {
      err += text;
    },
  };
  const code = await askForSystem(join(folder, 'mine.yaml'), prompts, { streams });
  return { code, err };
}

describe('leat new --ask', () => {
  it('writes the system of the answers and the schema beside it, which is checked and run', async () => {
    const folder = folderWith();
    const one = person({ tanks: '2', 'tank-volume': '1500 L', crops: 'chard', filter: 'biofilter' });
    expect(await askedIn(folder, one)).toMatchObject({ code: 0 });
    expect([one.told, one.ended]).toEqual([[], [`leat run ${join(folder, 'mine.yaml')}`]]);
    const text = readFileSync(join(folder, 'mine.yaml'), 'utf8');
    const answers = { ...defaults, tanks: 2, 'tank-volume': 1500, crops: ['chard'] };
    expect(text).toBe(writeSystem(answers, { schema: schemaLine }));
    expect(existsSync(join(folder, 'leat.schema.json'))).toBe(true);
    expect((await leat(['check', 'mine.yaml'], folder)).code).toBe(0);
    expect((await leat(['run', 'mine.yaml', '--days', '2'], folder)).code).toBe(0);
  });

  it('tells at the question what cannot be, by itself or together with those before', async () => {
    const one = person({ 'tank-volume': '200', fish: '600', 'fish-mass': '500 g', protein: '3,2' });
    expect((await askedIn(folderWith(), one)).code).toBe(0);
    expect(one.told).toHaveLength(2);
    expect(one.told[0]).toMatch(/^fish-mass: more fish than the water can hold; got 600 fish of 500 g/);
    expect(one.told[1]).toBe('protein: expected 0 to 100 %');
  });

  it('broken off, leaves nothing behind', async () => {
    const folder = folderWith();
    expect(await askedIn(folder, person({}, 'crops'))).toEqual({
      code: 130,
      err: 'leat new: broken off; nothing was written\n',
    });
    expect(filesIn(folder)).toEqual([]);
  });

  it('looks at the place before it asks', async () => {
    const folder = folderWith({ 'mine.yaml': 'title: my own\n' });
    const one = person({});
    await expect(askedIn(folder, one)).rejects.toThrow(
      /mine\.yaml: --out: is there already and is not overwritten/,
    );
    expect(one.ended).toEqual([]);
    expect(filesIn(folder)).toEqual(['mine.yaml']);
  });

  it('says that it has no terminal, and what does not go together', async () => {
    const folder = folderWith();
    expect(await leat(['new', '--ask'], folder)).toEqual({
      code: 2,
      out: '',
      err: 'leat new --ask: no terminal to ask in; expected one, or the name of a what-if (leat new --list)\n',
    });
    for (const args of [['--list'], ['a.yaml', '--out', 'b.yaml']])
      expect((await leat(['new', '--ask', ...args], folder)).code).toBe(5);
    expect((await leat(['new', 'glasshouse', '--ask'], folder)).code).toBe(5);
    expect(filesIn(folder)).toEqual([]);
  });

  it('reads a number with its unit, and nothing else', () => {
    expect(numberIn(' 12.5 L', 'L')).toBe(12.5);
    expect(numberIn('30', '')).toBe(30);
    expect([numberIn('3,2', '%'), numberIn('12 m3', 'L'), numberIn('', 'L')]).toEqual(['3,2', '12 m3', '']);
  });
});

describe.skipIf(!hasScript)('in a terminal (needs script of util-linux)', () => {
  const enter: readonly Step[] = asked.map(({ id }) => [words.questions[id].help, '\r']);

  it('bare `leat new` asks every question that applies; entering takes what is usual', async () => {
    const folder = folderWith();
    const { code, text } = await inTerminal(['new'], folder, enter);
    expect([code, text.includes('written: system.yaml, leat.schema.json')]).toEqual([0, true]);
    expect(readFileSync(join(folder, 'system.yaml'), 'utf8')).toBe(
      writeSystem(defaults, { schema: schemaLine }),
    );
  });

  it('says what is wrong with an answer and waits for another; Ctrl-C breaks off with 130', async () => {
    const folder = folderWith();
    const { code, text } = await inTerminal(['new', '--ask', 'x.yaml'], folder, [
      [words.questions.tanks.help, '40\r'],
      ['expected 1 to 12', '\u0003'],
    ]);
    expect([code, text.includes('broken off; nothing was written')]).toEqual([130, true]);
    expect(filesIn(folder)).toEqual([]);
  });
});
