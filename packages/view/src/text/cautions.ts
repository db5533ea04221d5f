import { type Display, plainDisplay } from '../display/display.js';

/** What a model cannot answer for, in English. Kept in every document. */
export const cautions: readonly string[] = plainDisplay.words.text.cautions;

/** What a model cannot answer for. Printed with every summary. */
export const cautionsIn = ({ words }: Display): readonly string[] => words.text.cautions;
