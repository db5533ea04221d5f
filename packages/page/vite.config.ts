import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { compress } from 'lzma1';
import { build, defineConfig, type Plugin } from 'vite';
import { unpack } from './src/opener/unpack.js';

const from = (path: string): string => fileURLToPath(new URL(path, import.meta.url));

/** The shipped what-ifs with what lies beside them, as a module. */
function shippedFiles(): string {
  const folder = from('../cli/scenarios/');
  const shipped = Object.fromEntries(
    readdirSync(folder).map((name) => [name, readFileSync(folder + name, 'utf8')]),
  );
  return `export const shipped = ${JSON.stringify(shipped)};`;
}

/** What unpacks the script and puts it into the page: both are allowed by their hashes. */
async function openerCode(): Promise<string> {
  const built = await build({
    ...{ configFile: false, root: from('.'), logLevel: 'warn' },
    build: {
      ...{ write: false, target: 'es2020' },
      lib: { entry: from('src/opener/open.ts'), formats: ['iife'], name: 'leatOpener' },
    },
  });
  const [first] = Array.isArray(built) ? built : [];
  if (first?.output[0].type !== 'chunk') throw new Error('no opener was made');
  return first.output[0].code.trim();
}

const hashOf = (code: string): string => `'sha256-${createHash('sha256').update(code).digest('base64')}'`;

/** Puts the script into the one file, packed. */
const oneFile = (): Plugin => ({
  name: 'leat-one-file',
  enforce: 'pre',
  resolveId: (id) => (id === 'virtual:leat' ? '\0leat' : undefined),
  load: (id) => (id === '\0leat' ? shippedFiles() : undefined),
  async generateBundle(_, bundle) {
    const script = Object.values(bundle).find((each) => each.type === 'chunk');
    if (script?.type !== 'chunk') throw new Error('no script was made');
    const code = script.code.trim();
    const opener = await openerCode();
    const policy = [
      "default-src 'none'",
      // The module of core may be made; text may not be run as code.
      `script-src ${hashOf(opener)} ${hashOf(code)} 'wasm-unsafe-eval'`,
      'worker-src blob:',
      "style-src 'unsafe-inline'",
      'img-src data: blob:',
      "base-uri 'none'",
      "form-action 'none'",
    ].join('; ');
    const bytes = new Uint8Array(compress(Buffer.from(code), 9));
    if (new TextDecoder().decode(unpack(bytes)) !== code)
      throw new Error('the script is not unpacked as it was packed');
    const packed = Buffer.from(bytes).toString('base64');
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
  // A worker, which runs the same script, has no window: the editor asks for this as it is loaded.
  define: {
    'process.env.NODE_ENV': '"production"',
    'window.ResizeObserver': 'globalThis.ResizeObserver',
  },
});
