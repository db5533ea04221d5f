import type { Path } from '../file/tree.js';
import { actionOrder } from '../action-kinds.js';
import { watched } from '../measurables.js';
import type { Action, Rule, RuleCondition, Scenario } from '../scenario.js';
import { type Cast, checkChanges, checkMoment, checkOneWay, checkTargets } from './actions.js';
import {
  actionRanges,
  errorRanges,
  kitRanges,
  levelRange,
  most,
  ruleRanges,
  waterRanges,
  words,
} from './ranges.js';
import { fromZero } from '../../base/bounds.js';
import { checkBounded, checkRelative, checkUntil } from './rules.js';
import type { ScenarioReport } from './scenario-report.js';
import { checkFeed, checkRation, type LibraryNames } from './scenario-stock.js';
import { anyNumber } from './scenario-values.js';

/** Fields of actions that may be absent, and caps that may be endless. */
const looseFields: Partial<
  Record<Action['kind'], { optional: readonly string[]; endless?: readonly string[] }>
> = {
  'harvest-fish': { optional: ['number'] },
  'lose-fish': { optional: ['number'] },
  clean: { optional: ['stuns'] },
  medicate: { optional: ['stuns'] },
  feed: { optional: ['factor'] },
  'top-up': { optional: ['dailyCap', 'weeklyCap'], endless: ['dailyCap', 'weeklyCap'] },
  'change-water': { optional: ['volume', 'share'] },
};

/** Checks what stands in an action beside names and plain numbers. */
function checkParts(report: ScenarioReport, action: Action, path: Path, names: LibraryNames): void {
  switch (action.kind) {
    case 'feed': {
      const { ration, feed, factor } = action;
      checkChanges(report, path, { ration, feed, factor });
      if (ration !== undefined) checkRation(report, ration, [...path, 'ration']);
      if (feed !== undefined) checkFeed(report, feed, [...path, 'feed'], names);
      return;
    }
    case 'source-water':
      if (report.holds(action.to, [...path, 'to'])) report.numbers(action.to, waterRanges, [...path, 'to']);
      return;
    case 'change-water':
      checkOneWay(report, path, 'how much', { volume: action.volume, share: action.share });
      return;
    case 'cart-water':
      report.oneOf(action.into, words.cartedInto, [...path, 'into']);
      if (action.water === undefined) report.known(undefined, [], [...path, 'water'], 'water');
      return;
    default:
  }
}

/** Checks one action. */
export function checkAction(
  report: ScenarioReport,
  action: Action,
  path: Path,
  cast: Cast,
  names: LibraryNames,
): void {
  if (!report.holds(action, path) || !report.oneOf(action.kind, actionOrder, [...path, 'kind'])) return;
  report.numbers(action, actionRanges[action.kind], path, looseFields[action.kind]);
  checkTargets(report, action, cast, (field) => (field === undefined ? path : [...path, field]));
  checkParts(report, action, path, names);
}

/** Checks the dated actions. */
export function checkActions(
  report: ScenarioReport,
  { actions, days }: Scenario,
  cast: Cast,
  names: LibraryNames,
): void {
  if (!report.checkCount(['actions'], actions.length, most.actions)) return;
  actions.forEach(({ at, action }, index) => {
    const path = ['actions', index];
    if (report.within(at, anyNumber, [...path, 'at'])) checkMoment(report, [...path, 'at'], at, days);
    checkAction(report, action, [...path, 'action'], cast, names);
  });
}

function checkKit(report: ScenarioReport, { kit, read }: RuleCondition, path: Path): void {
  if (!report.holds(kit, path)) return;
  report.numbers(kit, kitRanges, path, { optional: ['resolution'] });
  const { error } = kit;
  const at = [...path, 'error'];
  if (error === undefined || !report.holds(error, at)) return;
  if (!report.oneOf(error.kind, ['relative', 'absolute'], [...at, 'kind'])) return;
  if (error.kind === 'relative' && !checkRelative(report, at, read)) return;
  report.within(error.deviation, errorRanges[error.kind], [...at, 'deviation']);
}

/** Checks one condition of a rule: what is read of what, and the levels. */
function checkCondition(report: ScenarioReport, condition: RuleCondition, path: Path, cast: Cast): void {
  const { read, vessel, side, level, until } = condition;
  const sided = report.oneOf(side, ['above', 'below'], [...path, 'side']);
  if (!report.oneOf(read, watched, [...path, 'read'])) return;
  const at = [...path, 'vessel'];
  if (read === 'fish-mass') report.known(vessel, cast.cohorts, at, 'group of fish');
  else if (read === 'rain-tank') {
    if (cast.rainTank === undefined) report.lacks([...path, 'read'], 'rain tank', 'rain-tank');
  } else report.known(vessel, cast.vessels, at, 'vessel');
  const range = levelRange(read);
  const sound = report.within(level, range, [...path, 'level']);
  const back = until === undefined || report.within(until, range, [...path, 'until']);
  if (sided && sound && back) checkUntil(report, path, { side, level, until }, String(level));
  checkKit(report, condition, [...path, 'kit']);
}

function checkRule(report: ScenarioReport, rule: Rule, path: Path, cast: Cast, names: LibraryNames): void {
  const { until, also, doing, undoing, stands, wait } = rule;
  checkCondition(report, rule, path, cast);
  if (also !== undefined && report.holds(also, [...path, 'also'])) {
    report.oneOf(also.how, ['all', 'any'], [...path, 'also', 'how']);
    if (report.isList(also.conditions, [...path, 'also', 'conditions']))
      also.conditions.forEach((one, index) => {
        const at = [...path, 'also', 'conditions', index];
        if (report.holds(one, at)) checkCondition(report, one, at, cast);
      });
  }
  const often = report.numbers(rule, { wait: fromZero('time'), most: ruleRanges.most }, path, {
    endless: ['most'],
  });
  const lists = [report.isList(doing, [...path, 'doing']), report.isList(undoing, [...path, 'undoing'])];
  if (!lists.every(Boolean)) return;
  doing.forEach((action, index) => checkAction(report, action, [...path, 'doing', index], cast, names));
  undoing.forEach((action, index) => checkAction(report, action, [...path, 'undoing', index], cast, names));
  if (!often || !doing.every((action) => actionOrder.includes(action.kind))) return;
  const bounded = stands || until !== undefined || wait > 0 || rule.most < Infinity;
  checkBounded(report, path, doing, bounded, doing.map(({ kind }) => kind).join(', '));
}

/** Checks the rules. */
export function checkRules(
  report: ScenarioReport,
  { rules }: Scenario,
  cast: Cast,
  names: LibraryNames,
): void {
  if (!report.checkCount(['rules'], rules.length, most.rules)) return;
  rules.forEach((rule, index) => checkRule(report, rule, ['rules', index], cast, names));
}
