import { execFileSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { firefox, type Browser } from 'playwright-core';

const paths = ['/usr/bin/firefox-esr', '/usr/bin/firefox'];
/** Older ones lack commands of WebDriver BiDi that the driver gives. */
const oldest = 143;
const executablePath = paths.find((path) => existsSync(path) && versionOf(path) >= oldest);

function versionOf(path: string): number {
  return Number(/\d+/.exec(execFileSync(path, ['--version'], { encoding: 'utf8' }))?.[0]);
}

/** Whether the browser is on this machine. No machine must have it: what needs it is skipped without. */
export const firefoxHere = executablePath !== undefined;

/** What stands behind the name of what needs the browser: nothing where it is there. */
export const firefoxMissing = firefoxHere
  ? ''
  : ` (skipped: no ${paths.join(' or ')} of version ${oldest} or later)`;

/** The browser as it is installed, without a window, driven by WebDriver BiDi. */
export const openFirefox = (): Promise<Browser> =>
  firefox.launch({
    channel: 'moz-firefox',
    ...(executablePath !== undefined && { executablePath }),
    timeout: 0,
  });
