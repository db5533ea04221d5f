import { LIMIT_NUMBERS } from './members.js';
import { openSpreads } from './spreads.js';
/** The accumulator of an ensemble: see the interface. */
class MemberAccumulator {
    members;
    series;
    limits;
    done;
    judged;
    passed;
    answers;
    holds;
    failed = [];
    unanswered;
    count = 0;
    constructor(outline, members) {
        this.members = members;
        const limits = outline.limits.length;
        this.series = openSpreads(outline.series.length * outline.times.length, members);
        this.limits = openSpreads(limits * 2, members);
        this.done = new Uint8Array(members);
        this.judged = new Uint32Array(limits);
        this.passed = new Uint32Array(limits);
        this.answers = [...outline.measures, ...outline.conditions].map(() => new Float64Array(members).fill(Number.NaN));
        this.holds = outline.conditions.map(() => new Uint8Array(members));
        this.unanswered = this.answers.map(() => null);
    }
    has(member) {
        return this.done[member] === 1;
    }
    size() {
        return this.count;
    }
    add(member, outcome) {
        this.take(member);
        if (outcome.kind === 'failed') {
            this.failed.push({ member, reason: outcome.reason });
            return;
        }
        this.series.add(member, outcome.series);
        this.addLimits(member, outcome.limits);
        [...outcome.measures, ...outcome.conditions].forEach(({ value, reason }, question) => {
            this.answers[question][member] = value;
            if (reason !== undefined)
                this.noteUnanswered(question, { member, reason });
        });
        outcome.conditions.forEach((condition, i) => {
            this.holds[i][member] = condition.holds ? 1 : 0;
        });
    }
    merge(other) {
        other.done.forEach((isIn, member) => {
            if (isIn === 1)
                this.take(member);
        });
        this.series.merge(other.series);
        this.limits.merge(other.limits);
        other.judged.forEach((count, i) => (this.judged[i] += count));
        other.passed.forEach((count, i) => (this.passed[i] += count));
        const copy = (from, to) => {
            for (let member = 0; member < from.length; member++)
                if (other.done[member] === 1)
                    to[member] = from[member];
        };
        other.answers.forEach((values, question) => {
            copy(values, this.answers[question]);
        });
        other.holds.forEach((values, i) => {
            copy(values, this.holds[i]);
        });
        this.failed.push(...other.failed);
        other.unanswered.forEach((note, question) => {
            if (note !== null)
                this.noteUnanswered(question, note);
        });
    }
    state() {
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
    take(member) {
        if (!(member < this.members))
            throw new RangeError(`member ${member} is not one of ${this.members}`);
        if (this.done[member] === 1)
            throw new RangeError(`member ${member} is in already`);
        this.done[member] = 1;
        this.count++;
    }
    /** Counts who was judged and who passed, and spreads when first and how long. */
    addLimits(member, numbers) {
        const spans = new Float64Array(this.judged.length * 2).fill(Number.NaN);
        this.judged.forEach((_, i) => {
            const at = i * LIMIT_NUMBERS;
            if (numbers[at] !== 1)
                return;
            this.judged[i]++;
            if (Number.isNaN(numbers[at + 1]))
                return;
            this.passed[i]++;
            spans.set(numbers.subarray(at + 1, at + LIMIT_NUMBERS), i * 2);
        });
        this.limits.add(member, spans);
    }
    noteUnanswered(question, note) {
        const known = this.unanswered[question];
        if (known === null || note.member < known.member)
            this.unanswered[question] = note;
    }
}
/** An empty accumulator for so many `members` of what an outline names. */
export function openAccumulator(outline, members) {
    return new MemberAccumulator(outline, members);
}
//# sourceMappingURL=accumulator.js.map