/**
 * Documents that are partly made and partly written: what stands between `<!-- made: NAME -->` and `<!-- /made -->` is
 * made, all else is kept as a person wrote it.
 */
const block = /<!-- made: ([\w-]+) -->\n[\s\S]*?<!-- \/made -->/g;

/**
 * The document with its blocks made anew.
 *
 * @param text the document as it stands
 * @param made the text of each block by name
 * @throws where a block of the document is not made, or one that is made has no place in it
 */
export function withBlocks(text, made) {
  const left = new Set(Object.keys(made));
  const done = text.replace(block, (_, name) => {
    if (!(name in made)) throw new Error(`nothing makes the block ${name}`);
    left.delete(name);
    return `<!-- made: ${name} -->\n<!-- prettier-ignore-start -->\n\n${made[name].trim()}\n\n<!-- prettier-ignore-end -->\n<!-- /made -->`;
  });
  if (left.size > 0) throw new Error(`no place in the document for ${[...left].join(', ')}`);
  return done;
}

/** A table of Markdown. A bar in a cell is no end of it. */
export function table(header, rows) {
  const line = (cells) => `| ${cells.map((cell) => String(cell).replaceAll('|', '\\|')).join(' | ')} |`;
  return [line(header), line(header.map(() => '---')), ...rows.map(line)].join('\n');
}
