import { describe, expect, it } from 'vitest';
import { citationOf } from './citations.js';
import { hits } from './published-check.js';
import { topics } from './topics.js';

describe.each(topics)('$title', ({ checks }) => {
  it.each(checks)('$id: $what', (check) => {
    const value = check.compute();
    expect(Number.isFinite(value)).toBe(true);
    // A known miss that is none any more has to be taken off the list.
    expect(hits(check, value), `${value} ${check.unit}`).toBe(check.miss === undefined);
  });
});

describe('the list of checks', () => {
  const all = topics.flatMap(({ checks }) => checks);

  it('names each check once', () => {
    const ids = all.map(({ id }) => id);
    expect(ids.filter((id, at) => ids.indexOf(id) !== at)).toEqual([]);
  });

  it('cites sources that can be looked up', () => {
    for (const { source } of all) expect(citationOf(source).length).toBeGreaterThan(10);
  });

  it('holds at least 120 published values, those computed from a formula or chosen for set aside', () => {
    const published = all.filter(({ mark, chosen }) => mark !== 'C' && chosen === undefined);
    expect(published.length).toBeGreaterThanOrEqual(120);
  });
});
