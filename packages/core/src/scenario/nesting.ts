/** Levels opened by `- ` and `? ` at the head of one line. */
function headLevels(line: string): number {
  return (/^\s*(?:[-?]\s+)*/.exec(line)?.[0].match(/[-?]/g) ?? []).length;
}

/**
 * A bound on how deep a YAML text nests, seen from its brackets, its indentation and its dashes without
 * parsing it, so that a hostile text is refused before a parser goes down with it. Brackets in quotes and
 * comments count too: the bound may be too high, never too low by more than what one line holds.
 */
export function nestingBound(text: string): number {
  const indents: number[] = [];
  let brackets = 0;
  let deepest = 0;
  for (const line of text.split('\n')) {
    const indent = line.search(/\S/);
    if (indent >= 0) {
      while ((indents[indents.length - 1] ?? -1) >= indent) indents.pop();
      indents.push(indent);
    }
    const blocks = indents.length + headLevels(line);
    for (const sign of line) {
      if (sign === '[' || sign === '{') brackets += 1;
      else if ((sign === ']' || sign === '}') && brackets > 0) brackets -= 1;
      if (blocks + brackets > deepest) deepest = blocks + brackets;
    }
  }
  return deepest;
}
