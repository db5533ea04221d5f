import { drawnValues, type Band } from './bands.js';
import { systemCases } from './cases.js';
import { usualRuns } from './draw-runs.js';
import type { SystemCase, SystemQuantity } from './system-case.js';

/** Three digits that count. */
const number = (value: number): string => String(Number(value.toPrecision(3)));

/** A published number or range, to no more digits than were printed. */
function published({ low, high }: SystemQuantity['published']): string {
  const middle = (low + high) / 2;
  const narrow = high - low < 0.03 * Math.abs(middle);
  return narrow ? String(Number(middle.toPrecision(4))) : `${number(low)}-${number(high)}`;
}

function line({ quantity, low, median, high, hit }: Band): string {
  const { what, unit, where, mark } = quantity;
  const cells = [
    what,
    unit,
    `${published(quantity.published)} [${mark}]`,
    where,
    number(median),
    `${number(low)} to ${number(high)}`,
    hit ? 'hit' : '**miss**',
  ];
  return `| ${cells.join(' | ')} |`;
}

/** What the prediction becomes with one assumption changed. */
function blamed(system: SystemCase, quantity: SystemQuantity): string[] {
  return (quantity.blame ?? []).map(({ assumption, set }) => {
    const usual = quantity.value(usualRuns(system));
    const changed = quantity.value(usualRuns(system, set));
    const unit = quantity.unit === '1' ? '' : ` ${quantity.unit}`;
    return `with ${assumption}: ${number(changed)}${unit} in place of ${number(usual)}`;
  });
}

/** Notes of a system: quantities that share a reason share its paragraph. */
function notes(system: SystemCase): string[] {
  const said = (word: 'miss' | 'chosen'): string[] => {
    const texts = [...new Set(system.quantities.flatMap((quantity) => quantity[word] ?? []))];
    return texts.map((text) => {
      const about = system.quantities.filter((quantity) => quantity[word] === text);
      const head = about.map(({ what }) => what).join('; ');
      return `- ${word === 'miss' ? 'Missed' : 'Beside'} (${head}): ${text}${text.endsWith('.') ? '' : '.'}`;
    });
  };
  const tested = system.quantities.flatMap((quantity) =>
    blamed(system, quantity).map(
      (text) => `- Tested, ${quantity.what}, numbers of the tables as they are: ${text}.`,
    ),
  );
  return [...said('miss'), ...tested, ...said('chosen')];
}

const firstKnown = new Map<SystemCase, string>();

/** The quantities by the first draws, which stand in the document so that a short test tells whether it is fresh. */
function firstDraws(system: SystemCase): string {
  const found = firstKnown.get(system);
  if (found !== undefined) return found;
  const draws = [1, 2].map((seed) => {
    const values = drawnValues(system, seed).map((value) => String(Number(value.toPrecision(4))));
    return `draw ${seed}: ${values.join(', ')}`;
  });
  const text = `By the first draws, in the order of the table: ${draws.join('; ')}.`;
  firstKnown.set(system, text);
  return text;
}

function section(system: SystemCase, bands: readonly Band[]): string {
  const hits = bands.filter(({ hit }) => hit).length;
  return [
    `### ${system.name}`,
    '',
    `${system.publication}. Scenario \`systems/${system.file}.yaml\`, ${system.draws} draws. ${hits} of ${bands.length} hit.`,
    '',
    '| quantity | unit | published | where | median | 90 % band | |',
    '| --- | --- | --- | --- | --- | --- | --- |',
    ...bands.map(line),
    '',
    firstDraws(system),
    '',
    ...notes(system),
    '',
  ].join('\n');
}

/**
 * Whole systems with their published dimensions, no number of the tables changed: the median and the band from the
 * 5th to the 95th percentile of seeded draws of every number in its range, beside what was published. A hit is
 * an overlap of the two. Markdown, the same bytes each time.
 * @param bandsOf tells the bands of a system
 */
export function systemsTable(bandsOf: (system: SystemCase) => readonly Band[]): string {
  const bands = systemCases.flatMap(bandsOf);
  const hits = bands.filter(({ hit }) => hit).length;
  return [
    `${bands.length} quantities of ${systemCases.length} systems: ${hits} hit, ${bands.length - hits} missed.`,
    'The band holds what the ranges of the tables leave open, not what the scenario had to assume (marked [A] in it).',
    '',
    ...systemCases.map((system) => section(system, bandsOf(system))),
  ].join('\n');
}

/** The same without its medians and bands, beside {@link systemsTable} of bands that are listed and not drawn. */
export function withoutBands(table: string): string {
  return table.replace(/\| [^|]+ \| [^|]+ to [^|]+ (\| (?:hit|\*\*miss\*\*) \|)$/gm, '| NaN | NaN to NaN $1');
}
