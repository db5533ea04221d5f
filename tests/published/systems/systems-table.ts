import { type Band, drawnValues, type SystemBands, type Verdict } from './bands.js';
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

function line({ quantity, low, median, high, verdict }: Band): string {
  const { what, unit, where, mark } = quantity;
  const cells = [
    what,
    unit,
    `${published(quantity.published)} [${mark}]`,
    where,
    number(median),
    `${number(low)} to ${number(high)}`,
    verdict === 'hit' ? (quantity.chosen === undefined ? 'hit' : 'hit, chosen') : `**${verdict}**`,
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
  const heads = { miss: 'Missed', vague: 'Vague', chosen: 'Beside' };
  const said = (word: keyof typeof heads): string[] => {
    const texts = [...new Set(system.quantities.flatMap((quantity) => quantity[word] ?? []))];
    return texts.map((text) => {
      const about = system.quantities.filter((quantity) => quantity[word] === text);
      const head = about.map(({ what }) => what).join('; ');
      return `- ${heads[word]} (${head}): ${text}${text.endsWith('.') ? '' : '.'}`;
    });
  };
  const tested = system.quantities.flatMap((quantity) =>
    blamed(system, quantity).map(
      (text) => `- Tested, ${quantity.what}, numbers of the tables as they are: ${text}.`,
    ),
  );
  const failing = system.fails === undefined ? [] : [`- Failing: ${system.fails}`];
  const drawn = (system.assumed ?? []).map(
    ({ path, low, high, unit, why }) => `- Drawn too: \`${path}\`, ${low} to ${high} ${unit}: ${why}.`,
  );
  return [...drawn, ...failing, ...said('miss'), ...said('vague'), ...tested, ...said('chosen')];
}

/** How often a system fails, in words. */
export function failingText({ failing, brokenOff, draws, fish }: SystemBands): string {
  if (!fish) return 'No fish in it: nothing that can fail.';
  const share = `${Math.round((100 * failing) / draws)} %`;
  const broken = brokenOff > 0 ? `, of which ${brokenOff} broke off` : '';
  return `It fails in ${failing} of ${draws} draws (${share})${broken}.`;
}

const verdicts = ['hit', 'vague', 'failing', 'miss'] as const;

/** How many quantities came out how: `hit 3, vague 1, failing 0, miss 2`. */
function counted(bands: readonly Band[]): string {
  const count = (verdict: Verdict): number => bands.filter((band) => band.verdict === verdict).length;
  return verdicts.map((verdict) => `${verdict} ${count(verdict)}`).join(', ');
}

/** Quantities for which nothing that went in was chosen. */
const free = (bands: readonly Band[]): readonly Band[] =>
  bands.filter(({ quantity }) => quantity.chosen === undefined);

/** Tells the bands of a system: those drawn, or those listed. */
type BandsOf = (system: SystemCase) => SystemBands;

/** The headline of whole systems: quantities for which nothing that went in was chosen, by verdict. */
export function systemsCount(bandsOf: BandsOf): string {
  const bands = free(systemCases.flatMap((system) => bandsOf(system).bands));
  return `${bands.length} quantities of ${systemCases.length} systems: ${counted(bands)}.`;
}

const firstKnown = new Map<SystemCase, string>();

/** The quantities by the first draws, which stand in the document so that a short test tells whether it is fresh. */
function firstDraws(system: SystemCase): string {
  const found = firstKnown.get(system);
  if (found !== undefined) return found;
  const draws = [1, 2].map((seed) => {
    const values = drawnValues(system, seed)?.map((value) => String(Number(value.toPrecision(4))));
    return `draw ${seed}: ${values?.join(', ') ?? 'broke off'}`;
  });
  const text = `By the first draws, in the order of the table: ${draws.join('; ')}.`;
  firstKnown.set(system, text);
  return text;
}

function section(system: SystemCase, found: SystemBands): string {
  const { bands } = found;
  return [
    `### ${system.name}`,
    '',
    `${system.publication}. Scenario \`systems/${system.file}.yaml\`. ${failingText(found)}`,
    `Of ${free(bands).length} quantities: ${counted(free(bands))}.`,
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
 * 5th to the 95th percentile of seeded draws of every number in its range, beside what was published. A hit is an overlap
 * of the two by a band no wider than a factor 4, of a system that works in 95 % of the draws. Markdown, the same bytes
 * each time.
 * @param bandsOf tells the bands of a system
 */
export function systemsTable(bandsOf: BandsOf): string {
  return [
    '## Whole systems',
    '',
    systemsCount(bandsOf),
    '',
    'A hit: the published value lies in the band from the 5th to the 95th percentile of the draws, the band is no wider than a ' +
      'factor 4 (else *vague*), and the system fails in at most 5 % of the draws (else *failing*): TAN over 10 or nitrite over 5 mg N/L ' +
      'in the mean where the fish are, or more than half of a group of fish dead. No such system is kept. Quantities for which something that went in was chosen are in the tables and not in the count.',
    'The band holds what the ranges of the tables leave open, not what the scenario had to assume (marked [A] in it), unless a note says that it is drawn too.',
    '',
    ...systemCases.map((system) => section(system, bandsOf(system))),
  ].join('\n');
}

/** The same without its medians, bands and counts of failing draws, beside {@link systemsTable} of bands that are listed. */
export function withoutBands(table: string): string {
  return table
    .replace(/in \d+ of (\d+) draws \(\d+ %\)(?:, of which \d+ broke off)?/g, 'in NaN of $1 draws (NaN %)')
    .replace(
      /\| [^|]+ \| [^|]+ to [^|]+ (\| (?:hit|hit, chosen|\*\*\w+\*\*) \|)$/gm,
      '| NaN | NaN to NaN $1',
    );
}
