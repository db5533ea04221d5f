// What the library uses of the globals that browsers and Node share. Kept by hand, so that neither the whole of
// the browser nor the whole of Node is in reach.
declare class TextEncoder {
  encode(text: string): Uint8Array;
}
