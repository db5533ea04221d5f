import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import ts from 'typescript';
import { describe, expect, it } from 'vitest';
import { cellsOf, lessonFiles } from './lesson-cells.js';

const folder = fileURLToPath(new URL('../../../notebooks/', import.meta.url));
const typescript = 'text/x-typescript';

/** What the page gives to every cell: `view` shows an input and stands for its value in all other cells. */
const given = `
declare function view<T>(input: HTMLElement & { value: T }): T;
declare function display<T>(value: T): T;
declare const width: number;
`;

/** The cells of a lesson as one module: what a cell names, the later ones see. */
const moduleOf = (file: string): string =>
  cellsOf(file)
    .filter(({ type }) => type === typescript)
    .map(({ text }) => (/^(?:html|guess|answer)\b/.test(text) ? `display(${text});` : text))
    .concat(given)
    .join('\n');

/** Faults that the compiler finds in modules given as text. */
function faultsOf(modules: ReadonlyMap<string, string>): string[] {
  const config = ts.getParsedCommandLineOfConfigFile(
    join(folder, 'tsconfig.json'),
    {},
    {
      ...ts.sys,
      onUnRecoverableConfigFileDiagnostic: ({ messageText }) => {
        throw new Error(ts.flattenDiagnosticMessageText(messageText, '\n'));
      },
    },
  );
  if (config === undefined) throw new Error('no tsconfig of the notebooks');
  const host = ts.createCompilerHost(config.options);
  const disk = ts.createCompilerHost(config.options);
  host.readFile = (name) => modules.get(name) ?? disk.readFile(name);
  host.fileExists = (name) => modules.has(name) || disk.fileExists(name);
  host.getSourceFile = (name, options) => {
    const text = modules.get(name);
    return text === undefined ? disk.getSourceFile(name, options) : ts.createSourceFile(name, text, options);
  };
  const program = ts.createProgram([...config.fileNames, ...modules.keys()], config.options, host);
  return [...modules.keys()].flatMap((name) => {
    const source = program.getSourceFile(name);
    return [...program.getSyntacticDiagnostics(source), ...program.getSemanticDiagnostics(source)].map(
      ({ messageText, start = 0 }) => {
        const line = (source?.getLineAndCharacterOfPosition(start).line ?? 0) + 1;
        return `${name.slice(dirname(folder).length)}:${line} ${ts.flattenDiagnosticMessageText(messageText, ' ')}`;
      },
    );
  });
}

const lessons = lessonFiles.filter((file) => /^(?:0[1-9]|1)/.test(file));

describe('cells of the lessons', () => {
  it('are TypeScript without a fault', () => {
    const modules = new Map(
      lessons.map((file) => [join(folder, file.replace('.html', '.cells.ts')), moduleOf(file)]),
    );
    expect(modules.size).toBe(12);
    expect(faultsOf(modules)).toEqual([]);
  });

  it('find a wrong type, so that the check above can fail', () => {
    const modules = new Map([
      [join(folder, 'wrong.cells.ts'), `const days: number = 'ninety'; export { days };`],
    ]);
    expect(faultsOf(modules)).toHaveLength(1);
  });

  it.each(lessons)('%s asks, predicts, changes, warns, exercises and cites', (file) => {
    const text = cellsOf(file)
      .map((cell) => cell.text)
      .join('\n');
    for (const part of [
      'class="question"',
      /guessFirst\(|pickFirst\(/,
      '## Change something',
      '<h2>What can go wrong</h2>',
      'class="caution"',
      /<details class="exercise">|answerLater\(/,
      'sources(',
    ]) {
      expect(text).toMatch(part);
    }
  });

  it.each(lessons)('%s imports the library, Plot, Inputs and what lies beside it, nothing else', (file) => {
    const imported = cellsOf(file)
      .filter(({ type }) => type === typescript)
      .flatMap(({ text }) => [...text.matchAll(/ from '([^']+)'/g)].map(([, name]) => name));
    expect(imported.length).toBeGreaterThan(0);
    for (const name of imported) {
      expect(name).toMatch(
        /^(?:@leat\/core|@observablehq\/(?:plot|inputs)|\.\/support\/lesson\.ts|\.\.\/tests\/published\/VALIDATION\.md\?raw)$/,
      );
    }
  });
});
