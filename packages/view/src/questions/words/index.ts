import { en } from './en.js';
import { es } from './es.js';

/** Words of the questions in one language. */
export type QuestionWords = typeof en;

/** Words by language, as BCP 47 names it. */
export const questionWords = { en, es } as const satisfies Readonly<Record<string, QuestionWords>>;

/** An option of a question in words: its own, that of the tables in this language, or its name with hyphens as spaces. */
export function optionName(words: QuestionWords, question: string, option: string): string {
  const own: Readonly<Record<string, Readonly<Record<string, string>> | undefined>> = words.options;
  return own[question]?.[option] ?? words.names[option] ?? option.replaceAll('-', ' ');
}
