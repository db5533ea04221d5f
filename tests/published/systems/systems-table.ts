import { bandsOf, type Band } from './bands.js';
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

function section(system: SystemCase): string {
  const bands = bandsOf(system);
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
    ...notes(system),
    '',
  ].join('\n');
}

/**
 * Whole systems with their published dimensions, no number of the tables changed: the median and the band from the
 * 5th to the 95th percentile of seeded draws of every number in its range, beside what was published. A hit is
 * an overlap of the two. Markdown, the same bytes each time.
 */
export function systemsTable(): string {
  const bands = systemCases.flatMap(bandsOf);
  const hits = bands.filter(({ hit }) => hit).length;
  return [
    `${bands.length} quantities of ${systemCases.length} systems: ${hits} hit, ${bands.length - hits} missed.`,
    'The band holds what the ranges of the tables leave open, not what the scenario had to assume (marked [A] in it).',
    '',
    ...systemCases.map(section),
  ].join('\n');
}
