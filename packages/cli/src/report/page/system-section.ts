import { pageColours } from '../../picture/colours.js';
import type { Maker } from '../../picture/document.js';
import { finished } from '../../picture/finish.js';
import { narrowSystem, wideSystem } from '../../picture/system-frame.js';
import { systemPicture } from '../../picture/system-picture.js';
import { shown } from '../../render/number.js';
import type { DrawnFlow, ToldRun, ToldSystem } from '../told-run.js';
import { listed } from '../words.js';
import { figure, runTitle, section } from './figure.js';
import { folded, table } from './tables.js';

const litres = (volume: number): string => (volume < 1 ? `${shown(volume * 1000)} L` : `${shown(volume)} m³`);

const end = (name: string | undefined): string => name ?? 'outside';

function described({ vessels, flows }: ToldSystem): string {
  const tanks = vessels.map(({ name, kind, volume, holds }) =>
    [`${name} (${kind}, ${litres(volume)})`, ...holds].join(': '),
  );
  const ways = flows.filter(({ to }) => to !== undefined).map(({ from, to }) => `${end(from)} to ${end(to)}`);
  return `Vessels: ${tanks.join('; ')}. Water goes ${listed(ways)}.`;
}

/** What leaves for good, by vessel: it is not drawn, but told. */
function losses(flows: readonly DrawnFlow[]): string {
  const kinds = new Map<string, number>();
  for (const { to, kind, rate } of flows)
    if (to === undefined) kinds.set(kind, (kinds.get(kind) ?? 0) + rate);
  const words = [...kinds].map(([kind, rate]) => `${shown(rate * 1000)} L/d by ${kind}`);
  return words.length === 0 ? '' : `Not drawn: ${listed(words)}.`;
}

function tables(maker: Maker, { vessels, flows }: ToldSystem): HTMLElement {
  const both = maker.html(
    'div',
    {},
    table(
      maker,
      'Vessels',
      [{ name: 'vessel' }, { name: 'kind' }, { name: 'water', number: true }, { name: 'holds' }],
      vessels.map(({ name, kind, volume, holds }) => [name, kind, litres(volume), holds.join('; ')]),
    ),
    table(
      maker,
      'Ways of water, mean over the run',
      [{ name: 'from' }, { name: 'to' }, { name: 'how' }, { name: 'm³/d', number: true }],
      flows.map(({ from, to, kind, rate }) => [end(from), end(to), kind, shown(rate)]),
    ),
  );
  return folded(maker, 'Vessels and ways of water in figures', both);
}

/** Vessels and flows drawn, one picture for each run that has a system of its own. */
export function systemSection(maker: Maker, told: readonly ToldRun[]): HTMLElement {
  const seen = new Map<string, string[]>();
  const shapes = told.map(({ system }) =>
    system === undefined
      ? ''
      : JSON.stringify([system.vessels, system.flows.map(({ from, to }) => [from, to])]),
  );
  told.forEach(({ letter }, i) => seen.set(shapes[i], [...(seen.get(shapes[i]) ?? []), letter]));
  const parts = [...seen].flatMap(([shape, letters]) => {
    const { system } = told[shapes.indexOf(shape)];
    if (system === undefined)
      return [
        maker.html(
          'p',
          { class: 'note' },
          `${listed(letters)}: a saved document holds no vessels and flows to draw; make the report from the scenario file.`,
        ),
      ];
    const drawn = ([frame, kind]: readonly [typeof wideSystem, string]): Element => {
      const svg = systemPicture(maker, system.vessels, system.flows, frame, pageColours);
      svg.setAttribute('class', kind);
      return finished(maker, svg, {
        title: 'The system: vessels and ways of water',
        description: described(system),
      });
    };
    const words = `Widths are the mean flow over the run; dashed: water from outside. ${losses(system.flows)}`;
    const caption = told.length > 1 ? [runTitle(maker, listed(letters), words)] : [words];
    return [
      figure(
        maker,
        [drawn([wideSystem, 'wide']), drawn([narrowSystem, 'narrow'])],
        caption,
        'system',
        tables(maker, system),
      ),
    ];
  });
  return section(maker, 'system', 'The system', ...parts);
}
