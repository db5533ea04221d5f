/** A run that cannot answer what was asked of it: it broke off, or nobody was there to be measured. */
export class NoAnswerError extends Error {
  override readonly name = 'NoAnswerError';
}
