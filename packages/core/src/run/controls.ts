import { INSTANT } from '../base/instant.js';
import { createRandom, nextRandom, seedRandom } from '../base/random.js';
import { byKind } from '../scenario/action-kinds.js';
import type { Action, Rule, Scenario } from '../scenario/scenario.js';
import { perform } from './actions.js';
import type { ControlState, RunParts } from './run-state.js';
import { describeReading, readingOf, trueValue, twelveDigits } from './test-kit.js';

/** A rule that has turned round at so many readings in a row chatters: its two levels are nearer than what it does between two readings. */
const CHATTER = 6;

/** A rule at work. */
interface Control {
  readonly rule: Rule;
  readonly vessel: number;
  readonly state: ControlState;
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
function decide(
  { rule, state }: Control,
  reading: number,
  time: number,
): { actions: readonly Action[]; text: string } {
  const { read, side, level, until } = rule;
  const shown = `${read} reads ${describeReading(read, reading)}`;
  const rest = { actions: [], text: '' };
  if (state.active && letsGo(rule, reading)) {
    state.active = false;
    if (rule.undoing.length === 0) return rest;
    const other = side === 'above' ? 'below' : 'above';
    const reason =
      until === undefined
        ? `no longer ${side} ${describeReading(read, level)}`
        : `${other} ${describeReading(read, until)}`;
    return { actions: rule.undoing, text: `${shown}, ${reason}: released, ${describeActions(rule.undoing)}` };
  }
  const wanted = state.active ? !rule.stands : beyond(side, reading, level);
  if (!wanted || state.times >= rule.most || time - state.last < rule.wait - INSTANT) return rest;
  const reason = beyond(side, reading, level)
    ? `${side} ${describeReading(read, level)}`
    : `not yet ${side === 'above' ? 'below' : 'above'} ${describeReading(read, until ?? level)}`;
  state.active = true;
  state.last = time;
  state.times += 1;
  return { actions: rule.doing, text: `${shown}, ${reason}: ${describeActions(rule.doing)}` };
}

/** What to say of a rule, once, where it has turned on and off again at every one of the last readings. */
function chattering({ rule, state }: Control, wasActive: boolean): string | undefined {
  state.turns = state.active === wasActive ? 0 : state.turns + 1;
  if (state.chatters || state.turns < CHATTER) return undefined;
  state.chatters = true;
  const { read, side, level, until } = rule;
  const between =
    until === undefined ? '' : ` and ${side === 'above' ? 'below' : 'above'} ${describeReading(read, until)}`;
  return `${read} ${side} ${describeReading(read, level)}${between}: chatters, turned on and off at each of the last ${CHATTER} readings; set its two levels further apart, read less often, or do less at once`;
}

/** How the rules of a scenario stand before the run: each has random numbers of its own, seeded by its place in the file. */
export function startControls({ rules, seed }: Scenario): readonly ControlState[] {
  const seeds = createRandom(seed);
  return rules.map((): ControlState => ({
    active: false,
    last: -Infinity,
    times: 0,
    turns: 0,
    chatters: false,
    random: seedRandom(Math.floor(seeds() * 2 ** 53)),
  }));
}

/** Takes the reading of a rule; what follows from it, logged. Draws whatever it decides. */
function read(control: Control, { model, state, ledger }: RunParts, time: number): readonly Action[] {
  const { rule, vessel } = control;
  const { random } = control.state;
  const say = (text: string): void => {
    ledger.say(time, 'rule', rule.vessel, text);
  };
  const { temperature, ionic } = state.day;
  const waters = { model, y: state.y, volume: state.water.volume, temperature, ionic };
  const reading = readingOf(rule.kit, trueValue(rule.read, waters, vessel), () => nextRandom(random));
  if (!Number.isFinite(reading)) {
    say(`${rule.read} cannot be read`);
    return [];
  }
  const wasActive = control.state.active;
  const { actions, text } = decide(control, reading, time);
  if (text !== '') say(text);
  const trouble = chattering(control, wasActive);
  if (trouble !== undefined) say(trouble);
  return actions;
}

/**
 * Sets the rules of a scenario to watch a run. Call the answer at each day boundary with the day: every
 * rule whose reading day it is reads the water as it stands, then all that follows is done in the order of
 * `actionOrder`, ties in file order. Each firing is logged with its reading; a reading that cannot be
 * taken (a dry vessel, no pH) is logged and changes nothing. Answers whether anything was done.
 */
export function openControls(parts: RunParts): (time: number) => boolean {
  const { model, state } = parts;
  const controls = model.scenario.rules.map((rule, index): Control => ({
    rule,
    vessel: model.layout.vessels.indexOf(rule.vessel),
    state: state.controls[index],
  }));
  return (time) => {
    const today = controls.filter(({ rule }) => Math.round(time) % rule.kit.every === 0);
    const actions = today.flatMap((control) => read(control, parts, time)).sort(byKind);
    for (const action of actions) perform(parts, action, time);
    return actions.length > 0;
  };
}
