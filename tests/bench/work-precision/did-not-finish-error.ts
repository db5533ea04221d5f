/** A contestant that cannot go on at a tolerance: told in the page, and no fault of the bench. */
export class DidNotFinishError extends Error {
  override readonly name = 'DidNotFinishError';
}
