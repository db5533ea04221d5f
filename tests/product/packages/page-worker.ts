import { InputError } from '@leat/core';
import { serveJobs, type PagePort } from '@leat/core/workers';
import { everySeries } from './every-series.js';

declare const self: PagePort;

/** The worker of a page: nitrate of the run of a text, at its end; a text without words is a fault. */
serveJobs<{ readonly series: string }, string, number>(self, ({ series }) => (text) => {
  if (text === '') throw new InputError([{ key: 'text', problem: 'is empty' }]);
  return everySeries(text)[series].at(-1) ?? Number.NaN;
});
