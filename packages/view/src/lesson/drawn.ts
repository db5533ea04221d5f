import type { Run, Scenario, Vessel } from '@leat/core';
import type { DrawnFlow, DrawnVessel } from '../pictures/drawn-system.js';
import { finished } from '../pictures/frame.js';
import { pageColours } from '../pictures/palette.js';
import { narrowSystem, roomySystem, wideSystem, type SystemFrame } from '../pictures/system-layout.js';
import { systemPicture } from '../pictures/system-picture.js';
import { volumeText } from '../text/numbers.js';
import type { Canvas } from './chart.js';
import { numberText, plainly } from './fill.js';
import type { LessonFrame } from './words.js';

const kindWord = (kind: string, { kinds }: LessonFrame): string => kinds[kind] ?? kind;

const amount = (value: number, { language }: LessonFrame): string =>
  numberText(value, Number.isInteger(value) ? 0 : 1, language);

function drawnVessel(scenario: Scenario, { name, kind, volume }: Vessel, frame: LessonFrame): DrawnVessel {
  const fish = scenario.fish.filter((cohort) => cohort.vessel === name);
  const crops = scenario.plantings.filter(({ vessel }) => vessel === name);
  return {
    ...{ name, volume, kind: kindWord(kind, frame) },
    life: [
      ...(fish.length > 0 ? (['fish'] as const) : []),
      ...(crops.some(({ area }) => area > 0.05) ? (['plants'] as const) : []),
      ...(kind === 'media-bed' ? (['gravel'] as const) : []),
    ],
    holds: [
      ...fish.map(({ number, mass }) => `${amount(number, frame)} × ${amount(mass, frame)} g`),
      ...crops.filter(({ area }) => area > 0.05).map(({ area }) => `${amount(area, frame)} m²`),
    ],
  };
}

/** What flows in and out before anything is run: the ways of the file, all of one width. */
function drawnFlows({ model }: Run): readonly DrawnFlow[] {
  const { vessels } = model.layout;
  return model.streams.flatMap(({ from, to, kind }) =>
    to < 0
      ? []
      : [{ ...(from >= 0 && { from: vessels[from] }), to: vessels[to], kind, rate: from < 0 ? 0.02 : 1 }],
  );
}

/**
 * The system of a run as it is built: vessels, what lives in them, ways of water. It tells nothing of what came out, so it may
 * stand before a prediction.
 */
export function drawnSystem({ maker, frame, width }: Canvas, run: Run): Element {
  const { scenario } = run.model;
  const vessels = scenario.vessels.map((vessel) => drawnVessel(scenario, vessel, frame));
  const flows = drawnFlows(run);
  const frames: readonly SystemFrame[] = [wideSystem, roomySystem, narrowSystem];
  const drawn = frames.map((each) => systemPicture(maker, vessels, flows, each, pageColours));
  const svg =
    drawn.find((each) => Number(each.getAttribute('width')) <= Math.min(width, 760)) ??
    drawn[drawn.length - 1];
  svg.setAttribute('class', 'system');
  // What the tap gives came out of the run: it is no part of what was built.
  for (const text of [...svg.querySelectorAll('text, tspan')])
    if (/ L\/d$/.test(text.textContent) && text.children.length === 0) text.remove();
  const told = vessels.map(({ name, kind, volume, holds }) =>
    [`${name} (${kind}, ${volumeText(volume)})`, ...holds].join(': '),
  );
  const ways = flows.map(({ from, to }) => `${from ?? frame.outside} → ${to ?? frame.outside}`);
  return finished(maker, svg, {
    title: frame.system,
    description: plainly(frame.systemText, { vessels: told.join('; '), flows: ways.join(', ') }),
  });
}
