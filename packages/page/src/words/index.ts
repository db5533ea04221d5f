import { en, type PageWords } from './en.js';
import { es } from './es.js';

/** Words of the page by language, as BCP 47 names it, and each language's name of itself. */
export const pageWords = { en, es } as const satisfies Readonly<Record<string, PageWords>>;
export const languageNames = { en: 'English', es: 'Español' } as const;
export type { PageWords };
