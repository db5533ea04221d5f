/** By how far a reading lies off what the model has, in errors of the kit: 0 within its bounds, of open ones too. */
export function distanceOf(low: number, high: number, model: number): number {
  if (model < low) return low - model;
  return model > high ? high - model : 0;
}
