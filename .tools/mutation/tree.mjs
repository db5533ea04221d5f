import { mkdirSync, readdirSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { dirname, join, relative } from 'node:path';
import ts from 'typescript';

/** TypeScript to JavaScript as it stands, nothing checked. */
export function transpile(text) {
  return ts.transpileModule(text, {
    compilerOptions: { module: ts.ModuleKind.ESNext, target: ts.ScriptTarget.ES2022 },
  }).outputText;
}

/** Every file in a folder and those below it. */
export function filesUnder(folder) {
  return readdirSync(folder, { withFileTypes: true }).flatMap((entry) => {
    if (entry.name === 'node_modules' || entry.name === 'dist') return [];
    const path = join(folder, entry.name);
    return entry.isDirectory() ? filesUnder(path) : [path];
  });
}

/**
 * Makes a tree of plain JavaScript of the core and its tests in which files can be changed: the same places, so that relative
 * imports hold; `@leat/core` and vitest are led to their stand-ins.
 */
export function makeTree(root, tree, folders) {
  rmSync(tree, { recursive: true, force: true });
  const shim = join(root, '.tools/mutation/vitest-shim.mjs');
  for (const path of folders.flatMap((folder) => filesUnder(join(root, folder)))) {
    const target = join(tree, relative(root, path));
    mkdirSync(dirname(target), { recursive: true });
    const text = readFileSync(path, 'utf8');
    writeFileSync(target, text);
    if (!path.endsWith('.ts') || path.endsWith('.d.ts')) continue;
    const from = dirname(target);
    const core = relative(from, join(tree, 'packages/core/src/index.js'));
    writeFileSync(
      target.replace(/\.ts$/, '.js'),
      transpile(text)
        .replaceAll("'@leat/core'", `'${core}'`)
        .replaceAll("'vitest'", `'${relative(from, shim)}'`),
    );
  }
  writeFileSync(join(tree, 'package.json'), '{ "type": "module" }\n');
  symlinkSync(join(root, 'node_modules'), join(tree, 'node_modules'));
  symlinkSync(join(root, 'packages/core/node_modules'), join(tree, 'packages/core/node_modules'));
}
