import fc from 'fast-check';

/** What people and enemies write where something else belongs. */
const nasty = [
  ...[
    '',
    '0',
    '-1',
    '1e308',
    '1e309',
    'NaN',
    '.inf',
    '-0',
    '0,5',
    '1e-320',
    '9'.repeat(400),
    'null',
    'true',
    '~',
  ],
  ...[
    '__proto__',
    'constructor',
    'toString',
    '\t',
    '\0',
    '\u00a0',
    '“',
    '\u202e',
    '{',
    '}',
    '[',
    ']',
    ': ',
    '- ',
  ],
  ...[
    '&a ',
    '*a',
    '!!js/function ',
    '<<: ',
    '---\n',
    '#',
    '"',
    "'",
    '2025-02-31',
    '../../etc/passwd',
    '100 kg',
    '=1+1',
  ],
];

/** One change of a text: where (as a share of its length), what kind, and what is put there. */
const change = fc.record({
  at: fc.double({ min: 0, max: 1, noNaN: true }),
  length: fc.integer({ min: 0, max: 40 }),
  kind: fc.constantFrom('cut', 'put', 'twice', 'swap', 'word'),
  what: fc.oneof(fc.constantFrom(...nasty), fc.string({ maxLength: 12 })),
});

type Change = typeof change extends fc.Arbitrary<infer T> ? T : never;

function changed(text: string, { at, length, kind, what }: Change): string {
  const from = Math.floor(at * text.length);
  const piece = text.slice(from, from + length);
  const [before, after] = [text.slice(0, from), text.slice(from + length)];
  if (kind === 'cut') return before + after;
  if (kind === 'put') return before + what + piece + after;
  if (kind === 'twice') return before + piece + piece + after;
  if (kind === 'swap') return before + after.slice(0, 20) + piece + after.slice(20);
  return before + text.slice(from).replace(/[\w.%-]+/, () => what);
}

/** A valid text with one to five changes. */
export const mutated = (seeds: readonly string[]): fc.Arbitrary<string> =>
  fc
    .tuple(fc.constantFrom(...seeds), fc.array(change, { minLength: 1, maxLength: 5 }))
    .map(([text, changes]) => changes.reduce(changed, text));

/** Bytes as a reader of text gets them, and texts of the marks that the form lives on. */
export const raw: fc.Arbitrary<string> = fc.oneof(
  fc.uint8Array({ maxLength: 300 }).map((bytes) => Buffer.from(bytes).toString('latin1')),
  fc.string({ unit: fc.constantFrom(...Array.from('ab:-[]{}&*!|>\'"#?,;% \n\t01.e')), maxLength: 200 }),
  fc.json({ maxDepth: 4 }),
);
