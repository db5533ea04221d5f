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
} from '@leat/view/pictures';
import { listed, shown, volumeText } from '@leat/view/text';
import type { RunSummary, SystemSummary } from './run-summary.js';
import { figure, runTitle, section } from './elements.js';
import { folded, table } from './elements.js';

const end = (name: string | undefined): string => name ?? 'outside';

function described({ vessels, flows }: SystemSummary): string {
  const tanks = vessels.map(({ name, kind, volume, holds }) =>
    [`${name} (${kind}, ${volumeText(volume)})`, ...holds].join(': '),
  );
  const ways = flows.filter(({ to }) => to !== undefined).map(({ from, to }) => `${end(from)} to ${end(to)}`);
  return `Vessels: ${tanks.join('; ')}. Water goes ${listed(ways)}.`;
}

/** What leaves for good, by vessel: it is not drawn, but said. */
function losses(flows: readonly DrawnFlow[]): string {
  const kinds = new Map<string, number>();
  for (const { to, kind, rate } of flows)
    if (to === undefined) kinds.set(kind, (kinds.get(kind) ?? 0) + rate);
  const lost = [...kinds].map(([kind, rate]) => `${shown(rate * 1000)} L/d by ${kind}`);
  return lost.length === 0 ? '' : `Not drawn: ${listed(lost)}.`;
}

function tables(maker: Maker, { vessels, flows }: SystemSummary): HTMLElement {
  const both = maker.html(
    'div',
    {},
    table(
      maker,
      'Vessels',
      [{ name: 'vessel' }, { name: 'kind' }, { name: 'water', number: true }, { name: 'holds' }],
      vessels.map(({ name, kind, volume, holds }) => [name, kind, volumeText(volume), holds.join('; ')]),
    ),
    table(
      maker,
      'Ways of water, mean over the run',
      [{ name: 'from' }, { name: 'to' }, { name: 'how' }, { name: 'm³/d', number: true }],
      flows.map(({ from, to, kind, rate }) => [end(from), end(to), kind, shown(rate)]),
    ),
  );
  return folded(maker, 'Vessels and flows of water in figures', both);
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

/** Vessels and flows drawn, one picture for each run that has a system of its own. */
export function systemSection(maker: Maker, runs: readonly RunSummary[]): HTMLElement {
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
      return [
        maker.html(
          'p',
          { class: 'note' },
          `${listed(letters)}: a saved document holds no vessels and flows to draw; make the report from the scenario file.`,
        ),
      ];
    const drawn = (kind: string, frames: readonly SystemFrame[]): Element => {
      const svg = fitting(maker, system, frames);
      svg.setAttribute('class', kind);
      svg.setAttribute('style', `max-width:${mostEnlarged * Number(svg.getAttribute('width'))}px`);
      return finished(maker, svg, {
        title: 'The system: vessels and flows of water',
        description: described(system),
      });
    };
    const text = `Widths are the mean flow over the run; dashed: water from outside. ${losses(system.flows)}`;
    const caption = runs.length > 1 ? [runTitle(maker, listed(letters), text)] : [text];
    return [
      figure(
        maker,
        [drawn('wide', [wideSystem]), drawn('narrow', [roomySystem, narrowSystem])],
        caption,
        'system',
        tables(maker, system),
      ),
    ];
  });
  return section(maker, 'system', 'The system', ...parts);
}
