import { initWasm, Resvg } from '@resvg/resvg-wasm';
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';

/** Pixels across. */
const width = 1920;

const family = 'Source Sans 3';
const fonts = '@expo-google-fonts/source-sans-3';
const weights = ['400Regular', '400Regular_Italic', '600SemiBold', '700Bold'];

const require = createRequire(import.meta.url);

let ready: Promise<void> | undefined;

/**
 * Draws an SVG as PNG, 1920 pixels wide. The letters come with the command and the drawing is done in
 * WebAssembly, so that the same picture is the same bytes on every machine.
 */
export async function pngOf(svg: string): Promise<Uint8Array> {
  ready ??= initWasm(readFileSync(require.resolve('@resvg/resvg-wasm/index_bg.wasm')));
  await ready;
  const fontBuffers = weights.map((weight) =>
    readFileSync(require.resolve(`${fonts}/${weight}/SourceSans3_${weight}.ttf`)),
  );
  const drawn = new Resvg(svg, {
    fitTo: { mode: 'width', value: width },
    font: { fontBuffers, defaultFontFamily: family, sansSerifFamily: family },
  });
  return drawn.render().asPng();
}
