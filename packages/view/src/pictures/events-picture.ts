import type { RunEvent } from '@leat/core';
import * as Plot from '@observablehq/plot';
import { plain, short } from '../text/names.js';
import type { Colours } from './palette.js';
import type { Maker } from './document.js';
import { dateAxis } from './time-axis.js';

/** What happened when: one row for each kind, one mark for each time. */
export function eventsPicture(
  maker: Maker,
  events: readonly RunEvent[],
  days: readonly [number, number],
  startDate: string,
  colours: Colours,
): Element {
  const kinds = [...new Set(events.map(({ kind }) => kind))];
  const marks = new Map(events.map(({ kind, time }) => [`${kind} ${time}`, { kind, time }]));
  return Plot.plot({
    document: maker.document,
    width: 372,
    height: 34 + kinds.length * 20,
    marginLeft: 104,
    marginRight: 14,
    marginTop: 6,
    marginBottom: 26,
    style: { fontSize: '12px', background: 'none', color: colours.soft },
    x: { domain: [...days], label: null },
    y: { domain: kinds, label: null, tickFormat: (kind: string) => short(plain(kind, maker.display), 16) },
    marks: [
      Plot.ruleY(kinds, { stroke: colours.grid }),
      Plot.axisY({
        tickSize: 0,
        label: null,
        fontSize: 12,
        tickFormat: (kind: string) => short(plain(kind, maker.display), 16),
      }),
      dateAxis(maker, startDate, days, { fontSize: 12 }),
      Plot.tickX([...marks.values()], {
        ...{ x: 'time', y: 'kind', stroke: colours.water, strokeWidth: 2, insetTop: 4, insetBottom: 4 },
      }),
    ],
  });
}
