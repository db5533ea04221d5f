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

/**
 * The bytes of a module whose functions work on one memory that is brought to it as `leat.memory`.
 * @param functions each with `name`, `exported`, `parameters` and `results` (types), `locals` (types beyond the parameters)
 *   and `code` (bytes without the closing end)
 */
export function moduleBytes(functions) {
  const kinds = new Map();
  const kindOf = ({ parameters, results }) => {
    const key = `${parameters.join()}>${results.join()}`;
    if (!kinds.has(key)) kinds.set(key, { index: kinds.size, parameters, results });
    return kinds.get(key).index;
  };
  const uses = functions.map((each) => unsigned(kindOf(each)));
  const types = [...kinds.values()].map(({ parameters, results }) => [
    0x60,
    ...list(parameters.map((type) => [VALUE_TYPES[type]])),
    ...list(results.map((type) => [VALUE_TYPES[type]])),
  ]);
  const memory = [...text('leat'), ...text('memory'), 0x02, 0x00, ...unsigned(0)];
  const exported = functions.flatMap(({ name, exported: out }, i) =>
    out ? [[...text(name), 0x00, ...unsigned(i)]] : [],
  );
  const bodies = functions.map(({ locals, code }) => sized([...runsOf(locals), ...code, 0x0b]));
  return Uint8Array.from([
    ...[0x00, 0x61, 0x73, 0x6d, 0x01, 0x00, 0x00, 0x00],
    ...section(1, list(types)),
    ...section(2, list([memory])),
    ...section(3, list(uses)),
    ...section(7, list(exported)),
    ...section(10, list(bodies)),
  ]);
}
