import {
  type Answers,
  answerProblem,
  defaultAnswers,
  faultsAt,
  isAsked,
  optionName,
  type Question,
  type QuestionId,
  questions,
  questionWords,
  type QuestionWords,
  writeSystem,
} from '@leat/view/questions';
import { schemaReference } from '../../files/shipped.js';
import { linesText } from '../../terminal/columns.js';
import { exit, type ExitCode } from '../../terminal/exit.js';
import type { Streams } from '../../terminal/streams.js';
import { openPlaces } from './write.js';

/** An option as it is shown. */
export interface ShownOption {
  readonly value: string;
  readonly label: string;
}

/** How a question is put to a person. */
export interface Asking {
  readonly message: string;
  readonly help: string;
  /** What is wrong with an answer, in one clause; undefined where nothing is. */
  readonly problem: (answer: unknown) => string | undefined;
}

/** What puts questions to a person. An answer that is undefined means that they were broken off. */
export interface Prompts {
  begin(title: string): void;
  text(asking: Asking, usual: string, read: (text: string) => unknown): Promise<unknown>;
  one(asking: Asking, usual: string, options: readonly ShownOption[]): Promise<unknown>;
  some(asking: Asking, usual: readonly string[], options: readonly ShownOption[]): Promise<unknown>;
  end(text: string): void;
}

/** A number as a person writes it, with or without the unit that was asked for; else the text, which is no answer. */
export function numberIn(text: string, unit: string): number | string {
  const trimmed = text.trim();
  const bare = unit !== '' && trimmed.endsWith(unit) ? trimmed.slice(0, -unit.length).trim() : trimmed;
  return /^[+-]?(?:\d+\.?\d*|\.\d+)(?:e[+-]?\d+)?$/i.test(bare) ? Number(bare) : text;
}

/** Numbers with spaces, commas or semicolons between them. */
const numbersIn = (text: string, unit: string): readonly (number | string)[] =>
  text
    .split(/[\s,;]+/)
    .filter((part) => part !== '' && part !== unit)
    .map((part) => numberIn(part, unit));

function putTo(prompts: Prompts, question: Question, asking: Asking, words: QuestionWords): Promise<unknown> {
  const shown = (options: readonly string[]): readonly ShownOption[] =>
    options.map((value) => ({ value, label: optionName(words, question.id, value) }));
  switch (question.kind) {
    case 'number':
      return prompts.text(asking, String(question.default), (text) => numberIn(text, question.unit));
    case 'months':
      return prompts.text(asking, question.default.join(' '), (text) => numbersIn(text, question.unit));
    case 'choice':
      return prompts.one(asking, question.default, shown(question.options));
    case 'several':
      return prompts.some(asking, question.default, shown(question.options));
  }
}

/** Answers to all questions that apply; undefined where they were broken off. */
async function askAll(prompts: Prompts, words: QuestionWords): Promise<Answers | undefined> {
  let answers = defaultAnswers();
  const answered: QuestionId[] = [];
  for (const question of questions) {
    if (!isAsked(question, answers)) continue;
    const { id } = question;
    const { ask, help } = words.questions[id];
    const unit = 'unit' in question && question.unit !== '' ? ` (${question.unit})` : '';
    const known = answers;
    const problem = (answer: unknown): string | undefined =>
      answerProblem(question, answer, words) ??
      faultsAt(id, answered, { ...known, [id]: answer }, words).at(0);
    const answer = await putTo(prompts, question, { message: `${ask}${unit}`, help, problem }, words);
    if (answer === undefined) return undefined;
    answers = { ...answers, [id]: answer };
    answered.push(id);
  }
  return answers;
}

/** Where a system of the questions goes, and how. */
export interface AskOptions {
  readonly streams: Streams;
  readonly force?: boolean;
}

/**
 * Asks the questions and writes a system from the answers, the schema for editors beside it. The place is looked at before
 * the first question; broken off, it writes nothing. Throws FileError where the place is taken.
 */
export async function askForSystem(
  path: string,
  prompts: Prompts,
  { streams, ...options }: AskOptions,
): Promise<ExitCode> {
  const places = openPlaces([path], options);
  const words = questionWords.en;
  prompts.begin(words.file.title);
  const answers = await askAll(prompts, words);
  if (answers === undefined) {
    streams.note('leat new: broken off; nothing was written\n');
    return exit.interrupted;
  }
  places.write([writeSystem(answers, { schema: schemaReference, words })]);
  prompts.end(`leat run ${path}`);
  streams.note(linesText([`written: ${places.paths.join(', ')}`]));
  return exit.done;
}
