/** First day from which every value of a daily course, from there on, passes; NaN when it never holds to the end. */
export function dayFrom(course: readonly number[], passes: (value: number) => boolean): number {
  const broken = course.map(passes).lastIndexOf(false);
  return broken === course.length - 1 ? Number.NaN : broken + 1;
}

/** Day of the highest value. */
export function dayOfPeak(course: readonly number[]): number {
  return course.indexOf(Math.max(...course));
}
