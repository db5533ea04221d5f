/** Marks text for the eye. */
export interface Style {
  strong(text: string): string;
  faint(text: string): string;
  warn(text: string): string;
}

/** The marks that a style sets, as what parts a text (they stand at every odd place of what is parted). */
// eslint-disable-next-line no-control-regex -- these are they
export const styleCodes = /(\u001b\[(?:0|1|2|33)m)/;

const plain: Style = { strong: (text) => text, faint: (text) => text, warn: (text) => text };

const wrapped =
  (code: number) =>
  (text: string): string =>
    `\u001b[${code}m${text}\u001b[0m`;

const coloured: Style = { strong: wrapped(1), faint: wrapped(2), warn: wrapped(33) };

/**
 * Colours on a terminal, none elsewhere or where NO_COLOR is set to anything (no-color.org).
 */
export function styleFor(
  isTerminal: boolean,
  environment: Readonly<Record<string, string | undefined>>,
): Style {
  const refused = environment['NO_COLOR'] !== undefined && environment['NO_COLOR'] !== '';
  return isTerminal && !refused ? coloured : plain;
}
