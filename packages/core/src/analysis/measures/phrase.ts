/** Words that join the parts of a measure or a condition. */
export const joints = ['averaged', 'from', 'to', 'above', 'below'] as const;

type Joint = (typeof joints)[number];

/** What follows one joining word. */
export interface PhrasePart {
  readonly joint: Joint;
  /** The words up to the next joining word, one space apart. */
  readonly text: string;
}

/** A phrase such as `highest tan@tank averaged 1 d below 2 mg N/L`, cut at its joining words. */
export interface Phrase {
  /** What stands before the first joining word. */
  readonly head: readonly string[];
  readonly parts: readonly PhrasePart[];
}

const signs: Readonly<Record<string, Joint>> = { '>': 'above', '<': 'below' };

const isJoint = (word: string): word is Joint => (joints as readonly string[]).includes(word);

/** Cuts a phrase at its joining words; `>` and `<` stand for `above` and `below`. */
export function phraseOf(text: string): Phrase {
  const words = text
    .replace(/[<>](?!=)/g, (sign) => ` ${signs[sign]} `)
    .split(/\s+/)
    .filter((word) => word !== '');
  const first = words.findIndex(isJoint);
  const end = first < 0 ? words.length : first;
  const parts: PhrasePart[] = [];
  for (const word of words.slice(end)) {
    const last = parts[parts.length - 1];
    if (isJoint(word)) parts.push({ joint: word, text: '' });
    else parts[parts.length - 1] = { ...last, text: `${last.text} ${word}`.trim() };
  }
  return { head: words.slice(0, end), parts };
}

/** The phrase in its plain form, one space between words. */
export function phraseText({ head, parts }: Phrase): string {
  return [...head, ...parts.map(({ joint, text }) => `${joint} ${text}`)].join(' ');
}

/** A run that cannot answer for a measure: it broke off, or nobody was there to be measured. */
export class NoAnswerError extends Error {
  override readonly name = 'NoAnswerError';
}
