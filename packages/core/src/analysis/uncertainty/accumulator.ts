import { LIMIT_NUMBERS, type MemberOutcome, type Outline } from './members.js';
import { openSpreads, type Spreads, type SpreadsState } from './spreads.js';

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

/** The accumulator of an ensemble: see the interface. */
class MemberAccumulator implements Accumulator {
  readonly series: Spreads;
  readonly limits: Spreads;
  /** Numbers of the series of a member. */
  private readonly cells: number;
  private readonly done: Uint8Array;
  private readonly judged: Uint32Array;
  private readonly passed: Uint32Array;
  private readonly answers: readonly Float64Array[];
  private readonly holds: readonly Uint8Array[];
  private readonly failed: MemberNote[] = [];
  private readonly unanswered: (MemberNote | null)[];
  private count = 0;

  constructor(
    outline: Outline,
    private readonly members: number,
  ) {
    const limits = outline.limits.length;
    this.cells = outline.series.length * outline.times.length;
    this.series = openSpreads(this.cells, members);
    this.limits = openSpreads(limits * 2, members);
    this.done = new Uint8Array(members);
    this.judged = new Uint32Array(limits);
    this.passed = new Uint32Array(limits);
    this.answers = [...outline.measures, ...outline.conditions].map(() =>
      new Float64Array(members).fill(Number.NaN),
    );
    this.holds = outline.conditions.map(() => new Uint8Array(members));
    this.unanswered = this.answers.map(() => null);
  }

  has(member: number): boolean {
    return this.done[member] === 1;
  }

  size(): number {
    return this.count;
  }

  add(member: number, outcome: MemberOutcome): void {
    this.take(member);
    if (outcome.kind === 'failed') {
      this.failed.push({ member, reason: outcome.reason });
      return;
    }
    if (outcome.series.length !== this.cells)
      throw new RangeError(`member ${member} has other series than the system as it stands`);
    this.series.add(member, outcome.series);
    this.addLimits(member, outcome.limits);
    [...outcome.measures, ...outcome.conditions].forEach(({ value, reason }, question) => {
      this.answers[question][member] = value;
      if (reason !== undefined) this.noteUnanswered(question, { member, reason });
    });
    outcome.conditions.forEach((condition, i) => {
      this.holds[i][member] = condition.holds ? 1 : 0;
    });
  }

  merge(other: AccumulatorState): void {
    other.done.forEach((isIn, member) => {
      if (isIn === 1) this.take(member);
    });
    this.series.merge(other.series);
    this.limits.merge(other.limits);
    other.judged.forEach((count, i) => (this.judged[i] += count));
    other.passed.forEach((count, i) => (this.passed[i] += count));
    const copy = (from: ArrayLike<number>, to: Float64Array | Uint8Array): void => {
      for (let member = 0; member < from.length; member++)
        if (other.done[member] === 1) to[member] = from[member];
    };
    other.answers.forEach((values, question) => {
      copy(values, this.answers[question]);
    });
    other.holds.forEach((values, i) => {
      copy(values, this.holds[i]);
    });
    this.failed.push(...other.failed);
    other.unanswered.forEach((note, question) => {
      if (note !== null) this.noteUnanswered(question, note);
    });
  }

  state(): AccumulatorState {
    const { members, done, judged, passed, answers, holds } = this;
    return {
      members,
      done,
      series: this.series.state(),
      limits: this.limits.state(),
      judged,
      passed,
      answers,
      holds,
      failed: [...this.failed].sort((a, b) => a.member - b.member),
      unanswered: [...this.unanswered],
    };
  }

  private take(member: number): void {
    if (!(member < this.members)) throw new RangeError(`member ${member} is not one of ${this.members}`);
    if (this.done[member] === 1) throw new RangeError(`member ${member} is in already`);
    this.done[member] = 1;
    this.count++;
  }

  /** Counts who was judged and who passed, and spreads when first and how long. */
  private addLimits(member: number, numbers: Float64Array): void {
    const spans = new Float64Array(this.judged.length * 2).fill(Number.NaN);
    this.judged.forEach((_, i) => {
      const at = i * LIMIT_NUMBERS;
      if (numbers[at] !== 1) return;
      this.judged[i]++;
      if (Number.isNaN(numbers[at + 1])) return;
      this.passed[i]++;
      spans.set(numbers.subarray(at + 1, at + LIMIT_NUMBERS), i * 2);
    });
    this.limits.add(member, spans);
  }

  private noteUnanswered(question: number, note: MemberNote): void {
    const known = this.unanswered[question];
    if (known === null || note.member < known.member) this.unanswered[question] = note;
  }
}

/** An empty accumulator for so many `members` of what an outline names. */
export function openAccumulator(outline: Outline, members: number): Accumulator {
  return new MemberAccumulator(outline, members);
}
