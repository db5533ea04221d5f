import { initWasm, Resvg } from '@resvg/resvg-wasm';
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';

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
  return drawn.render().asPng();
}
