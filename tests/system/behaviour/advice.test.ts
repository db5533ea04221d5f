import {
  adviceOf,
  adviceOutcome,
  aimOf,
  compareHarm,
  openChanges,
  openModel,
  overlayOf,
  overlayText,
  pairsOf,
  simulate,
  situationsOf,
  tryChange,
  tryPair,
  type AdviceOutcome,
  type ChangeName,
  type PlainFile,
  type Proposal,
} from '@leat/core';
import { describe, expect, it } from 'vitest';
import { full } from '../../support/length.js';
import { openStory, type Story, told } from '../../support/stories.js';

/** A run of a story as it is told, or with a file over the shipped scenario. */
function outcomeOf(story: Story, over?: string) {
  const { reading } = openStory(story, over);
  const { model } = openModel(reading, { closureDraws: 0 });
  const run = simulate(model);
  return { run, reading, model, outcome: adviceOutcome(run) };
}

interface Advised {
  readonly before: AdviceOutcome;
  readonly proposals: readonly Proposal[];
  /** Runs a proposal anew, from the lines that would be kept. */
  readonly again: (file: PlainFile) => AdviceOutcome;
}

/** Advice for a story: of some changes alone, or at full length of all that fit, and of pairs. */
function adviceFor(story: Story, names: readonly ChangeName[]): Advised {
  const { run, reading, model, outcome: before } = outcomeOf(story);
  const written = openStory({ scenario: story.scenario }).reading.resolved.plain;
  const again = (file: PlainFile): AdviceOutcome =>
    outcomeOf(story, overlayText(overlayOf(written, file))).outcome;
  const file = reading.resolved.plain;
  const search = { file, before: before.harm, aim: aimOf(before.harm), tryOut: again };
  const [situation] = situationsOf(run, before.verdict);
  const { scenario } = reading;
  const changes = openChanges({ scenario, parameters: model.parameters, file, situation }, full ? [] : names);
  const alone = changes.flatMap((change) => tryChange(change, search) ?? []);
  const pairs = pairsOf(alone, before.harm).flatMap((parts) => {
    const pair = parts.map(({ name, steps }) => ({
      change: changes[changes.findIndex((change) => change.name === name)],
      steps,
    }));
    return tryPair(pair, search) ?? [];
  });
  return { before, again, proposals: adviceOf(alone, full ? pairs : []) };
}

/** Stories that go wrong, changes that are tried, and those of them that are enough: of all that fit at full length. */
const wrong: readonly (readonly [
  story: keyof typeof told,
  tried: readonly ChangeName[],
  serve: readonly ChangeName[],
])[] = [
  ['drought', ['top-up'], ['top-up']],
  ['pumpAtNight', ['air'], ['air']],
  ['sixtyFish', ['feed', 'change-water', 'stagger'], []],
  ['cold', ['heat'], ['heat']],
  ['salt', ['smaller-dose'], ['smaller-dose']],
  ['overfeeding', ['feed'], ['feed']],
  ['startUp', ['salt', 'fewer'], ['fewer']],
  ['scrubbed', ['gentler'], ['gentler']],
];

// The short form tries the changes named here alone; the full one all that fit, and pairs.
describe('advice', () => {
  it.each(wrong)(
    'on %s: what is proposed is better when it is run, and enough where it says so',
    (name, tried, serve) => {
      const { before, proposals, again } = adviceFor(told[name], tried);
      expect(aimOf(before.harm)).toBe('harm');
      const enough = proposals.filter((each) => each.enough);
      for (const proposal of enough) {
        const { harm, verdict } = again(proposal.file);
        expect(compareHarm(harm, before.harm)).toBeLessThan(0);
        expect(aimOf(harm)).not.toBe('harm');
        expect(verdict.fish === undefined || ['safe', 'uncomfortable'].includes(verdict.fish.state)).toBe(
          true,
        );
      }
      const alone = enough.filter(({ parts }) => parts.length === 1).map(({ parts }) => parts[0].name);
      if (full) expect(alone).toEqual(expect.arrayContaining([...serve]));
      else expect(alone).toEqual(serve);
      // Where none is enough each was tried: the best of it is told, and still harms.
      if (serve.length === 0) {
        expect(proposals.length).toBeGreaterThanOrEqual(tried.length);
        for (const { outcome } of proposals.filter((each) => !each.enough))
          expect(aimOf(outcome.harm)).toBe('harm');
      }
    },
  );

  it.each(['emptyBeds', 'goodYear'] as const)('on %s: nothing need be done', (name) => {
    // A year is as good as its first months: at full length all of it.
    const days = full ? told[name].days : 120;
    expect(aimOf(outcomeOf({ ...told[name], days }).outcome.harm)).toBe('nothing');
  });

  it('offers a day before trouble where that day is too late: what was done once before it, and the start', () => {
    // Three drainings in 90 d are too few to count as routine: without them the beds are what was done last.
    const { run, outcome } = outcomeOf({ scenario: 'bare-beds', days: 90, set: { 'drain-solids': '[]' } });
    const days = situationsOf(run, outcome.verdict).map(({ from }) => from);
    // The beds are emptied on day 14; the filter falls behind before fish are off their ease.
    const [first] = days;
    expect(first).toBe(Math.floor(outcome.verdict.filter?.from ?? Number.NaN));
    expect(first).toBeLessThan(outcome.verdict.fish?.from ?? Number.NaN);
    expect(days).toEqual([first, 14, 0]);
    expect(situationsOf(run, outcome.verdict, 20).map(({ from }) => from)).toEqual([20]);
  });

  it('finds a small dose where a large one is too much: bare beds turn sour', () => {
    const { before, proposals, again } = adviceFor({ scenario: 'bare-beds', days: 60 }, ['base']);
    expect(aimOf(before.harm)).toBe('unease');
    const [{ enough, parts, file }] = proposals;
    expect(enough).toBe(true);
    expect(parts[0].amount).toBeLessThan(1000);
    expect(aimOf(again(file).harm)).toBe('nothing');
  });

  it('mends a reservoir that stands low on rationed water', () => {
    const { before, proposals, again } = adviceFor({ scenario: 'dry-spell', days: 60 }, [
      'top-up',
      'leave-empty',
    ]);
    expect(before.verdict.water.state).toBe('short');
    const enough = proposals.filter((each) => each.enough);
    expect(enough.map(({ parts }) => parts[0].name)).toEqual(['top-up', 'leave-empty']);
    for (const { file } of enough) expect(again(file).verdict.water.state).toBe('enough');
  });

  it('gives the least: one step less of what is enough is not', () => {
    const { before, proposals, again } = adviceFor(told.salt, ['smaller-dose']);
    const [{ parts, file, lines }] = proposals;
    expect(lines.put).toEqual([
      'dosing:',
      expect.stringMatching(/^ {2}- \{ into: sump, product: sodium-chloride, mass: 0\.\d+ kg, at: 20 d \}$/),
    ]);
    const mass = 2 * (1 - (parts[0].amount - 1) / 100);
    const dosing = [{ into: 'sump', product: 'sodium-chloride', mass: `${mass} kg`, at: '20 d' }];
    expect(before.harm.salt).toBeGreaterThan(0);
    expect(aimOf(again({ ...file, dosing }).harm)).toBe('harm');
  });
});
