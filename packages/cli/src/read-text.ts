import { FileError } from './file-error.js';
import { readBytes } from './read-bytes.js';

const utf8 = new TextDecoder('utf-8', { fatal: true });

/** The line on which the bytes cease to be UTF-8. */
function brokenLine(bytes: Buffer): number {
  let line = 1;
  for (let from = 0; ; line += 1) {
    const end = bytes.indexOf(10, from);
    try {
      utf8.decode(bytes.subarray(from, end < 0 ? bytes.length : end));
    } catch {
      return line;
    }
    if (end < 0) return line;
    from = end + 1;
  }
}

/**
 * Text of a file in UTF-8, without a byte order mark. Throws FileError with the reason alone: the caller knows which
 * file it asked for.
 */
export function readText(path: string, most?: number): string {
  const bytes = readBytes(path, most);
  const [first, second] = bytes;
  if ((first === 0xff && second === 0xfe) || (first === 0xfe && second === 0xff))
    throw new FileError('it is UTF-16: save it as UTF-8');
  if (bytes.includes(0)) throw new FileError('it is no text');
  try {
    return utf8.decode(bytes);
  } catch {
    throw new FileError(`line ${brokenLine(bytes)} is not UTF-8: save the file as UTF-8`);
  }
}
