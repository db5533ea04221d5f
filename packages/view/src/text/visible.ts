/** Signs that are not seen and yet do something: control characters, what turns the direction of writing, what breaks a line. */
const unseen = /(?![\u200c\u200d])[\p{Cc}\p{Cf}\p{Zl}\p{Zp}\p{Cs}]/gu;

/** A sign by its number, as JSON writes it too. */
const written = (sign: string): string =>
  Array.from({ length: sign.length }, (_, i) => sign.charCodeAt(i).toString(16).padStart(4, '0'))
    .map((digits) => `\\u${digits}`)
    .join('');

/**
 * A text with what is not seen in it written out (`\u202e`), line ends and tabs left as they are: so that no title, name or
 * cell of a file turns, colours or overwrites what stands on a terminal. A JSON document stays the same document.
 */
export const visible = (text: string): string =>
  text.replace(unseen, (sign) => (sign === '\n' || sign === '\t' ? sign : written(sign)));

/** The same for what is to stay on one line: line ends and tabs are written out too. */
export const oneLine = (text: string): string => text.replace(unseen, written);
