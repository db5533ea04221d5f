// A link that holds a whole system in its fragment, which no server ever sees.
import { deflateSync, inflateSync, strFromU8, strToU8 } from 'fflate';

/** A system with the files that it names. */
export interface Bundle {
  readonly main: string;
  readonly files: Readonly<Record<string, string>>;
}

const lead = '#system=';

/** Most characters of a system that a link may unfold to, so that a hostile one does not fill the memory. */
const most = 4 * 2 ** 20;

/** The fragment of a link that holds a system: deflated, in letters that stand in an address. */
export function fragmentOf(bundle: Bundle): string {
  const packed = deflateSync(strToU8(JSON.stringify(bundle)), { level: 9 });
  let binary = '';
  for (const byte of packed) binary += String.fromCharCode(byte);
  return lead + btoa(binary).replaceAll('+', '-').replaceAll('/', '_').replace(/=+$/, '');
}

/** The system that a fragment holds; undefined where it holds none. Throws where it is cut short or changed. */
export function bundleIn(fragment: string): Bundle | undefined {
  if (!fragment.startsWith(lead)) return undefined;
  const damaged = 'the link is cut short or damaged: ask for it again';
  try {
    const binary = atob(fragment.slice(lead.length).replaceAll('-', '+').replaceAll('_', '/'));
    const bytes = inflateSync(
      Uint8Array.from(binary, (letter) => letter.charCodeAt(0)),
      { out: new Uint8Array(most) },
    );
    const held: unknown = JSON.parse(strFromU8(bytes));
    if (typeof held !== 'object' || held === null || !('main' in held) || !('files' in held))
      throw new Error(damaged);
    const { main, files } = held;
    if (typeof main !== 'string' || typeof files !== 'object' || files === null) throw new Error(damaged);
    const texts = Object.entries(files as Record<string, unknown>);
    if (!texts.every(([, text]) => typeof text === 'string') || !texts.some(([name]) => name === main))
      throw new Error(damaged);
    return { main, files: files as Record<string, string> };
  } catch {
    throw new Error(damaged);
  }
}
