import type { Scenario } from './scenario.js';
/** Remembers that a scenario was read from a file without a fault. */
export declare function rememberRead(scenario: Scenario): void;
/** Whether this very scenario was read from a file, and so checked before. */
export declare function wasRead(scenario: Scenario): boolean;
//# sourceMappingURL=read-before.d.ts.map