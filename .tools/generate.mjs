/**
 * Writes every generated file anew from what it is made of.
 *
 *   npm run generate                     write them, building in between
 *   node .tools/generate.mjs --check     exit 1 and name those that are stale; asks for a build that is fresh
 */
import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const root = new URL('../', import.meta.url);

/** Files made from the source, before it is built. */
async function ofTheSource() {
  const tables = await import('../packages/core/tools/tables.mjs');
  const { usesModule } = await import('../packages/core/tools/uses.mjs');
  const { loopsModule, ratesModule } = await import('../packages/core/tools/loops.mjs');
  return {
    'packages/core/src/library/numbers.generated.ts': tables.numbersModule(),
    'packages/core/src/library/tables.generated.ts': tables.tablesModule(),
    'packages/core/src/library/origins.generated.ts': tables.originsModule(),
    'packages/core/src/library/conditions.generated.ts': tables.conditionsModule(),
    'packages/core/src/library/uses.generated.ts': usesModule(),
    'packages/core/src/solve/loops.generated.ts': loopsModule(),
    'packages/core/src/model/rates.generated.ts': ratesModule(),
  };
}

/** Files made by what is built. */
async function ofTheBuild() {
  const { schemaText } = await import('../packages/core/tools/schema.mjs');
  const { systemFile } = await import('../packages/core/tools/system-file.mjs');
  const { modelDocument } = await import('../packages/core/tools/model.mjs');
  const { numbersDocument } = await import('../packages/core/tools/numbers.mjs');
  const { commandsDocument } = await import('../packages/cli/tools/commands.mjs');
  const { manualPage } = await import('../packages/cli/tools/manual.mjs');
  const { thirdParty } = await import('../packages/cli/tools/third-party.mjs');
  return {
    'packages/core/docs/model.md': modelDocument(),
    'packages/cli/schema/leat.schema.json': await schemaText(),
    'packages/cli/docs/system-file.md': systemFile(),
    'packages/cli/docs/commands.md': commandsDocument(),
    'packages/cli/docs/numbers.md': numbersDocument(),
    'packages/cli/man/leat.1': manualPage(),
    'packages/cli/THIRD-PARTY.md': thirdParty(),
  };
}

/** Those of the files whose text on disk is another. */
function stale(files) {
  return Object.entries(files).filter(([path, text]) => {
    const file = new URL(path, root);
    return !existsSync(file) || readFileSync(file, 'utf8') !== text;
  });
}

function write(files) {
  for (const [path, text] of stale(files)) {
    writeFileSync(new URL(path, root), text);
    console.log(`written: ${path}`);
  }
}

if (process.argv.includes('--check')) {
  const old = stale({ ...(await ofTheSource()), ...(await ofTheBuild()) });
  for (const [path] of old) console.error(`${path} is stale: npm run generate`);
  if (old.length > 0) process.exitCode = 1;
} else {
  write(await ofTheSource());
  const built = spawnSync('npx', ['tsc', '-b'], { cwd: fileURLToPath(root), stdio: 'inherit' });
  if (built.status !== 0) process.exit(1);
  write(await ofTheBuild());
}
