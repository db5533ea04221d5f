/**
 * Changes that no test can see, each with its reason. `where` is the end of the file's path, `line` a part of the line as it
 * is, `becomes` a part of the line as it would be: together they mean one change and no other.
 */
const known = [
  {
    where: 'solve/loops.ts',
    line: 'for (let i = 0; i < size; i++)',
    becomes: 'for (let i = 0; i <= size; i++)',
    why: 'one turn more writes beyond the end of a typed array, which is ignored',
  },
  {
    where: 'solve/step-control.ts',
    line: 'let largest = -1;',
    becomes: 'let largest = -2;',
    why: 'every size is 0 or more: any start below 0 is passed by the first',
  },
  {
    where: 'solve/loops.ts',
    line: 'b += v[i + 1] * 0;',
    becomes: 'b -= v[i + 1] * 0;',
    why: 'the sum is of zeros or not a number: its signs do not matter',
  },
  {
    where: 'solve/loops.ts',
    line: 'd += v[i + 3] * 0;',
    becomes: 'd -= v[i + 3] * 0;',
    why: 'the sum is of zeros or not a number: its signs do not matter',
  },
  {
    where: 'solve/loops.ts',
    line: 'return a + b + c + d === 0 ? 1 : 0;',
    becomes: 'return a - b + c + d === 0 ? 1 : 0;',
    why: 'the sum is of zeros or not a number: its signs do not matter',
  },
  {
    where: 'solve/loops.ts',
    line: 'return a + b + c + d === 0 ? 1 : 0;',
    becomes: 'return a + b - c + d === 0 ? 1 : 0;',
    why: 'the sum is of zeros or not a number: its signs do not matter',
  },
  {
    where: 'solve/loops.ts',
    line: 'return a + b + c + d === 0 ? 1 : 0;',
    becomes: 'return a + b + c - d === 0 ? 1 : 0;',
    why: 'the sum is of zeros or not a number: its signs do not matter',
  },
  {
    where: 'solve/first-step.ts',
    line: 'if (size > 1 && speed > 0)',
    becomes: 'if (size > 1 && speed >= 0)',
    why: 'at speed 0 the bound is infinite',
  },
  {
    where: 'solve/jacobian.ts',
    line: 'for (let i = 0; i < diagonal.length; i++)',
    becomes: 'for (let i = 0; i <= diagonal.length; i++)',
    why: 'one turn more writes to no place of the typed array',
  },
  {
    where: 'solve/jacobian.ts',
    line: 'for (let k = 0; k < system.rates; k++) {',
    becomes: 'for (let k = 0; k <= system.rates; k++) {',
    why: 'one turn more has no range to go over: the places it would read do not exist',
  },
  {
    where: 'solve/least-first.ts',
    line: 'a[1] < b[1]',
    becomes: 'a[1] <= b[1]',
    why: 'two entries of the same count and number are the same entry',
  },
  {
    where: 'solve/rodas-step.ts',
    line: 'if (this.failed < 0)',
    becomes: 'if (this.failed <= 0)',
    why: 'where the right side of state 0 is not a number, neither is its solution: the answer is 0 again',
  },
  {
    where: 'solve/loops.ts',
    line: 'for (let i = 0; i < size; i++) out[i] += v[i];',
    becomes: 'for (let i = 0; i <= size; i++) out[i] += v[i];',
    why: 'one turn more writes beyond the end of a typed array, which is ignored',
  },
  {
    where: 'solve/rosenbrock.ts',
    line: 'times[next] <= reached; next++',
    becomes: 'next <= times.length && times[next] <= reached',
    why: 'a time that does not exist is not below any other',
  },
  {
    where: 'solve/shape-memo.ts',
    line: 'for (let i = 0; i < a.length; i++)',
    becomes: 'for (let i = 0; i <= a.length; i++)',
    why: 'of two arrays of one length neither has an entry beyond its end',
  },
  {
    where: 'solve/sparse-order.ts',
    line: 'for (let i = 0; i < size; i++) {',
    becomes: 'for (let i = 0; i <= size; i++) {',
    why: 'one turn more has no range to go over: the places it would read do not exist',
  },
  {
    where: 'solve/sparse-order.ts',
    line: '.fill(-1)',
    becomes: '.fill(1)',
    why: 'every rank is written before it is read',
  },
  {
    where: 'solve/sparse-product.ts',
    line: 'rows.fill(k, start[k]',
    becomes: 'for (let k = 1; k + 1',
    why: 'the rows are 0 to begin with: the turn left out fills in 0',
  },
  {
    where: 'solve/sparse-product.ts',
    line: 'rows.fill(k, start[k]',
    becomes: 'k + 1 <= start.length',
    why: 'one turn more has no range to go over: the places it would read do not exist',
  },
  {
    where: 'solve/sparse-product.ts',
    line: 'rows.fill(k, start[k]',
    becomes: 'start[(k + 1) + 1]',
    why: 'what is filled too far is filled over by the next row; the last goes to the end',
  },
  {
    where: 'solve/sparse-product.ts',
    line: 'rows.fill(k, start[k]',
    becomes: 'start[k + 2]',
    why: 'what is filled too far is filled over by the next row; the last goes to the end',
  },
  {
    where: 'solve/step-control.ts',
    line: 'return remaining < natural * 2',
    becomes: 'return remaining <= natural * 2',
    why: 'at just two natural steps half of what remains is the natural step',
  },
  {
    where: 'solve/straight-line.ts',
    line: 'if (this.warming === 0)',
    becomes: 'if (this.warming === 1)',
    why: 'code is used at one call that would have gone by loops or by the same code: results are the same to the last bit',
  },
  {
    where: 'solve/sums-of-products.ts',
    line: 'for (let q = 0; q < target.length; q++) start',
    becomes: 'for (let q = 0; q <= target.length; q++) start',
    why: 'one turn more counts at no place of the typed array',
  },
  {
    where: 'solve/sums-of-products.ts',
    line: 'for (let q = 0; q < target.length; q++) {',
    becomes: 'for (let q = 0; q <= target.length; q++) {',
    why: 'one turn more writes to no place of the typed array',
  },
  {
    where: 'kinetics/crop-demand.ts',
    line: 'return demand > 0 ? demand : 0;',
    becomes: 'return demand >= 0 ? demand : 0;',
    why: '0 is 0 either way',
  },
  {
    where: 'kinetics/limits.ts',
    line: 'return s > 0 ? k / ((k + s) * (k + s)) : 1 / k;',
    becomes: 'return s >= 0 ?',
    why: 'at 0 both branches are 1/k',
  },
  {
    where: 'base/elementary.ts',
    line: 'const size = x < 0 ? -x : x;',
    becomes: 'x <= 0 ?',
    why: 'the size of 0 is 0 of either sign, and is only compared',
  },
  {
    where: 'base/elementary.ts',
    line: 'if (x < -38.816243) return -1;',
    becomes: '-42.69',
    why: 'between the two e^x is less than half the last place of 1: the long way gives -1 too',
  },
  {
    where: 'log/header-unit.ts',
    line: "'value' in convert(1, text, dimension)",
    becomes: 'convert(2,',
    why: 'whether a unit is one does not depend on how many there are',
  },
  {
    where: 'log/header-unit.ts',
    line: 'plain === undefined || kind === undefined',
    becomes: 'plain === undefined && kind === undefined',
    why: 'the expression finds both or neither, and finds no kind but those of the list',
  },
  {
    where: 'log/log-summary.ts',
    line: '(a < b ? -1 : 1)',
    becomes: '(a <= b ?',
    why: 'keys of a map are never alike',
  },
  {
    where: 'log/ragged.ts',
    line: 'const names = table.rows[header - 1]?.length ?? 0;',
    becomes: '?? 1;',
    why: 'where there is no header there is no row below it either, and nothing is refused',
  },
  {
    where: 'log/read-readings.ts',
    line: '(steps[above < 0 ? steps.length - 1 : above - 1] ?? -Infinity)',
    becomes: '?? Infinity)',
    why: 'the place is always within the steps: what stands for none is there for the types',
  },
  {
    where: 'result/crossings.ts',
    line: 'last.carried[index] - samples[0].carried[index]',
    becomes: 'last.carried[index] + samples[0].carried[index]',
    why: 'what was carried since the start is nothing at the start, of a run that goes on from another too',
  },
];

/** The reason why a change makes no difference, or undefined. */
export function equals({ file, source, changed }) {
  return known.find(
    (each) => file.endsWith(each.where) && source.includes(each.line) && changed.includes(each.becomes),
  )?.why;
}
