import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
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

/** Puts style and script into the one file: the script last in the body, allowed by its hash. */
const oneFile = (): Plugin => ({
  name: 'leat-one-file',
  enforce: 'pre',
  resolveId: (id) => (id === 'virtual:leat' ? '\0leat' : undefined),
  load: (id) => (id === '\0leat' ? shippedFiles() : undefined),
  generateBundle(_, bundle) {
    const script = Object.values(bundle).find((each) => each.type === 'chunk');
    if (script?.type !== 'chunk') throw new Error('no script was made');
    const code = script.code.trim().replaceAll('</script', '<\\/script').replaceAll('<!--', '<\\!--');
    const hash = createHash('sha256').update(code).digest('base64');
    const policy = [
      "default-src 'none'",
      `script-src 'sha256-${hash}'`,
      'worker-src blob:',
      "style-src 'unsafe-inline'",
      'img-src data: blob:',
      "base-uri 'none'",
      "form-action 'none'",
    ].join('; ');
    const html = readFileSync(from('page.html'), 'utf8')
      .replace('<!--policy-->', () => `<meta http-equiv="Content-Security-Policy" content="${policy}">`)
      .replace('<!--script-->', () => `<script id="leat">${code}</script>`);
    for (const name of Object.keys(bundle)) delete bundle[name];
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
