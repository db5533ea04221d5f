// What is kept in the browser, only where the reader asked for it. Some browsers keep nothing for a page from the disk.
import type { Bundle } from './link.js';

const key = 'leat-system';

/** The system that was kept; undefined where none was, or where the browser keeps nothing. */
export function keptBundle(): Bundle | undefined {
  try {
    const text = localStorage.getItem(key);
    return text === null ? undefined : (JSON.parse(text) as Bundle);
  } catch {
    return undefined;
  }
}

/** Keeps a system, or forgets the one that was kept. */
export function keep(bundle: Bundle | undefined): void {
  try {
    if (bundle === undefined) localStorage.removeItem(key);
    else localStorage.setItem(key, JSON.stringify(bundle));
  } catch {
    // A browser that keeps nothing says so by not having it when the page is opened anew.
  }
}
