/** One thing wrong with what a person gave us, said so that it can be mended. */
export interface Fault {
  readonly file?: string;
  /** 1-based. */
  readonly line?: number;
  /** 1-based, in characters. */
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

/** Most faults said in a message, so that a hostile file does not fill the screen for minutes. */
const mostDescribed = 500;

/** From so many on, the same fault in the rows of a list or a table is told once. */
const repeats = 3;

/** Most lines, and most of what came, that are named of a fault that repeats. */
const mostNamed = 12;
const mostGot = 4;

/** What two faults that are the same but for the row share: all but where, and what came. */
function sameness({ file, key = '', problem, expected, nearest }: Fault): string {
  const rowless = key.replace(/\[\d+\]/g, '[]');
  return JSON.stringify([file, rowless === key ? [key] : rowless, problem, expected, nearest]);
}

/** Some of what is told several times, each once. */
function some(parts: readonly (string | number | undefined)[], most: number): string {
  const named = [...new Set(parts.filter((part) => part !== undefined))];
  return `${named.slice(0, most).join(', ')}${named.length > most ? ' ...' : ''}`;
}

/** One fault for several that are the same but for the row: the first, with how often and where. */
function once(same: readonly Fault[]): Fault {
  const [first] = same as readonly [Fault];
  const lines = some(
    same.map(({ line }) => line),
    mostNamed,
  );
  const got = some(
    same.map((each) => each.got),
    mostGot,
  );
  const places = lines === '' || !lines.includes(',') ? '' : `: lines ${lines}`;
  const problem = `${first.problem}, ${same.length} times${places}`;
  return { ...first, problem, ...(got === '' ? {} : { got }) };
}

/** Faults as they are told: one that repeats in the rows of a list once, where the first of them stands. */
function gathered(faults: readonly Fault[]): readonly Fault[] {
  const groups = new Map<string, Fault[]>();
  for (const fault of faults) {
    const same = sameness(fault);
    const group = groups.get(same);
    if (group === undefined) groups.set(same, [fault]);
    else group.push(fault);
  }
  const toldAt = new Map<Fault, Fault>();
  const left = new Set<Fault>();
  for (const same of groups.values()) {
    if (new Set(same.map(({ key }) => key)).size < repeats) continue;
    for (const fault of same) left.add(fault);
    toldAt.set(same[0], once(same));
  }
  return faults.flatMap((fault) => toldAt.get(fault) ?? (left.has(fault) ? [] : [fault]));
}

function describeAll(faults: readonly Fault[]): string {
  const told = gathered(faults);
  const described = told.slice(0, mostDescribed).map(describeFault);
  const rest = told.length - described.length;
  return [...described, ...(rest > 0 ? [`${rest} more faults`] : [])].join('\n');
}

/**
 * Bad input: carries every fault found, never only the first; the message says the first 500, and one that repeats in rows of
 * a list once.
 */
export class InputError extends Error {
  override readonly name = 'InputError';
  readonly faults: readonly Fault[];
  constructor(faults: readonly Fault[]) {
    super(describeAll(faults));
    this.faults = faults;
  }
}

/** Longest part of a message, characters. */
const longest = 400;

// Control characters, and what turns the direction of writing or breaks a line.
const unseen = /[\p{Cc}\p{Cf}\p{Zl}\p{Zp}]/gu;

/** A part of a message as one line that no file can lead astray: what is unseen is written out, what is long is cut. */
function tame(part: string): string {
  const cut = part.length > longest ? `${part.slice(0, longest - 3)}...` : part;
  return cut.replace(unseen, (sign) => `\\u${(sign.codePointAt(0) ?? 0).toString(16).padStart(4, '0')}`);
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
  const tamed = [place, fault.key ?? ''].filter((part) => part !== '').map(tame);
  return [...tamed, parts.map(tame).join('; ')].join(': ');
}
