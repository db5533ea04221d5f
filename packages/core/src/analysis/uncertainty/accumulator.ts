import type { Outline } from './members.js';
import { LIMIT_NUMBERS, type MemberOutcome } from './members.js';
import { openSpreads } from './spreads.js';
import type { Spreads, SpreadsState } from './spreads.js';

/** A `member`, by its number from 0, and what is to be said of it. */
export interface MemberNote {
  readonly member: number;
  readonly reason: string;
}

/** What an accumulator holds, as plain data, in one form whatever the order in which it came. */
export interface AccumulatorState {
  /** Members of the whole ensemble, those that are not in yet included. */
  readonly members: number;
  /** 1 for each member that is in. */
  readonly done: Uint8Array;
  readonly series: SpreadsState;
  /** For each limit two cells: when first passed, and how long. */
  readonly limits: SpreadsState;
  /** For each limit the members that could be judged. */
  readonly judged: Uint32Array;
  /** For each limit the members that passed it. */
  readonly passed: Uint32Array;
  /** For each measure, then each condition (its margin): one number a member, NaN where there is none. */
  readonly answers: readonly Float64Array[];
  /** For each condition and member: 1 where it holds. */
  readonly holds: readonly Uint8Array[];
  readonly failed: readonly MemberNote[];
  /** For each measure, then each condition: the first member without an answer. */
  readonly unanswered: readonly (MemberNote | null)[];
}

/** Gathers the members of an ensemble in memory that hardly grows with their number. */
export interface Accumulator {
  /** Puts a member in. Throws RangeError when it is in already. */
  add(member: number, outcome: MemberOutcome): void;
  /** Whether a member, by its number from 0, is in. */
  has(member: number): boolean;
  /** Members that are in, failed ones included. */
  size(): number;
  /** Adds what another accumulator of the same ensemble holds. Throws RangeError when both hold a member. */
  merge(other: AccumulatorState): void;
  /** Everything held. Arrays are not copied: write it out before the next `add`. */
  state(): AccumulatorState;
  readonly series: Spreads;
  readonly limits: Spreads;
}

/** An empty accumulator for so many `members` of what an outline names. */
export function openAccumulator(outline: Outline, members: number): Accumulator {
  const series = openSpreads(outline.series.length * outline.times.length, members);
  const limits = openSpreads(outline.limits.length * 2, members);
  const questions = outline.measures.length + outline.conditions.length;
  const done = new Uint8Array(members);
  const judged = new Uint32Array(outline.limits.length);
  const passed = new Uint32Array(outline.limits.length);
  const answers = Array.from({ length: questions }, () => new Float64Array(members).fill(Number.NaN));
  const holds = outline.conditions.map(() => new Uint8Array(members));
  const failed: MemberNote[] = [];
  const unanswered = answers.map((): MemberNote | null => null);
  let size = 0;

  function take(member: number): void {
    if (!(member < members)) throw new RangeError(`member ${member} is not one of ${members}`);
    if (done[member] === 1) throw new RangeError(`member ${member} is in already`);
    done[member] = 1;
    size++;
  }

  function noteUnanswered(question: number, note: MemberNote): void {
    const known = unanswered[question];
    if (known === null || note.member < known.member) unanswered[question] = note;
  }

  function add(member: number, outcome: MemberOutcome): void {
    take(member);
    if (outcome.kind === 'failed') {
      failed.push({ member, reason: outcome.reason });
      return;
    }
    series.add(member, outcome.series);
    const spans = new Float64Array(outline.limits.length * 2).fill(Number.NaN);
    outline.limits.forEach((_, i) => {
      const at = i * LIMIT_NUMBERS;
      if (outcome.limits[at] !== 1) return;
      judged[i]++;
      if (Number.isNaN(outcome.limits[at + 1])) return;
      passed[i]++;
      spans.set(outcome.limits.subarray(at + 1, at + LIMIT_NUMBERS), i * 2);
    });
    limits.add(member, spans);
    [...outcome.measures, ...outcome.conditions].forEach(({ value, reason }, question) => {
      answers[question][member] = value;
      if (reason !== undefined) noteUnanswered(question, { member, reason });
    });
    outcome.conditions.forEach((condition, i) => {
      holds[i][member] = condition.holds ? 1 : 0;
    });
  }

  function merge(other: AccumulatorState): void {
    other.done.forEach((isIn, member) => {
      if (isIn === 1) take(member);
    });
    series.merge(other.series);
    limits.merge(other.limits);
    other.judged.forEach((count, i) => (judged[i] += count));
    other.passed.forEach((count, i) => (passed[i] += count));
    other.answers.forEach((values, question) => {
      values.forEach((value, member) => {
        if (other.done[member] === 1) answers[question][member] = value;
      });
    });
    other.holds.forEach((values, i) => {
      values.forEach((value, member) => {
        if (other.done[member] === 1) holds[i][member] = value;
      });
    });
    failed.push(...other.failed);
    other.unanswered.forEach((note, question) => {
      if (note !== null) noteUnanswered(question, note);
    });
  }

  return {
    add,
    has: (member) => done[member] === 1,
    size: () => size,
    merge,
    state: () => ({
      members,
      done,
      series: series.state(),
      limits: limits.state(),
      judged,
      passed,
      answers,
      holds,
      failed: [...failed].sort((a, b) => a.member - b.member),
      unanswered: [...unanswered],
    }),
    series,
    limits,
  };
}
