import type { Fault } from '../base/faults.js';

/** What a part of an extension must be: the words of `typeof`, and `array`. */
const forms: Readonly<Record<string, Readonly<Record<string, readonly string[]>>>> = {
  components: {
    id: ['string'],
    unit: ['string'],
    place: ['string', 'array'],
    content: ['function'],
    start: ['undefined', 'number', 'object'],
    scale: ['undefined', 'number'],
  },
  processes: {
    id: ['string'],
    title: ['string'],
    place: ['string'],
    unit: ['string'],
    basis: ['string'],
    reads: ['array'],
    stoichiometry: ['function'],
    coefficients: ['function'],
    rate: ['function'],
    partials: ['function'],
  },
  numbers: { id: ['string'], value: ['number'], unit: ['string'], source: ['string'], mark: ['string'] },
};

const formOf = (value: unknown): string =>
  value === null ? 'nothing' : Array.isArray(value) ? 'array' : typeof value;

const words = (form: readonly string[]): string =>
  form
    .filter((word) => word !== 'undefined')
    .map((word) => (word === 'array' ? 'a list' : word === 'object' ? 'an object' : `a ${word}`))
    .join(' or ');

/**
 * A fault for each part of what a user adds that is not of the form it must have. Types say the same; this is for who
 * writes without them, or loads the addition from a file.
 */
export function formFaults(added: unknown): readonly Fault[] {
  if (formOf(added) !== 'object')
    return [{ problem: 'no addition', expected: 'an object of components, processes, numbers' }];
  const given: Readonly<Record<string, unknown>> = { ...(added as object) };
  return Object.entries(forms).flatMap(([list, form]): readonly Fault[] => {
    const entries = given[list];
    if (entries === undefined) return [];
    if (!Array.isArray(entries)) return [{ key: list, problem: 'not a list', got: formOf(entries) }];
    return entries.flatMap((entry: unknown, index): readonly Fault[] => {
      const key = `${list}[${index}]`;
      if (formOf(entry) !== 'object') return [{ key, problem: 'not an object', got: formOf(entry) }];
      const parts: Readonly<Record<string, unknown>> = { ...(entry as object) };
      return Object.entries(form).flatMap(([part, asked]): readonly Fault[] => {
        const got = formOf(parts[part]);
        if (asked.includes(got)) return [];
        const problem = got === 'undefined' ? 'missing' : 'of another form';
        return [
          { key: `${key}.${part}`, problem, ...(got !== 'undefined' && { got }), expected: words(asked) },
        ];
      });
    });
  });
}
