/** Days closer than this are one instant. */
const instant = 1e-10;

/** Output times from 0 to the end, the end included. */
export function outputTimes(days: number, every: number): readonly number[] {
  const count = Math.floor(days / every + instant);
  const times = Array.from({ length: count + 1 }, (_, index) => index * every);
  if (days - times[count] > instant) times.push(days);
  else times[count] = days;
  return times;
}
