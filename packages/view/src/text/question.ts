/** The question a system file opens with: its first comment, up to the question mark. */
export function questionOf(text: string): string {
  const lines = text.split('\n');
  const end = lines.findIndex((line) => !line.startsWith('#'));
  const comment = lines
    .slice(0, end < 0 ? lines.length : end)
    .map((line) => line.slice(1).trim())
    .join(' ');
  const mark = comment.indexOf('?');
  return mark < 0 ? comment : comment.slice(0, mark + 1);
}
