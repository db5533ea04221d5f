import { existsSync } from 'node:fs';
import { chromium, type Browser } from 'playwright-core';

const executablePath = '/usr/bin/chromium';

/** Whether the browser is on this machine. */
export const chromiumHere = existsSync(executablePath);

/** What stands behind the name of a bench that needs the browser: nothing where it is there. */
export const chromiumMissing = chromiumHere
  ? ''
  : ` (skipped: no ${executablePath}; apt-get install chromium)`;

/** The browser without a window, asking nobody. */
export function openChromium(): Promise<Browser> {
  return chromium.launch({
    executablePath,
    args: [
      '--no-sandbox',
      '--disable-gpu',
      '--disable-quic',
      '--no-first-run',
      '--disable-background-networking',
    ],
  });
}

/** The middle one of some times. */
export const medianOf = (values: readonly number[]): number =>
  [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)];
