/** Programs of the subset drawn at random, which all end and leave no array. */

/** Numbers and whole numbers that a program is given room for. */
export const FLOATS = 16;
export const INTS = 8;

type Random = () => number;

/** What may be named at a place of a program. */
interface Names {
  readonly numbers: readonly string[];
  readonly whole: readonly string[];
  /** Of these, those that may be changed. */
  readonly variables: readonly string[];
  /** The arrays of numbers, and whether that of places and the other function are at hand. */
  readonly arrays: readonly string[];
  readonly all: boolean;
}

class Writer {
  private made = 0;

  constructor(private readonly random: Random) {}

  private pick<T>(from: readonly T[]): T {
    return from[Math.floor(this.random() * from.length)];
  }

  private name(): string {
    this.made += 1;
    return `x${String(this.made)}`;
  }

  /** A whole number from 0 to 7: a place. */
  private place(names: Names, depth: number): string {
    const deep = names.all ? ['literal', 'name', 'choice', 'entry'] : ['literal', 'name', 'choice'];
    const kind = this.pick(depth > 0 ? deep : ['literal', 'name']);
    if (kind === 'entry') return `n[${this.place(names, depth - 1)}]`;
    if (kind === 'choice')
      return `(${this.condition(names, depth - 1)} ? ${this.place(names, depth - 1)} : ${this.place(names, depth - 1)})`;
    return kind === 'literal' || names.whole.length === 0
      ? String(Math.floor(INTS * this.random()))
      : this.pick(names.whole);
  }

  private entry(names: Names, depth: number): string {
    const place = this.place(names, depth);
    return `${this.pick(names.arrays)}[${this.random() < 0.5 ? place : `${place} + ${this.place(names, 0)}`}]`;
  }

  number(names: Names, depth: number): string {
    const less = depth - 1;
    const kinds = ['literal', 'name', 'entry'];
    if (depth > 0)
      kinds.push(
        'binary',
        'binary',
        'binary',
        'unary',
        'call',
        'choice',
        'whole',
        'quotient',
        'bend',
        'kept',
      );
    if (depth > 0 && names.all) kinds.push('help');
    switch (this.pick(kinds)) {
      case 'binary':
        return `(${this.number(names, less)} ${this.pick(['+', '-', '*', '/'])} ${this.number(names, less)})`;
      case 'unary':
        return `(-${this.number(names, less)})`;
      case 'call':
        return this.intrinsic(names, less);
      case 'choice':
        return `(${this.condition(names, less)} ? ${this.number(names, less)} : ${this.number(names, less)})`;
      case 'whole':
        return `(${this.place(names, less)} ${this.pick(['+', '-'])} ${this.place(names, less)} + ${this.number(names, less)})`;
      case 'quotient':
        return `(${this.place(names, less)} / ${this.place(names, less)})`;
      case 'bend':
        return `bend(${this.number(names, less)}, ${this.number(names, less)})`;
      case 'kept':
        return `kept[${this.place(names, less)}]`;
      case 'help':
        return `help(a, ${this.place(names, less)}, ${this.number(names, less)})`;
      case 'entry':
        return this.entry(names, Math.max(0, less));
      case 'name':
        return names.numbers.length === 0 ? 'LIMIT' : this.pick(names.numbers);
      default:
        return this.pick([
          '0.5',
          '2',
          '1e-3',
          '3.25e2',
          'Infinity',
          'Number.EPSILON',
          'LIMIT',
          '7',
          'Math.LN10',
        ]);
    }
  }

  private intrinsic(names: Names, depth: number): string {
    const of = this.pick(['abs', 'ceil', 'floor', 'fround', 'trunc', 'sqrt', 'min', 'max']);
    const second = of === 'min' || of === 'max' ? `, ${this.number(names, depth)}` : '';
    return `Math.${of}(${this.number(names, depth)}${second})`;
  }

  condition(names: Names, depth: number): string {
    const less = depth - 1;
    const compare = this.pick(['<', '>', '<=', '>=', '===', '!==']);
    if (depth > 0) {
      switch (this.pick(['and', 'or', 'not', 'finite', 'plain', 'plain', 'whole'])) {
        case 'and':
          return `(${this.condition(names, less)} && ${this.condition(names, less)})`;
        case 'or':
          return `(${this.condition(names, less)} || ${this.condition(names, less)})`;
        case 'not':
          return `!(${this.condition(names, less)})`;
        case 'finite':
          return `Number.isFinite(${this.number(names, less)})`;
        case 'whole':
          return `${this.place(names, less)} ${compare} ${this.place(names, less)}`;
      }
    }
    return `${this.number(names, Math.max(0, less))} ${compare} ${this.number(names, Math.max(0, less))}`;
  }

  /** Statements, one under the other; @param loop whether `break` and `continue` may stand here */
  statements(given: Names, depth: number, loop: boolean): string {
    let names = given;
    const lines = Array.from({ length: 2 + Math.floor(4 * this.random()) }, () => {
      const kind = this.pick([
        'let',
        'const',
        'whole',
        'store',
        'store',
        'keep',
        'assign',
        'if',
        'for',
        'while',
      ]);
      const name = this.name();
      if (kind === 'let' || kind === 'const') {
        // What is chosen from two whole numbers is one, and can take no other later on.
        const type = kind === 'let' ? ': number' : '';
        const line = `${kind} ${name}${type} = ${this.number(names, 3)};`;
        const variables = kind === 'let' ? [...names.variables, name] : names.variables;
        names = { ...names, numbers: [...names.numbers, name], variables };
        return line;
      }
      if (kind === 'whole') {
        const line = `const ${name}: i32 = ${this.place(names, 2)};`;
        names = { ...names, whole: [...names.whole, name] };
        return line;
      }
      return this.statement(kind, name, names, depth, loop);
    });
    if (loop && this.random() < 0.3)
      lines.push(`if (${this.condition(names, 1)}) ${this.pick(['break', 'continue'])};`);
    return lines.join('\n');
  }

  private statement(kind: string, name: string, names: Names, depth: number, loop: boolean): string {
    const update = this.pick(['=', '+=', '-=', '*=', '/=']);
    if (kind === 'keep' && names.all) return `n[${this.place(names, 2)}] = ${this.place(names, 2)};`;
    if (kind === 'assign' && names.variables.length > 0)
      return `${this.pick(names.variables)} ${update} ${this.number(names, 2)};`;
    if (depth > 0 && kind === 'if') {
      const no = this.random() < 0.5 ? ` else {\n${this.statements(names, depth - 1, loop)}\n}` : '';
      return `if (${this.condition(names, 2)}) {\n${this.statements(names, depth - 1, loop)}\n}${no}`;
    }
    if (depth > 0 && kind === 'for') {
      const inside = { ...names, whole: [...names.whole, name] };
      const head =
        this.random() < 0.5
          ? `let ${name} = 0; ${name} < 4; ${name}++`
          : `let ${name} = 6; ${name} >= 0; ${name} -= 2`;
      return `for (${head}) {\n${this.statements(inside, depth - 1, true)}\n}`;
    }
    if (depth > 0 && kind === 'while') {
      // What is counted stands first, so that `continue` cannot pass it by.
      const body = this.statements(names, depth - 1, true);
      return `let ${name}: i32 = 3;\nwhile (${name} > 0) {\n${name}--;\n${body}\n}`;
    }
    return `${this.entry(names, 1)} ${update} ${this.number(names, 3)};`;
  }
}

/** The text of a program: `run` works on two arrays of numbers and one of places, and gives a number. */
export function randomProgram(random: Random): string {
  const writer = new Writer(random);
  const names = { numbers: ['given'], whole: ['count'], variables: [], arrays: ['a', 'b'], all: true };
  const few = { ...names, whole: ['at'], arrays: ['a'], all: false };
  const early = random() < 0.5 ? `if (${writer.condition(names, 2)}) return given;\n` : '';
  return `const LIMIT = 16 * Number.EPSILON;
type i32 = number;
const kept = new Float64Array(${String(INTS)});
for (let i = 0, power = 0.75; i < ${String(INTS)}; i++, power *= -1.5) kept[i] = power;
let calls: i32 = 0;
const bend = (x: number, y: number): number => (x > 0 ? x / (x + y) : y - x * x);
function help(a: Float64Array, at: i32, given: number): number {
calls += 1;
${writer.statements(few, 1, false)}
return a[at] + given + calls;
}
export function run(a: Float64Array, b: Float64Array, n: Int32Array, count: i32, given: number): number {
${early}${writer.statements(names, 3, false)}
return ${writer.number(names, 3)};
}
`;
}
