import { existsSync } from 'node:fs';
import { chromium, type Browser } from 'playwright-core';

const executablePath = '/usr/bin/chromium';

/** Whether the browser is on this machine. */
export const chromiumHere = existsSync(executablePath);

/** Whether it must be: in continuous integration what needs it fails, and is not skipped. */
export const chromiumRequired = process.env['LEAT_CI_TOOLS'] === '1';

/** What stands behind the name of what needs the browser: nothing where it is there. */
export const chromiumMissing = chromiumHere
  ? ''
  : ` (skipped: no ${executablePath}; apt-get install chromium)`;

/** The browser without a window, asking nobody. */
export function openChromium(): Promise<Browser> {
  return chromium.launch({
    executablePath,
    // A busy machine takes the time it takes: what hangs is ended by the runner of the tests.
    timeout: 0,
    args: [
      '--no-sandbox',
      '--disable-gpu',
      '--disable-quic',
      '--no-first-run',
      '--disable-background-networking',
    ],
  });
}
