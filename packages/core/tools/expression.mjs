/**
 * Rate laws as text, read once and used twice: worked out, so that a test can hold them against the code, and written
 * as the mathematics of a document. A law knows numbers, names, + - * / ^, brackets, and calls such as `M(C_tan, K)`.
 */

/** The pieces of a text. */
const pieces = (text) => text.match(/\d+(?:\.\d+)?|[A-Za-z][\w]*|[-+*/^(),]/g) ?? [];

/** Reads a law into a tree: numbers, names, { op, args } and { call, args }. Throws where it is none. */
export function parseLaw(text) {
  const left = pieces(text);
  if (left.join('') !== text.replace(/\s+/g, '')) throw new Error(`not a law: ${text}`);
  const take = (wanted) => {
    const next = left.shift();
    if (wanted !== undefined && next !== wanted) throw new Error(`${text}: expected ${wanted}, got ${next}`);
    return next;
  };
  const chain = (ops, lower) => () => {
    let tree = lower();
    while (ops.includes(left[0])) tree = { op: take(), args: [tree, lower()] };
    return tree;
  };
  const single = () => {
    const next = take();
    if (next === '(') {
      const inner = sum();
      take(')');
      return inner;
    }
    if (next === '-') return { op: 'minus', args: [power()] };
    if (/^\d/.test(next)) return Number(next);
    if (left[0] !== '(') return next;
    take('(');
    const args = [sum()];
    while (left[0] === ',') {
      take(',');
      args.push(sum());
    }
    take(')');
    return { call: next, args };
  };
  const power = () => {
    const base = single();
    if (left[0] !== '^') return base;
    take('^');
    return { op: '^', args: [base, power()] };
  };
  const product = chain(['*', '/'], power);
  const sum = chain(['+', '-'], product);
  const tree = sum();
  if (left.length > 0) throw new Error(`${text}: left over: ${left.join(' ')}`);
  return tree;
}

const operators = {
  '+': (a, b) => a + b,
  '-': (a, b) => a - b,
  '*': (a, b) => a * b,
  '/': (a, b) => a / b,
  '^': (a, b) => a ** b,
  minus: (a) => -a,
};

/** The terms that laws share, as functions of numbers: what `rate-terms.ts` says, written anew. */
const calls = {
  M: (s, k) => (s > 0 ? s / (k + s) : s / k),
  I: (s, k) => (s > 0 ? k / (k + s) : 1),
  B: (x, w) => Math.max(x, 0) + w * Math.log(1 + Math.exp(-Math.abs(x) / w)),
  J: (s, a, k, t) => {
    const sum = t * (s + k) + a;
    return (2 * t * s * a) / (sum + Math.sqrt(sum * sum - 4 * t * s * a));
  },
  max: Math.max,
  min: Math.min,
  exp: Math.exp,
  sin: Math.sin,
  sigma: (x) => Math.max(0, Math.min(1, x)) ** 2 * (3 - 2 * Math.max(0, Math.min(1, x))),
  phi: (n) => (n < 1e-6 ? 1 - n / 2 : -Math.expm1(-n) / n),
};

/** The value of a law. `look` gives what a name stands for. */
export function valueOf(tree, look) {
  if (typeof tree === 'number') return tree;
  if (typeof tree === 'string') return look(tree);
  const values = tree.args.map((each) => valueOf(each, look));
  return (tree.call === undefined ? operators[tree.op] : calls[tree.call])(...values);
}

/** Every name of a law. */
export function namesOf(tree) {
  if (typeof tree === 'number') return [];
  return typeof tree === 'string' ? [tree] : tree.args.flatMap(namesOf);
}

const rank = { '+': 1, '-': 1, '*': 2, '/': 2, minus: 2, '^': 3 };

/** A law in LaTeX. `write` gives how a name is written. */
export function texOf(tree, write) {
  const inner = (each) => texOf(each, write);
  const bound = (each, least) =>
    typeof each === 'object' && each.op !== undefined && each.op !== '/' && rank[each.op] < least
      ? `\\left(${inner(each)}\\right)`
      : inner(each);
  if (typeof tree === 'number') return String(tree);
  if (typeof tree === 'string') return write(tree);
  const { op, call, args } = tree;
  const [a, b] = args;
  if (call === 'exp') return `e^{${inner(a)}}`;
  if (call !== undefined) {
    const name = call.length === 1 ? call : `\\${call}`;
    return `${name}\\left(${args.map(inner).join(',\\, ')}\\right)`;
  }
  if (op === 'minus') return `-${bound(a, 2)}`;
  if (op === '/') return `\\frac{${inner(a)}}{${inner(b)}}`;
  if (op === '^') return `${typeof a === 'object' ? `\\left(${inner(a)}\\right)` : inner(a)}^{${inner(b)}}`;
  if (op === '*') return `${bound(a, 2)}\\,${bound(b, 2)}`;
  return `${bound(a, 1)} ${op} ${op === '-' ? bound(b, 2) : bound(b, 1)}`;
}
