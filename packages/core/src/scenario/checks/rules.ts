import type { Report } from '../file/report.js';
import type { Path } from '../file/tree.js';
import { isSetting } from '../action-kinds.js';
import type { Rule, RuleCondition, Watched } from '../scenario.js';

/** Whether a rule lets go on the other side of its level; a fault, with the level as `written`, where it does not. */
export function checkUntil(
  report: Report,
  path: Path,
  { side, level, until }: Pick<RuleCondition, 'side' | 'level'> & { readonly until?: number | undefined },
  written: string,
): boolean {
  if (until === undefined || (side === 'above' ? until < level : until > level)) return true;
  const other = side === 'above' ? 'below' : 'above';
  report.fault([...path, 'until'], `a rule that acts ${side} a level lets go ${other} it`, {
    expected: `a level ${other} ${written}`,
  });
  return false;
}

/** Whether an error of a reading may be a share of it; a fault where the scale has no true zero. */
export function checkRelative(report: Report, path: Path, read: Watched): boolean {
  if (read !== 'pH' && read !== 'temperature') return true;
  const expected = read === 'pH' ? 'an error in pH, such as 0.2' : 'an error in degrees, such as "0.5 degC"';
  report.fault(path, `no share can be taken of ${read}`, { expected });
  return false;
}

/**
 * Whether what a rule does leaves a setting that stands. A fault where it does not and nothing bounds how often it is
 * done: `bounded` by a wait, a number of times, a level to let go at, or something that undoes it.
 */
export function checkBounded(
  report: Report,
  path: Path,
  doing: Rule['doing'],
  bounded: boolean,
  what: string,
): boolean {
  const sets = doing.every(isSetting);
  if (!sets && !bounded) {
    report.fault(path, 'a rule that could fire for ever', {
      got: `${what} at every reading`,
      expected: 'one or more of wait, most, when.until',
    });
  }
  return sets;
}
