import { askedOf, type Swept } from '../render/sweep.js';
import { valueText, type Varied } from '../vary.js';
import { lightColours } from './colours.js';
import { newMaker } from './document.js';
import { finished } from './finish.js';
import { sweepLine } from './sweep-line.js';
import { sweepMap, zeroDashes } from './sweep-map.js';

/** Size of the picture and of its parts, px. */
const width = 900;
const head = 64;
const panel = { line: 330, map: 470 };

/** What an axis says: the path and its unit. */
const axisWords = ({ path, unit }: Varied): string => (unit === '' ? path : `${path}, ${unit}`);

/**
 * A sweep as one standalone SVG: a line over one quantity, a map over two, one below the other for each measure
 * (for each margin where no measure was asked for). Where a condition fails is told by marks and by the line on
 * which its margin is zero, not by colour alone. The same input gives the same bytes.
 */
export function sweepPicture(swept: Swept): string {
  const maker = newMaker();
  const colours = lightColours;
  const { title, lists, measures } = swept;
  const asked = askedOf(swept).filter((_, i) => measures.length === 0 || i < measures.length);
  const [one, two] = lists.map(({ varied }) => axisWords(varied));
  const each = lists.length === 1 ? panel.line : panel.map;
  const keys = two === undefined ? [] : swept.conditions;
  const foot = head + asked.length * each;
  const height = foot + 16 + keys.length * 24;
  const frame = { width: width - 40, height: each - 34 };
  const parts = asked.flatMap((quantity, i) => {
    const drawing = { maker, swept, quantity, colours, frame };
    const svg =
      two === undefined
        ? sweepLine({ ...drawing, across: one })
        : sweepMap({ ...drawing, down: one, across: two });
    const top = head + i * each;
    svg.setAttribute('x', '20');
    svg.setAttribute('y', String(top + 26));
    const words = { x: 24, y: top + 18, 'font-size': 16, 'font-weight': 600, fill: colours.soft };
    return [maker.svg('text', words, quantity.text), svg];
  });
  const svg = maker.svg(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      viewBox: `0 0 ${width} ${height}`,
      ...{ width, height, 'font-family': "'Source Sans 3', system-ui, sans-serif" },
    },
    maker.svg('rect', { width, height, fill: colours.paper }),
    maker.svg('text', { x: 24, y: 38, 'font-size': 22, 'font-weight': 700, fill: colours.ink }, title),
    ...parts,
    ...keys.flatMap(({ text }, i) => {
      const y = foot + 14 + i * 24;
      const line = { x1: 96, x2: 136, y1: y, y2: y, stroke: colours.limit, 'stroke-width': 2.5 };
      const dashes = { 'stroke-dasharray': zeroDashes[i % zeroDashes.length] };
      return [
        maker.svg('line', { ...line, ...dashes }),
        maker.svg('text', { x: 146, y: y + 5, 'font-size': 15, fill: colours.ink }, `edge of: ${text}`),
      ];
    }),
  );
  const ranges = lists.map(
    ({ varied, values }) =>
      `${values.length} values of ${varied.path} from ${valueText(varied, varied.from)} to ${valueText(varied, varied.to)}`,
  );
  const description = `${asked.map(({ text }) => text).join('; ')} over ${ranges.join(' and ')}`;
  return `${finished(maker, svg, { title, description }).outerHTML}\n`;
}
