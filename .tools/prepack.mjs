/**
 * Refuses to pack or publish a package with npm: it would leave `workspace:*` among its dependencies, which nobody can
 * install. pnpm puts the versions in their place. The command is bound into one script first.
 */
import { basename } from 'node:path';

if (!(process.env.npm_config_user_agent ?? '').startsWith('pnpm/')) {
  console.error(
    'Pack and publish with pnpm (npx pnpm@12.4.2 pack): npm leaves workspace:* in the dependencies.',
  );
  process.exit(1);
}
if (basename(process.cwd()) === 'cli') {
  const { bundle } = await import('./bundle.mjs');
  await bundle();
}
