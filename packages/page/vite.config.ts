import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { deflateSync } from 'node:zlib';
import { defineConfig, type Plugin } from 'vite';

const from = (path: string): string => fileURLToPath(new URL(path, import.meta.url));

/** The shipped what-ifs with what lies beside them, as a module. */
function shippedFiles(): string {
  const folder = from('../cli/scenarios/');
  const shipped = Object.fromEntries(
    readdirSync(folder).map((name) => [name, readFileSync(folder + name, 'utf8')]),
  );
  return `export const shipped = ${JSON.stringify(shipped)};`;
}

/**
 * Inflates the script, which stands in the page deflated and in base64, and puts it into the page: both it and this are
 * allowed by their hashes. A browser that cannot inflate is told so.
 */
const opener = `(async () => {
  const place = document.getElementById('page');
  if (!('DecompressionStream' in self)) {
    place.textContent = 'This browser is too old for this page: take one of 2023 or later.';
    return;
  }
  const packed = Uint8Array.from(atob(document.getElementById('packed').textContent), (each) => each.charCodeAt(0));
  const script = document.createElement('script');
  script.id = 'leat';
  const inflated = new Blob([packed]).stream().pipeThrough(new DecompressionStream('deflate'));
  script.textContent = await new Response(inflated).text();
  document.body.append(script);
})();`;

const hashOf = (code: string): string => `'sha256-${createHash('sha256').update(code).digest('base64')}'`;

/** Puts style and script into the one file: the script deflated, and allowed by its hash. */
const oneFile = (): Plugin => ({
  name: 'leat-one-file',
  enforce: 'pre',
  resolveId: (id) => (id === 'virtual:leat' ? '\0leat' : undefined),
  load: (id) => (id === '\0leat' ? shippedFiles() : undefined),
  generateBundle(_, bundle) {
    const script = Object.values(bundle).find((each) => each.type === 'chunk');
    if (script?.type !== 'chunk') throw new Error('no script was made');
    const code = script.code.trim();
    const policy = [
      "default-src 'none'",
      `script-src ${hashOf(opener)} ${hashOf(code)}`,
      'worker-src blob:',
      "style-src 'unsafe-inline'",
      'img-src data: blob:',
      "base-uri 'none'",
      "form-action 'none'",
    ].join('; ');
    const packed = deflateSync(code, { level: 9 }).toString('base64');
    const html = readFileSync(from('page.html'), 'utf8')
      .replace('<!--policy-->', () => `<meta http-equiv="Content-Security-Policy" content="${policy}">`)
      .replace(
        '<!--script-->',
        () => `<script type="text/plain" id="packed">${packed}</script>\n    <script>${opener}</script>`,
      );
    for (const name of Object.keys(bundle)) Reflect.deleteProperty(bundle, name);
    this.emitFile({ type: 'asset', fileName: 'leat.html', source: html });
  },
});

export default defineConfig({
  root: from('.'),
  logLevel: 'warn',
  plugins: [oneFile()],
  build: {
    outDir: from('../../.page'),
    emptyOutDir: true,
    target: 'es2022',
    modulePreload: false,
    lib: { entry: from('src/main.tsx'), formats: ['iife'], name: 'leatPage', fileName: 'leat' },
  },
  define: { 'process.env.NODE_ENV': '"production"' },
});
