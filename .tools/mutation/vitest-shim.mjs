/** What tests import from vitest, without vitest's process: `expect` is its own, the rest gathers the tests. */
import { createRequire } from 'node:module';
import { pathToFileURL } from 'node:url';
import { format } from 'node:util';

const root = createRequire(import.meta.url);
const fromVitest = createRequire(root.resolve('vitest/package.json'));
const { chai, JestAsymmetricMatchers, JestChaiExpect, JestExtend, customMatchers } = await import(
  pathToFileURL(fromVitest.resolve('@vitest/expect')).href
);
chai.use(JestExtend);
chai.use(JestChaiExpect);
chai.use(JestAsymmetricMatchers);

/** Every test gathered so far. */
export const all = [];
/** What is to be done after every test of the file. */
export const after = [];
const above = [];

const spies = await import(pathToFileURL(fromVitest.resolve('@vitest/spy')).href);

export const expect = Object.assign((value, message) => chai.expect(value, message), chai.expect);
expect.extend(expect, customMatchers);

function each(make) {
  return (rows) => (name, body) => {
    for (const row of rows) {
      const values = Array.isArray(row) ? row : [row];
      make(format(name, ...values), () => body(...values));
    }
  };
}

export function describe(name, body) {
  above.push(name);
  body();
  above.pop();
}

export function it(name, ...rest) {
  const run = rest.find((given) => typeof given === 'function');
  all.push({ name: [...above, name].join(' > '), run });
}

describe.each = each(describe);
it.each = each(it);

export function afterEach(tidy) {
  after.push(tidy);
}

/** Global functions replaced for one test. */
const stubbed = new Map();
export const vi = {
  fn: spies.fn,
  spyOn: spies.spyOn,
  restoreAllMocks: spies.restoreAllMocks,
  stubGlobal: (name, value) => {
    if (!stubbed.has(name)) stubbed.set(name, globalThis[name]);
    globalThis[name] = value;
  },
  unstubAllGlobals: () => {
    for (const [name, value] of stubbed) globalThis[name] = value;
    stubbed.clear();
  },
};
