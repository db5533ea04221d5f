import { expect, it } from 'vitest';
import { createParameters } from '../../../../packages/core/src/library/parameters.js';
import { bibliography } from '../../../../packages/core/src/library/sources.js';

it('groups ids by source and mark, sorted, each once', () => {
  const entries = bibliography(['emerson.b', 'aob.yield', 'emerson.a', 'emerson.b']);
  expect(entries.map(({ key, mark, ids }) => [key, mark, ids])).toEqual([
    ['emerson-1975', 'S', ['emerson.a', 'emerson.b']],
    ['hiatt-grady-2008', 'S', ['aob.yield']],
  ]);
  expect(entries[0].citation).toMatch(/^Emerson, Russo, Lund & Thurston,.*2379-2383, 1975$/);
});

it('says which numbers the user gave', () => {
  const parameters = createParameters([{ id: 'aob.yield', value: 0.2 }]);
  expect(bibliography(['aob.yield'], parameters)).toEqual([
    { key: 'scenario', citation: 'Given by the scenario', mark: 'U', ids: ['aob.yield'] },
  ]);
});

it('refuses an unknown id', () => {
  expect(() => bibliography(['emersn.a'])).toThrow('did you mean emerson.a?');
});
