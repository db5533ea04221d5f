/**
 * Changes that no test can see, each with its reason. `where` is the file's ending, `line` a part of the line, `change` the
 * change as `was -> text`.
 */
const known = [];

/** The reason why a change makes no difference, or undefined. */
export function equals({ file, source, was, text, kind }) {
  return known.find(
    (each) =>
      file.endsWith(each.where) &&
      source.includes(each.line) &&
      (each.change === undefined || each.change === `${was} -> ${text}`) &&
      (each.kind === undefined || each.kind === kind),
  )?.why;
}
