import { INSTANT } from '../base/instant.js';
import { createRandom } from '../base/random.js';
import type { Action, Rule } from '../scenario/scenario.js';
import { byKind } from '../scenario/action-kinds.js';
import { perform, type RunState } from './actions.js';
import { describeReading, readingOf, trueValue, twelveDigits } from './test-kit.js';

/** A rule that has turned round at so many readings in a row chatters: its two levels are nearer than what it does between two readings. */
const CHATTER = 6;

/** A rule at work. */
interface Watch {
  readonly rule: Rule;
  readonly vessel: number;
  readonly random: () => number;
  /** Whether it has acted and not let go since. */
  active: boolean;
  /** When it last acted, d. */
  last: number;
  /** How often it has acted. */
  times: number;
  /** Readings in a row, the last one too, at which it turned on or off. */
  turns: number;
  /** Whether it was said that it chatters. */
  chatters: boolean;
}

/** Whether a reading lies truly on a side of a level. */
function beyond(side: Rule['side'], reading: number, level: number): boolean {
  return side === 'above' ? reading > twelveDigits(level) : reading < twelveDigits(level);
}

/** Whether a rule lets go at a reading: past `until`, or no longer past its level. */
function letsGo({ side, level, until }: Rule, reading: number): boolean {
  if (until === undefined) return !beyond(side, reading, level);
  return beyond(side === 'above' ? 'below' : 'above', reading, until);
}

function describeActions(actions: readonly Action[]): string {
  return [...new Set(actions.map(({ kind }) => kind))].join(', ');
}

/** Reads and decides: what is done now, with the reason for the log; nothing where the rule rests. */
function decide(watch: Watch, reading: number, time: number): { actions: readonly Action[]; text: string } {
  const { rule } = watch;
  const { read, side, level, until } = rule;
  const shown = `${read} reads ${describeReading(read, reading)}`;
  const rest = { actions: [], text: '' };
  if (watch.active && letsGo(rule, reading)) {
    watch.active = false;
    if (rule.undoing.length === 0) return rest;
    const other = side === 'above' ? 'below' : 'above';
    const reason =
      until === undefined
        ? `no longer ${side} ${describeReading(read, level)}`
        : `${other} ${describeReading(read, until)}`;
    return { actions: rule.undoing, text: `${shown}, ${reason}: released, ${describeActions(rule.undoing)}` };
  }
  const wanted = watch.active ? !rule.stands : beyond(side, reading, level);
  if (!wanted || watch.times >= rule.most || time - watch.last < rule.wait - INSTANT) return rest;
  const reason = beyond(side, reading, level)
    ? `${side} ${describeReading(read, level)}`
    : `not yet ${side === 'above' ? 'below' : 'above'} ${describeReading(read, until ?? level)}`;
  watch.active = true;
  watch.last = time;
  watch.times += 1;
  return { actions: rule.doing, text: `${shown}, ${reason}: ${describeActions(rule.doing)}` };
}

/** What to say of a rule, once, where it has turned on and off again at every one of the last readings. */
function chattering(watch: Watch, wasActive: boolean): string | undefined {
  watch.turns = watch.active === wasActive ? 0 : watch.turns + 1;
  if (watch.chatters || watch.turns < CHATTER) return undefined;
  watch.chatters = true;
  const { read, side, level, until } = watch.rule;
  const between =
    until === undefined ? '' : ` and ${side === 'above' ? 'below' : 'above'} ${describeReading(read, until)}`;
  return `${read} ${side} ${describeReading(read, level)}${between}: chatters, turned on and off at each of the last ${CHATTER} readings; set its two levels further apart, read less often, or do less at once`;
}

/**
 * Sets the rules of a scenario to watch a run. Call the answer at each day boundary with the day: every
 * rule whose reading day it is reads the water as it stands, then all that follows is done in the order of
 * `actionOrder`, ties in file order. Each firing is logged with its reading; a reading that cannot be
 * taken (a dry vessel, no pH) is logged and changes nothing. Answers whether anything was done.
 *
 * Each rule has random numbers of its own, seeded from the run's seed by its place in the file, and draws on
 * every reading day whatever it decides.
 *
 * @param temperature degC in each vessel, kept up to date by the caller
 */
export function openControls(bench: RunState, temperature: ArrayLike<number>): (time: number) => boolean {
  const { model, ledger, hydraulics, y } = bench;
  const seeds = createRandom(model.scenario.seed);
  const watches = model.scenario.rules.map((rule): Watch => ({
    rule,
    vessel: model.layout.vessels.indexOf(rule.vessel),
    random: createRandom(Math.floor(seeds() * 2 ** 53)),
    active: false,
    last: -Infinity,
    times: 0,
    turns: 0,
    chatters: false,
  }));
  return (time) => {
    const waters = { model, y, volume: hydraulics.volume, temperature };
    const today = watches.filter(({ rule }) => Math.round(time) % rule.kit.every === 0);
    const actions = today.flatMap((watch) => {
      const { rule, vessel, random } = watch;
      const reading = readingOf(rule.kit, trueValue(rule.read, waters, vessel), random);
      if (!Number.isFinite(reading)) {
        ledger.say(time, 'rule', rule.vessel, `${rule.read} cannot be read`);
        return [];
      }
      const wasActive = watch.active;
      const decision = decide(watch, reading, time);
      if (decision.text !== '') ledger.say(time, 'rule', rule.vessel, decision.text);
      const trouble = chattering(watch, wasActive);
      if (trouble !== undefined) ledger.say(time, 'rule', rule.vessel, trouble);
      return decision.actions;
    });
    const sorted = [...actions].sort(byKind);
    for (const action of sorted) perform(bench, action, time);
    return sorted.length > 0;
  };
}
