import { type Bound, boundProblem, describeBound } from '../../base/bounds.js';
import type { Fault } from '../../base/faults.js';
import { nearest } from '../../base/nearest.js';
import { type Names, Report } from '../file/report.js';
import { describePath, type Path } from '../file/tree.js';
import type { Scenario } from '../scenario.js';

/** Key of a section of a file as the field of a scenario: `rain-tank` is `rainTank`. */
function fieldOf(key: string): string {
  return key.replace(/-([a-z])/g, (_, letter: string) => letter.toUpperCase());
}

function stepInto(value: unknown, step: string | number): unknown {
  if (Array.isArray(value) && typeof step === 'string') {
    return (value as readonly Readonly<Record<string, unknown>>[]).find(
      (entry) => (entry['name'] ?? entry['vessel']) === step,
    );
  }
  return typeof value === 'object' && value !== null
    ? (value as Readonly<Record<string, unknown>>)[step]
    : undefined;
}

/** What came, short enough for a message; undefined for what is no single value. */
function describeValue(value: unknown): string | undefined {
  if (typeof value === 'string')
    return JSON.stringify(value.length > 60 ? `${value.slice(0, 57)}...` : value);
  if (typeof value === 'number' || typeof value === 'boolean' || value === null) return String(value);
  return undefined;
}

/** What the numbers of an entry may be, by field. */
type Ranges = Readonly<Record<string, Bound>>;

/**
 * Collects what is wrong with a scenario built in code. Paths name fields of the scenario; entries of a list that have
 * names stand under them: `vessels.tank.volume`, `start.tank.water.ammonia`, `flows[2].to`.
 */
export class ScenarioReport extends Report {
  protected readonly origin = 'scenario';

  constructor(private readonly scenario: Scenario) {
    super();
  }

  override fault(path: Path, problem: string, rest: Partial<Fault> = {}, aboutKey = false): void {
    const got = aboutKey ? undefined : describeValue(path.reduce<unknown>(stepInto, this.scenario));
    this.faults.push({ key: describePath(path), problem, ...(got === undefined ? {} : { got }), ...rest });
  }

  protected override gotName(name: string): Partial<Fault> {
    return { got: JSON.stringify(name) };
  }

  override lacks(path: Path, what: string, key: string): void {
    const field = fieldOf(key);
    if (stepInto(this.scenario, field) !== undefined) return;
    this.fault(path, `no ${what} in this scenario`, { expected: `a ${field}` });
  }

  /** Whether a number is within its bound; a fault that tells its value where it is not. */
  within(value: unknown, bound: Bound, path: Path): boolean {
    const problem = boundProblem(bound, value);
    if (problem === undefined) return true;
    const got = describeValue(value);
    this.fault(path, problem, { expected: describeBound(bound), ...(got === undefined ? {} : { got }) });
    return false;
  }

  /** Checks a name against those there are, as for a file; what is no word is missing or of the wrong kind. */
  override known(name: unknown, names: Names, path: Path, what: string): boolean {
    if (typeof name === 'string') return super.known(name, names, path, what);
    const problem = name === undefined ? 'missing' : 'wrong kind of value';
    this.fault(path, problem, { expected: `the name of a ${what}` });
    return false;
  }

  /** Whether a list is there, without gaps; a fault where it is not. */
  isList(value: unknown, path: Path): boolean {
    if (Array.isArray(value) && !value.includes(undefined)) return true;
    this.fault(path, value === undefined ? 'missing' : 'wrong kind of value', {
      expected: 'a list without gaps',
    });
    return false;
  }

  /** Whether an object is there; a fault where it is not. */
  holds(value: unknown, path: Path): boolean {
    if (typeof value === 'object' && value !== null) return true;
    this.fault(path, value === undefined ? 'missing' : 'wrong kind of value', { expected: 'an object' });
    return false;
  }

  /**
   * Whether all numbers of an entry are within their ranges; a fault for each that is not.
   * @param optional fields that may be absent
   * @param endless fields that may be Infinity: no limit
   */
  numbers(
    entry: object,
    ranges: Ranges,
    path: Path,
    { optional = [], endless = [] }: { optional?: readonly string[]; endless?: readonly string[] } = {},
  ): boolean {
    let sound = true;
    const values = entry as Readonly<Record<string, unknown>>;
    for (const field in ranges) {
      const value = values[field];
      if (value === undefined && optional.includes(field)) continue;
      if (value === Infinity && endless.includes(field)) continue;
      if (boundProblem(ranges[field], value) === undefined) continue;
      sound = this.within(value, ranges[field], [...path, field]) && sound;
    }
    return sound;
  }

  /** Whether a word is one of those allowed; a fault with the nearest where it is not. */
  oneOf(value: unknown, words: readonly string[], path: Path): boolean {
    if (typeof value === 'string' && words.includes(value)) return true;
    const expected = `one of ${words.join(', ')}`;
    if (typeof value !== 'string') {
      this.fault(path, value === undefined ? 'missing' : 'wrong kind of value', { expected });
      return false;
    }
    const guess = nearest(value, words);
    this.fault(path, 'unknown word', { expected, ...(guess === undefined ? {} : { nearest: guess }) });
    return false;
  }
}
