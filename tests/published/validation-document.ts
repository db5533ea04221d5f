import { citationOf } from './citations.js';
import { type CheckKind, hits, kindOf, type PublishedCheck, type Topic } from './published-check.js';

/** A check with the value of the model. */
interface Outcome {
  readonly check: PublishedCheck;
  readonly kind: CheckKind;
  readonly value: number;
  readonly hit: boolean;
}

const markNames: Readonly<Record<PublishedCheck['mark'], string>> = {
  R: 'read in the publication, an abstract or a reprint',
  S: 'second-hand, in a work that cites it',
  M: 'from memory of the publication named',
  C: 'computed by other code from the published formula: checks the implementation only',
};
const marks = ['R', 'S', 'M', 'C'] as const;

/** A markdown table. Bars in cells are escaped. */
function table(head: readonly string[], rows: readonly (readonly string[])[]): string {
  const line = (cells: readonly string[]): string =>
    `| ${cells.map((cell) => cell.replaceAll('|', '\\|')).join(' | ')} |`;
  return [line(head), line(head.map(() => '---')), ...rows.map(line)].join('\n');
}

/** Digits enough to see the tolerance, three at least. */
function shown(value: number, amount: number): string {
  const digits = amount > 0 ? Math.ceil(Math.log10(Math.abs(value) / amount)) + 2 : 3;
  return String(Number(value.toPrecision(Math.min(7, Math.max(3, digits)))));
}

function publishedText({ published, unit }: PublishedCheck): string {
  const figures =
    typeof published === 'number'
      ? String(Number(published.toPrecision(6)))
      : `${published.low} to ${published.high}`;
  return unit === '1' ? figures : `${figures} ${unit}`;
}

const modelText = ({ check, value }: Outcome): string => shown(value, check.tolerance.amount);

function verdict({ check, hit }: Outcome): string {
  if (!hit) return '**miss**';
  return check.chosen === undefined ? 'hit' : `hit; ${check.chosen} was chosen for it`;
}

function topicSection(title: string, note: string | undefined, outcomes: readonly Outcome[]): string {
  const rows = outcomes.map((outcome) => {
    const { check } = outcome;
    return [
      check.what,
      publishedText(check),
      modelText(outcome),
      check.tolerance.words,
      verdict(outcome),
      `${check.source}, ${check.where}`,
      check.mark,
    ];
  });
  const head = ['what', 'published', 'model', 'tolerance', '', 'source', 'mark'];
  return [`### ${title}`, ...(note === undefined ? [] : [note]), table(head, rows)].join('\n\n');
}

function countSection(outcomes: readonly Outcome[]): string {
  const sources = [...new Set(outcomes.map(({ check }) => check.source))].sort();
  const count = (chosen: readonly Outcome[]): string => (chosen.length === 0 ? '' : String(chosen.length));
  const line = (name: string, from: readonly Outcome[]): string[] => [
    name,
    ...marks.map((mark) => count(from.filter(({ check }) => check.mark === mark))),
    String(from.length),
    count(from.filter(({ hit }) => hit)),
    count(from.filter(({ hit }) => !hit)),
  ];
  const rows = sources.map((source) =>
    line(
      source,
      outcomes.filter(({ check }) => check.source === source),
    ),
  );
  return table(['source', ...marks, 'all', 'hit', 'miss'], [...rows, line('all', outcomes)]);
}

function missSection(outcomes: readonly Outcome[]): string {
  const rows = outcomes
    .filter(({ hit }) => !hit)
    .map((outcome) => {
      const { check } = outcome;
      return [check.what, publishedText(check), modelText(outcome), check.source, check.miss ?? ''];
    });
  return table(['what', 'published', 'model', 'source', 'why, as far as it is known'], rows);
}

function summary(outcomes: readonly Outcome[], systems: string): string {
  const tell = (from: readonly Outcome[]): string => {
    const missed = from.filter(({ hit }) => !hit).length;
    return `${from.length}: ${from.length - missed} hit, ${missed} miss`;
  };
  const free = (kind: CheckKind): string =>
    tell(outcomes.filter((outcome) => outcome.kind === kind && outcome.check.chosen === undefined));
  const chosen = outcomes.filter(({ check }) => check.chosen !== undefined);
  return [
    `- *Formulas*, published tables and examples of a formula that Leat has built: ${free('formula')}.`,
    `- *Processes*, a rate, a yield or a share that comes out: ${free('process')}.`,
    `- *Systems*, a whole system that comes out, by draws: ${systems}`,
    `- Beside them, values that a number of the tables was chosen for, so that a hit shows little: ${tell(chosen)}.`,
  ].join('\n');
}

/**
 * Everything that is held against what is published, as markdown. The same checks give the same bytes.
 * @param systems the count of whole systems in words
 */
export function validationDocument(topics: readonly Topic[], systems: string): string {
  const known = topics.map((topic) => ({
    title: topic.title,
    note: topic.note,
    outcomes: topic.checks.map((check): Outcome => {
      const value = check.compute();
      return { check, kind: kindOf(check, topic), value, hit: hits(check, value) };
    }),
  }));
  const outcomes = known.flatMap((topic) => topic.outcomes);
  const sources = [...new Set(outcomes.map(({ check }) => check.source))].sort();
  return [
    '# Leat held against what is published',
    'Made by `npm run validate`; a test compares it with a fresh one. Default numbers of the tables, nothing tuned for a check. ' +
      'A known miss stays in the table, and the test of it fails on the day it becomes a hit, so that it cannot be forgotten. ' +
      'Values whose digits are uncertain [W] are never used. Tolerances other than `as printed` and `inside`, and the conditions ' +
      'where the publication does not say them, are judgments of this project.',
    summary(outcomes, systems),
    `Marks: ${marks.map((mark) => `${mark} ${markNames[mark]}`).join('; ')}.`,
    '## Checks by source',
    countSection(outcomes),
    '## Misses',
    missSection(outcomes),
    '## Checks by subject',
    ...known.map((topic) => topicSection(topic.title, topic.note, topic.outcomes)),
    '## Sources',
    sources.map((source) => `- ${source}: ${citationOf(source)}`).join('\n'),
  ].join('\n\n');
}
