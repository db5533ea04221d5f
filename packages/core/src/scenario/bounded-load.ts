import type { Load } from './include-tree.js';

/** Most characters of all files that one reading opens beside the first. */
const mostCharacters = 64_000_000;

/** Reads as `load` does until one reading has opened more than is ever needed. */
export function boundedLoad(load: Load): Load {
  let characters = 0;
  return (path, from) => {
    const text = load(path, from);
    characters += text.length;
    if (characters > mostCharacters)
      throw new Error(`more than ${mostCharacters} characters in all files together`);
    return text;
  };
}
