import { INSTANT } from '../base/instant.js';
import { createRandom, nextRandom, seedRandom } from '../base/random.js';
import { byKind } from '../scenario/action-kinds.js';
import type { Action, Rule, RuleCondition, Scenario } from '../scenario/scenario.js';
import { perform } from './actions.js';
import type { ControlState, RunParts } from './run-state.js';
import { describeReading, readingOf, trueValue, twelveDigits } from './test-kit.js';

/** A rule that has turned round at so many readings in a row chatters: its two levels are nearer than what it does between two readings. */
const CHATTER = 6;

/** A rule at work, with all its conditions. */
interface Control {
  readonly rule: Rule;
  readonly conditions: readonly RuleCondition[];
  readonly state: ControlState;
}

/** Every condition of a rule, its own first. */
function conditionsOf(rule: Rule): readonly RuleCondition[] {
  return [rule, ...(rule.also?.conditions ?? [])];
}

/** Whether a reading lies truly on a side of a level. */
function beyond(side: Rule['side'], reading: number, level: number): boolean {
  return side === 'above' ? reading > twelveDigits(level) : reading < twelveDigits(level);
}

/** Whether a condition holds at a reading. */
const holds = ({ side, level }: RuleCondition, reading: number): boolean => beyond(side, reading, level);

/** Whether a condition lets go at a reading: past `until`, or no longer past its level. */
function letsGo({ side, level, until }: RuleCondition, reading: number): boolean {
  if (until === undefined) return !beyond(side, reading, level);
  return beyond(side === 'above' ? 'below' : 'above', reading, until);
}

function describeActions(actions: readonly Action[]): string {
  return [...new Set(actions.map(({ kind }) => kind))].join(', ');
}

/** What was read, in words; of one rule with several conditions also where. */
function shownOf(condition: RuleCondition, reading: number, several: boolean): string {
  const { read, vessel } = condition;
  const where = several && vessel !== '' ? ` of ${vessel}` : '';
  return `${read}${where} reads ${describeReading(read, reading)}`;
}

/** How a reading stands to a condition by which a rule acts, or goes on. */
function reasonOf(condition: RuleCondition, reading: number): string {
  const { read, side, level, until } = condition;
  if (holds(condition, reading)) return `${side} ${describeReading(read, level)}`;
  return letsGo(condition, reading)
    ? `not ${side} ${describeReading(read, level)}`
    : `not yet ${side === 'above' ? 'below' : 'above'} ${describeReading(read, until ?? level)}`;
}

/** Where a reading has got to as a rule lets go. */
function releaseOf({ read, side, level, until }: RuleCondition): string {
  return until === undefined
    ? `no longer ${side} ${describeReading(read, level)}`
    : `${side === 'above' ? 'below' : 'above'} ${describeReading(read, until)}`;
}

/** Reads and decides: what is done now, with the reason for the log; nothing where the rule rests. */
function decide(
  { rule, conditions, state }: Control,
  readings: readonly number[],
  time: number,
): { actions: readonly Action[]; text: string } {
  const several = conditions.length > 1;
  const every = rule.also?.how !== 'any';
  const told = (
    picked: readonly boolean[],
    reason: (one: RuleCondition, reading: number) => string,
  ): string =>
    conditions
      .flatMap((one, i) =>
        picked[i] ? [`${shownOf(one, readings[i], several)}, ${reason(one, readings[i])}`] : [],
      )
      .join('; ');
  const rest = { actions: [], text: '' };
  const held = conditions.map((one, i) => holds(one, readings[i]));
  const gone = conditions.map((one, i) => letsGo(one, readings[i]));
  if (state.active && (every ? gone.some(Boolean) : gone.every(Boolean))) {
    state.active = false;
    if (rule.undoing.length === 0) return rest;
    return {
      actions: rule.undoing,
      text: `${told(gone, releaseOf)}: released, ${describeActions(rule.undoing)}`,
    };
  }
  const met = every ? held.every(Boolean) : held.some(Boolean);
  const wanted = state.active ? !rule.stands : met;
  if (!wanted || state.times >= rule.most || time - state.last < rule.wait - INSTANT) return rest;
  state.active = true;
  state.last = time;
  state.times += 1;
  const shown = every || !met ? held.map(() => true) : held;
  return { actions: rule.doing, text: `${told(shown, reasonOf)}: ${describeActions(rule.doing)}` };
}

/** What to say of a rule, once, where it has turned on and off again at every one of the last readings. */
function chattering({ conditions, state }: Control, wasActive: boolean): string | undefined {
  state.turns = state.active === wasActive ? 0 : state.turns + 1;
  if (state.chatters || state.turns < CHATTER) return undefined;
  state.chatters = true;
  const levels = conditions.map(({ read, side, level, until }) => {
    const back = side === 'above' ? 'below' : 'above';
    const between = until === undefined ? '' : ` and ${back} ${describeReading(read, until)}`;
    return `${read} ${side} ${describeReading(read, level)}${between}`;
  });
  return `${levels.join('; ')}: chatters, turned on and off at each of the last ${CHATTER} readings; set its two levels further apart, read less often, or do less at once`;
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

/** What is truly there of what a condition reads, in its internal unit; not finite where there is nothing to read. */
function valueOf({ read, vessel }: RuleCondition, { model, state }: RunParts): number {
  if (read === 'rain-tank') return state.water.rain;
  if (read === 'fish-mass') {
    const cohort = model.scenario.fish.findIndex(({ name }) => name === vessel);
    const { mass, number } = model.layout.fish[cohort];
    return state.y[mass] / state.y[number];
  }
  const { temperature, ionic } = state.day;
  const waters = { model, y: state.y, volume: state.water.volume, temperature, ionic };
  return trueValue(read, waters, model.layout.vessels.indexOf(vessel));
}

/** Takes the readings of a rule; what follows from them, logged. Draws whatever it decides. */
function read(control: Control, parts: RunParts, time: number): readonly Action[] {
  const { conditions } = control;
  const { random } = control.state;
  const place = conditions.find(({ vessel }) => vessel !== '')?.vessel ?? 'rain-tank';
  const say = (text: string): void => {
    parts.ledger.say(time, 'rule', place, text);
  };
  const readings = conditions.map((one) => readingOf(one.kit, valueOf(one, parts), () => nextRandom(random)));
  const unread = conditions.filter((_, i) => !Number.isFinite(readings[i]));
  if (unread.length > 0) {
    say(unread.map((one) => `${one.read} cannot be read`).join('; '));
    return [];
  }
  const wasActive = control.state.active;
  const { actions, text } = decide(control, readings, time);
  if (text !== '') say(text);
  const trouble = chattering(control, wasActive);
  if (trouble !== undefined) say(trouble);
  return actions;
}

/**
 * Sets the rules of a scenario to watch a run. Call the answer at each day boundary with the day: every
 * rule whose reading day it is reads the system as it stands, then all that follows is done in the order of
 * `actionOrder`, ties in file order. Each firing is logged with its reading; a reading that cannot be
 * taken (a dry vessel, no pH, no fish) is logged and changes nothing. Answers whether anything was done.
 */
export function openControls(parts: RunParts): (time: number) => boolean {
  const { model, state } = parts;
  const controls = model.scenario.rules.map((rule, index): Control => ({
    rule,
    conditions: conditionsOf(rule),
    state: state.controls[index],
  }));
  return (time) => {
    const today = controls.filter(({ rule }) => Math.round(time) % rule.kit.every === 0);
    const actions = today.flatMap((control) => read(control, parts, time)).sort(byKind);
    for (const action of actions) perform(parts, action, time);
    return actions.length > 0;
  };
}
