import { call, emptyFolder, packed } from './packed.js';

/** What npm says where the registry cannot be reached. */
const noNetwork = /ENOTFOUND|EAI_AGAIN|ECONNREFUSED|ECONNRESET|ETIMEDOUT|ENETUNREACH|ENOTCACHED/;

/** How npm is called in these tests. */
export const quiet = ['--no-audit', '--no-fund', '--loglevel', 'error'];

/** An empty folder into which npm installed packages from their tarballs. */
export interface Installed {
  readonly folder: string;
  readonly status: number | null;
  /** What npm said. */
  readonly said: string;
  /** Whether the registry, which has what they depend on, could not be reached. */
  readonly offline: boolean;
  /** Behind the name of a test that is skipped then. */
  readonly why: string;
}

/** Packs packages of ours as they would be published and installs them in an empty folder. */
export function installed(names: readonly string[]): Installed {
  const into = emptyFolder();
  const tarballs = names.map((name) => packed(name, into));
  const folder = emptyFolder();
  const { status, stdout, stderr } = call(
    'npm',
    ['install', '--prefer-offline', ...quiet, ...tarballs],
    folder,
  );
  const said = `${stdout}${stderr}`;
  const offline = status !== 0 && noNetwork.test(said);
  return { folder, status, said, offline, why: offline ? ' (skipped: the registry cannot be reached)' : '' };
}
