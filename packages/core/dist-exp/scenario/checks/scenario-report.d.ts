import { type Bound } from '../../base/bounds.js';
import type { Fault } from '../../base/faults.js';
import { type Names, Report } from '../file/report.js';
import { type Path } from '../file/tree.js';
import type { Scenario } from '../scenario.js';
/** What the numbers of an entry may be, by field. */
type Ranges = Readonly<Record<string, Bound>>;
/**
 * Collects what is wrong with a scenario built in code. Paths name fields of the scenario; entries of a list that have
 * names stand under them: `vessels.tank.volume`, `start.tank.water.tan`, `flows[2].to`.
 */
export declare class ScenarioReport extends Report {
    private readonly scenario;
    protected readonly origin = "scenario";
    constructor(scenario: Scenario);
    fault(path: Path, problem: string, rest?: Partial<Fault>, aboutKey?: boolean): void;
    protected gotName(name: string): Partial<Fault>;
    lacks(path: Path, what: string, key: string): void;
    /** Whether a number is within its bound; a fault that tells its value where it is not. */
    within(value: unknown, bound: Bound, path: Path): boolean;
    /** Checks a name against those there are, as for a file; what is no word is missing or of the wrong kind. */
    known(name: unknown, names: Names, path: Path, what: string): boolean;
    /** Whether a list is there, without gaps; a fault where it is not. */
    isList(value: unknown, path: Path): boolean;
    /** Whether an object is there; a fault where it is not. */
    holds(value: unknown, path: Path): boolean;
    /**
     * Whether all numbers of an entry are within their ranges; a fault for each that is not.
     * @param optional fields that may be absent
     * @param endless fields that may be Infinity: no limit
     */
    numbers(entry: object, ranges: Ranges, path: Path, { optional, endless }?: {
        optional?: readonly string[];
        endless?: readonly string[];
    }): boolean;
    /** Whether a word is one of those allowed; a fault with the nearest where it is not. */
    oneOf(value: unknown, words: readonly string[], path: Path): boolean;
}
export {};
//# sourceMappingURL=scenario-report.d.ts.map