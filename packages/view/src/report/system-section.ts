import {
  type DrawnFlow,
  finished,
  type Maker,
  narrowSystem,
  pageColours,
  roomySystem,
  type SystemFrame,
  systemPicture,
  wideSystem,
} from '../pictures/index.js';
import { type Display, flowPhrase, listed, volumeText } from '../text/index.js';
import type { RunSummary, SystemSummary } from './run-summary.js';
import { figure, runTitle, section } from './elements.js';
import { folded, table } from './elements.js';

const end = (name: string | undefined, { words }: Display): string => name ?? words.report.system.outside;

function described({ vessels, flows }: Pick<SystemSummary, 'vessels' | 'flows'>, display: Display): string {
  const words = display.words.report.system;
  const tanks = vessels.map(({ name, kind, volume, holds }) =>
    [`${name} (${kind}, ${volumeText(volume, display)})`, ...holds].join(': '),
  );
  const ways = flows
    .filter(({ to }) => to !== undefined)
    .map(({ from, to }) => words.way(end(from, display), end(to, display)));
  return words.described(tanks.join('; '), listed(ways, display));
}

/** What leaves for good, by vessel: it is not drawn, but said. */
function losses(flows: readonly DrawnFlow[], display: Display): string {
  const words = display.words.report.system;
  const kinds = new Map<string, number>();
  for (const { to, kind, rate } of flows)
    if (to === undefined) kinds.set(kind, (kinds.get(kind) ?? 0) + rate);
  const lost = [...kinds].map(([kind, rate]) =>
    words.loss(display.amount(rate * 1000, 'L/d'), flowPhrase(kind, display)),
  );
  return lost.length === 0 ? '' : words.notDrawn(listed(lost, display));
}

function tables(maker: Maker, { vessels, flows }: SystemSummary): HTMLElement {
  const { display } = maker;
  const words = display.words.report.system;
  const both = maker.html(
    'div',
    {},
    table(
      maker,
      words.vessels,
      [
        { name: words.vessel },
        { name: words.kind },
        { name: words.water, number: true },
        { name: words.holds },
      ],
      vessels.map(({ name, kind, volume, holds }) => [
        name,
        kind,
        volumeText(volume, display),
        holds.join('; '),
      ]),
    ),
    table(
      maker,
      words.ways,
      [
        { name: words.from },
        { name: words.to },
        { name: words.how },
        { name: display.unit('m³/d'), number: true },
      ],
      flows.map(({ from, to, kind, rate }) => [
        end(from, display),
        end(to, display),
        flowPhrase(kind, display),
        display.number(display.value(rate, 'm³/d')),
      ]),
    ),
  );
  return folded(maker, words.inFigures, both);
}

/** Room of a picture on a narrow screen, px. */
const narrowRoom = 352;

/** A small system is not blown up by more than this. */
const mostEnlarged = 1.2;

/** The picture in the first frame in which it fits a narrow screen, or in the last. */
function fitting(
  maker: Maker,
  { vessels, flows }: Pick<SystemSummary, 'vessels' | 'flows'>,
  frames: readonly SystemFrame[],
): Element {
  const [frame, ...others] = frames;
  const svg = systemPicture(maker, vessels, flows, frame, pageColours);
  if (others.length === 0 || Number(svg.getAttribute('width')) <= narrowRoom) return svg;
  return fitting(maker, { vessels, flows }, others);
}

/** Vessels and flows drawn for a wide screen and for a narrow one: a page shows the one that fits. */
export function systemPictures(
  maker: Maker,
  system: Pick<SystemSummary, 'vessels' | 'flows'>,
): readonly Element[] {
  const drawn = (kind: string, frames: readonly SystemFrame[]): Element => {
    const svg = fitting(maker, system, frames);
    svg.setAttribute('class', kind);
    svg.setAttribute('style', `max-width:${mostEnlarged * Number(svg.getAttribute('width'))}px`);
    return finished(maker, svg, {
      title: maker.display.words.report.system.picture,
      description: described(system, maker.display),
    });
  };
  return [drawn('wide', [wideSystem]), drawn('narrow', [roomySystem, narrowSystem])];
}

/** Vessels and flows drawn, one picture for each run that has a system of its own. */
export function systemSection(maker: Maker, runs: readonly RunSummary[]): HTMLElement {
  const { display } = maker;
  const words = display.words.report.system;
  const seen = new Map<string, string[]>();
  const shapes = runs.map(({ system }) =>
    system === undefined
      ? ''
      : JSON.stringify([system.vessels, system.flows.map(({ from, to }) => [from, to])]),
  );
  runs.forEach(({ letter }, i) => seen.set(shapes[i], [...(seen.get(shapes[i]) ?? []), letter]));
  const parts = [...seen].flatMap(([shape, letters]) => {
    const { system } = runs[shapes.indexOf(shape)];
    if (system === undefined)
      return [maker.html('p', { class: 'note' }, words.saved(listed(letters, display)))];
    const text = words.caption(losses(system.flows, display));
    const caption = runs.length > 1 ? [runTitle(maker, listed(letters, display), text)] : [text];
    return [figure(maker, systemPictures(maker, system), caption, 'system', tables(maker, system))];
  });
  return section(maker, 'system', words.title, ...parts);
}
