/** One thing wrong with what a person gave us, said so that it can be mended. */
export interface Fault {
  readonly file?: string;
  /** 1-based. */
  readonly line?: number;
  readonly column?: number;
  /** Path of the key, such as `vessels.tank-1.volume`. */
  readonly key?: string;
  /** What came. */
  readonly got?: string;
  /** What is wrong, one clause, no full stop. */
  readonly problem: string;
  /** What was expected. */
  readonly expected?: string;
  /** Nearest right name. */
  readonly nearest?: string;
}

/** Bad input: carries every fault found, never only the first. */
export class InputError extends Error {
  override readonly name = 'InputError';
  readonly faults: readonly Fault[];
  constructor(faults: readonly Fault[]) {
    super(faults.map(describeFault).join('\n'));
    this.faults = faults;
  }
}

/** One line: `file:line:column: key: problem; got ...; expected ...; did you mean ...?` */
export function describeFault(fault: Fault): string {
  const place = [fault.file, fault.line, fault.column].filter((part) => part !== undefined).join(':');
  const parts = [
    fault.problem,
    fault.got === undefined ? undefined : `got ${fault.got}`,
    fault.expected === undefined ? undefined : `expected ${fault.expected}`,
    fault.nearest === undefined ? undefined : `did you mean ${fault.nearest}?`,
  ].filter((part) => part !== undefined);
  return [place, fault.key, parts.join('; ')].filter((part) => part !== undefined && part !== '').join(': ');
}
