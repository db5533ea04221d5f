import { existsSync } from 'node:fs';
import { firefox, type Browser } from 'playwright-core';

const paths = ['/usr/bin/firefox-esr', '/usr/bin/firefox'];
const executablePath = paths.find((path) => existsSync(path));

/** Whether the browser is on this machine. No machine must have it: what needs it is skipped without. */
export const firefoxHere = executablePath !== undefined;

/** What stands behind the name of what needs the browser: nothing where it is there. */
export const firefoxMissing = firefoxHere
  ? ''
  : ` (skipped: no ${paths.join(' or ')}; apt-get install firefox-esr)`;

/** The browser as it is installed, without a window, driven by WebDriver BiDi. */
export const openFirefox = (): Promise<Browser> =>
  firefox.launch({
    channel: 'moz-firefox',
    ...(executablePath !== undefined && { executablePath }),
    timeout: 0,
  });
