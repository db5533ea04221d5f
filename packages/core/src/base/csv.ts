/** The separator that stands most often in the first line of a text: comma, semicolon or tab. */
export function separatorOf(text: string): string {
  const [first = ''] = text.split(/\r?\n/, 1);
  const counts = [',', ';', '\t'].map((mark) => ({ mark, count: first.split(mark).length }));
  return counts.reduce((best, each) => (each.count > best.count ? each : best)).mark;
}
