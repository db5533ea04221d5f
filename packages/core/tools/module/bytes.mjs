/** Bytes of a WebAssembly module: numbers, sections, the whole. Source: WebAssembly Core Specification 1.0 [R], chapter 5. */

/** Types as they stand in a module. */
const VALUE_TYPES = { i32: 0x7f, f64: 0x7c };

/** A whole number from 0, seven bits a byte. */
export function unsigned(value) {
  const bytes = [];
  let rest = value;
  do {
    const low = rest % 128;
    rest = Math.floor(rest / 128);
    bytes.push(rest > 0 ? low + 128 : low);
  } while (rest > 0);
  return bytes;
}

/** A whole number of 32 bits with its sign. */
export function signed(value) {
  const bytes = [];
  let rest = value | 0;
  for (;;) {
    const low = rest & 127;
    rest >>= 7;
    if ((rest === 0 && low < 64) || (rest === -1 && low >= 64)) return [...bytes, low];
    bytes.push(low + 128);
  }
}

/** The eight bytes of a number. */
export function double(value) {
  const view = new DataView(new ArrayBuffer(8));
  view.setFloat64(0, value, true);
  return Array.from({ length: 8 }, (_, i) => view.getUint8(i));
}

/** A name, of letters and digits alone. */
const text = (name) => [...unsigned(name.length), ...Array.from(name, (letter) => letter.charCodeAt(0))];
const list = (items) => [...unsigned(items.length), ...items.flat()];
const section = (id, bytes) => [id, ...unsigned(bytes.length), ...bytes];
const sized = (bytes) => [...unsigned(bytes.length), ...bytes];

/** Locals of a function that are no parameters, as runs of one type. */
function runsOf(locals) {
  const runs = [];
  for (const type of locals) {
    const last = runs.at(-1);
    if (last?.type === type) last.count += 1;
    else runs.push({ type, count: 1 });
  }
  return list(runs.map(({ type, count }) => [...unsigned(count), VALUE_TYPES[type]]));
}

/** The types of functions, each once, and which of them a function has. */
function kindsOf(functions) {
  const kinds = new Map();
  const indexOf = ({ parameters, results }) => {
    const key = `${parameters.join()}>${results.join()}`;
    if (!kinds.has(key)) kinds.set(key, { index: kinds.size, parameters, results });
    return kinds.get(key).index;
  };
  const uses = functions.map(indexOf);
  const types = [...kinds.values()].map(({ parameters, results }) => [
    0x60,
    ...list(parameters.map((type) => [VALUE_TYPES[type]])),
    ...list(results.map((type) => [VALUE_TYPES[type]])),
  ]);
  return { uses, types };
}

/** A variable of the module, 0 at first. */
const variable = (type) => [
  VALUE_TYPES[type],
  0x01,
  ...(type === 'i32' ? [0x41, 0] : [0x44, ...double(0)]),
  0x0b,
];

/** A section, or nothing where there is nothing in it. */
const unless = (empty, id, bytes) => (empty ? [] : section(id, bytes));

/**
 * What calls, for each pair of a function and a list that lie from `program` on, that function of the table with the list and what
 * else it is handed.
 */
export function walker({ parameters, kind, offset }) {
  const [PROGRAM, COUNT, REST] = [0, 1, 2];
  const rest = parameters.slice(1).flatMap((_, i) => [0x20, REST + i]);
  const call = [
    0x20,
    PROGRAM,
    0x28,
    2,
    4,
    ...rest,
    0x20,
    PROGRAM,
    0x28,
    2,
    0,
    0x41,
    offset,
    0x6a,
    0x11,
    ...unsigned(kind),
    0,
  ];
  const step = [0x20, PROGRAM, 0x41, 8, 0x6a, 0x21, PROGRAM, 0x20, COUNT, 0x41, 1, 0x6b, 0x21, COUNT];
  return {
    parameters: ['i32', 'i32', ...parameters.slice(1)],
    results: [],
    locals: [],
    code: [0x02, 0x40, 0x03, 0x40, 0x20, COUNT, 0x45, 0x0d, 1, ...call, ...step, 0x0c, 0, 0x0b, 0x0b],
  };
}

/**
 * The bytes of a module whose functions work on one memory that is brought to it as `leat.memory`.
 * @param functions each with `exported` (its name outside, or undefined), `parameters` and `results` (types), `locals` (types beyond
 *   the parameters) and `code` (bytes without the closing end)
 * @param variables types of the variables of the module
 * @param start index of the function that runs as the module is opened, or -1
 * @param table indices of the functions that are called by their place in a table
 */
export function moduleBytes(functions, { variables = [], start = -1, table = [] } = {}) {
  const { uses, types } = kindsOf(functions);
  const memory = [...text('leat'), ...text('memory'), 0x02, 0x00, ...unsigned(0)];
  const exported = functions.flatMap(({ exported: name }, i) =>
    name === undefined ? [] : [[...text(name), 0x00, ...unsigned(i)]],
  );
  const bodies = functions.map(({ locals, code }) => sized([...runsOf(locals), ...code, 0x0b]));
  const none = table.length === 0;
  return Uint8Array.from([
    ...[0x00, 0x61, 0x73, 0x6d, 0x01, 0x00, 0x00, 0x00],
    ...section(1, list(types)),
    ...section(2, list([memory])),
    ...section(3, list(uses.map(unsigned))),
    ...unless(none, 4, list([[0x70, 0x00, ...unsigned(table.length)]])),
    ...unless(variables.length === 0, 6, list(variables.map(variable))),
    ...section(7, list(exported)),
    ...unless(start < 0, 8, unsigned(start)),
    ...unless(none, 9, list([[0x00, 0x41, 0x00, 0x0b, ...list(table.map(unsigned))]])),
    ...section(10, list(bodies)),
  ]);
}

/** Which type of function, among those of a module, a function has. */
export const kindOf = (functions, index) => kindsOf(functions).uses[index];
