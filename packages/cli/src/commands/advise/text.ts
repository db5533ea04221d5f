import { compareHarm, type AdviceAim, type AdviceOutcome, type ChangeName, type Proposal } from '@leat/core';
import type { FoundAdvice } from '@leat/core/tasks';
import {
  cautions,
  changePhrase,
  changeWord,
  dayNames,
  type Display,
  listed,
  type VerdictLine,
  verdictTold,
  yieldPhrase,
} from '@leat/view/text';
import { savedDocument } from '../../files/saved-document.js';
import { linesText, wrap } from '../../terminal/columns.js';
import type { Style } from '../../terminal/style.js';

/** What was found for a run. */
export interface Advice extends FoundAdvice {
  readonly title: string;
  readonly startDate: string;
  readonly aim: AdviceAim;
  readonly before: AdviceOutcome;
  /** Conditions that were asked for. */
  readonly keep: readonly string[];
  /** Changes that were asked for; none: all that fit. */
  readonly asked: readonly ChangeName[];
}

/** Advice with what it is told by. */
interface Telling {
  readonly advice: Advice;
  readonly display: Display;
  readonly style: Style;
}

const width = 80;

/** Proposals that are told: of those that are enough, and of those that are not where few are. */
const most = { enough: 6, short: 3 };

/** Which proposals are told, in their order: those that are enough, or the best where none is. */
function toldOf({ proposals }: Advice): readonly Proposal[] {
  const enough = proposals.filter((each) => each.enough).slice(0, most.enough);
  return enough.length > 0 ? enough : proposals.slice(0, most.short);
}

/** What a verdict tells first of a part of the system. */
const worstOf = (lines: readonly VerdictLine[]): VerdictLine['of'] | undefined =>
  lines.find(({ of }) => of !== 'forecast')?.of;

/** From when on a run is no forecast, what becomes of the fish, of what was worst in the run as it is, of what is worst now, and of feed that is left. */
function thenText(lines: readonly VerdictLine[], before: readonly VerdictLine[]): string {
  const told = ['forecast', 'fish', worstOf(before), worstOf(lines), 'feed'];
  return lines
    .filter(({ of }) => told.includes(of))
    .map(({ text }) => text)
    .join(' ');
}

/** A proposal: what, what then becomes of the run, and the lines that say it in the file. */
function proposalLines(
  { advice, display, style }: Telling,
  proposal: Proposal,
  number: number,
): readonly string[] {
  const { startDate, before } = advice;
  const name = dayNames(startDate);
  const { parts, outcome, lines } = proposal;
  const what = parts.map((part) => changePhrase(part, name, display)).join(', together with ');
  const was = verdictTold(before.verdict, startDate, display);
  const then = thenText(verdictTold(outcome.verdict, startDate, display), was);
  return [
    ...wrap(`${number}. ${what}`, width, '   ').map((line) => style.strong(line)),
    ...wrap(`   then: ${then}`, width, '     '),
    ...wrap(`   gives: ${yieldPhrase(outcome, before, display)}`, width, '     '),
    ...(lines.out.length === 0
      ? []
      : ['   take out of the file', ...lines.out.map((line) => `     ${line}`)]),
    '   put into the file',
    ...lines.put.map((line) => `     ${line}`),
    '',
  ];
}

/** What stands before the proposals: how the run goes, and what was looked for. */
function headLines({ advice, display, style }: Telling): readonly string[] {
  const { title, startDate, before, aim, situation, keep, vain } = advice;
  const name = dayNames(startDate);
  const was = verdictTold(before.verdict, startDate, display);
  const first = thenText(was, was);
  const asked = keep.length === 0 ? '' : ` It does not keep ${listed(keep.map((text) => `"${text}"`))}.`;
  const kept = keep.length === 0 ? '' : ' and keeps what was asked';
  const late =
    vain.length === 0 ? '' : `; from ${listed(vain.map(name))} on nothing was enough, alone or in pairs`;
  const wanted = `${aim === 'unease' ? 'what is not as it should be' : 'what harms fish, water or crops'}${kept}`;
  return [
    ...wrap(title, width).map((line) => style.strong(line)),
    '',
    ...wrap(`as it is: ${first}${before.harm.broken > 0 ? asked : ''}`, width, '  '),
    ...(aim === 'nothing'
      ? []
      : wrap(
          `looked for: the least change from ${name(situation.from)} on that ends ${wanted}${late} (--from takes another day)`,
          width,
          '  ',
        )),
    '',
  ];
}

/** What is said of the search: how far it goes, and what did not help. */
function endLines({ advice, display }: Telling): readonly string[] {
  const { proposals, before, runs, startDate } = advice;
  const name = dayNames(startDate);
  const missed = proposals.filter(({ parts, enough }) => parts.length === 1 && !enough);
  const helps = ({ outcome }: Proposal): boolean => compareHarm(outcome.harm, before.harm) < 0;
  const helped = missed.filter(helps).map(({ parts }) => changePhrase(parts[0], name, display));
  const vain = missed.filter((each) => !helps(each)).map(({ parts }) => changeWord(parts[0]));
  const anyEnough = proposals.some(({ enough }) => enough);
  return [
    ...(anyEnough && helped.length > 0
      ? wrap(`helps, but is not enough alone: ${helped.join('; ')}.`, width, '  ')
      : []),
    ...(advice.asked.length !== 1 && vain.length > 0
      ? wrap(`does not help alone: ${vain.join(', ')}.`, width, '  ')
      : []),
    ...wrap(
      `${runs} runs were tried, each change alone and the best in pairs. What lies between them was not: ` +
        'a smaller change may do too. Before: ' +
        yieldPhrase(before, before, display) +
        '.',
      width,
      '  ',
    ),
  ];
}

/** Cautions of changes that can hurt, each told where such a change is proposed. */
function changeCautions(told: readonly Proposal[]): readonly string[] {
  const names = new Set(told.flatMap(({ parts }) => parts.map(({ name }) => name)));
  const all = [
    ['feed', 'Fish that are fed little for long grow thin and fall ill: watch them.'],
    ['change-water', 'Fresh water must be as warm as the tank, and free of chlorine.'],
    ['air', 'Air and heat need power near water: licensed practice, and a way to go on in a power cut.'],
    ['heat', 'Heat fish slowly, and by licensed electrical work.'],
    ['salt', 'Salt stays in the water: crops stand little of it.'],
  ] as const;
  return all.flatMap(([name, text]) => (names.has(name) ? [text] : []));
}

/** What the search found, in a sentence; where one change was asked for, how much of it. */
function findingOf({ advice, display }: Telling, told: readonly Proposal[]): string {
  const { proposals, asked, startDate } = advice;
  const enough = proposals.filter((each) => each.enough).length;
  const [first] = told as readonly (Proposal | undefined)[];
  if (first === undefined) return 'No change that is known here fits this system.';
  if (asked.length === 1) {
    const answer = changePhrase(first.parts[0], dayNames(startDate), display);
    return enough > 0
      ? `Answer: ${answer}.`
      : `Not enough, however much: ${changeWord(first.parts[0])}. The best of it leaves:`;
  }
  if (enough === 0)
    return 'None of the changes known here is enough, alone or in pairs. The best of them leave:';
  return enough === 1 ? 'One way is enough:' : `${enough} ways are enough. The least trouble first:`;
}

/** Advice for reading, 80 columns wide. */
export function adviceText(advice: Advice, display: Display, style: Style): string {
  const { aim } = advice;
  const telling = { advice, display, style };
  const head = headLines(telling);
  const faint = (lines: readonly string[]): readonly string[] =>
    lines.flatMap((line) => wrap(line, width, '  ')).map((line) => style.faint(line));
  if (aim === 'nothing')
    return linesText([...head, style.strong('Nothing need be done.'), '', ...faint(cautions)]);
  const told = toldOf(advice);
  const finding = findingOf(telling, told);
  return linesText([
    ...head,
    ...wrap(finding, width, '  ').map((line) => style.strong(line)),
    '',
    ...told.flatMap((proposal, i) => proposalLines(telling, proposal, i + 1)),
    ...endLines(telling),
    '',
    ...faint([...changeCautions(told), ...cautions]),
  ]);
}

/** Advice as one JSON document: the lines of each proposal as they are put into the file. */
export function adviceDocument(advice: Advice): string {
  const { proposals, ...rest } = advice;
  const told = proposals.map(({ parts, outcome, enough, runs, lines }) => ({
    parts,
    outcome,
    enough,
    runs,
    lines,
  }));
  return savedDocument('leat-advice', { ...rest, proposals: told, cautions });
}
