/** Courses drawn with letters on a screen. */
export const plot = {
  noCourse: (title: string): string => `${title}: nothing to draw`,
  steady: (title: string, value: string): string => `${title}: steady at ${value}`,
  day: (day: string): string => `day ${day}`,
};
