import { initWasm, Resvg } from '@resvg/resvg-wasm';
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { pngMark } from './kinds.js';

/** Pixels across. */
const width = 1920;

const family = 'Source Sans 3';

const require = createRequire(import.meta.url);

/** Regular, italic, half bold and bold. */
const fonts = (): readonly string[] => [
  require.resolve('@expo-google-fonts/source-sans-3/400Regular/SourceSans3_400Regular.ttf'),
  require.resolve('@expo-google-fonts/source-sans-3/400Regular_Italic/SourceSans3_400Regular_Italic.ttf'),
  require.resolve('@expo-google-fonts/source-sans-3/600SemiBold/SourceSans3_600SemiBold.ttf'),
  require.resolve('@expo-google-fonts/source-sans-3/700Bold/SourceSans3_700Bold.ttf'),
];

/** The checksum of a chunk of a PNG (ISO 3309, as the PNG standard has it). */
function checksumOf(bytes: Uint8Array): number {
  let sum = 0xffffffff;
  for (const byte of bytes) {
    sum ^= byte;
    for (let i = 0; i < 8; i++) sum = (sum >>> 1) ^ (sum & 1 ? 0xedb88320 : 0);
  }
  return (sum ^ 0xffffffff) >>> 0;
}

/** Bytes of the signature of a PNG and of its first chunk. */
const beginning = 8 + 25;

/** A PNG that says in a text chunk, behind its first chunk, that Leat drew it. */
function marked(png: Uint8Array): Uint8Array {
  const text = Buffer.from(`tEXt${pngMark}`, 'latin1');
  const chunk = Buffer.alloc(text.length + 8);
  chunk.writeUInt32BE(text.length - 4, 0);
  text.copy(chunk, 4);
  chunk.writeUInt32BE(checksumOf(text), text.length + 4);
  return Buffer.concat([png.subarray(0, beginning), chunk, png.subarray(beginning)]);
}

let ready: Promise<void> | undefined;

/**
 * Draws an SVG as PNG, 1920 pixels wide. The letters come with the command and the drawing is done in
 * WebAssembly, so that the same picture is the same bytes on every machine.
 */
export async function pngOf(svg: string): Promise<Uint8Array> {
  ready ??= initWasm(readFileSync(require.resolve('@resvg/resvg-wasm/index_bg.wasm')));
  await ready;
  const fontBuffers = fonts().map((font) => readFileSync(font));
  const drawn = new Resvg(svg, {
    fitTo: { mode: 'width', value: width },
    font: { fontBuffers, defaultFontFamily: family, sansSerifFamily: family },
  });
  return marked(drawn.render().asPng());
}
