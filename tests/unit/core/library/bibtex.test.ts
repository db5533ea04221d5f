import { bibliography, bibtex, createParameters, sourceList } from '@leat/core';
import { describe, expect, it } from 'vitest';

/** The entries of a BibTeX text: kind, key and fields; throws where a brace is not closed. */
function parsed(text: string): { key: string; fields: ReadonlyMap<string, string> }[] {
  return text
    .split(/^(?=@)/m)
    .filter((part) => part.trim() !== '')
    .map((part) => {
      const [, key] = /^@misc\{([A-Za-z0-9:-]+),\n/.exec(part) ?? [];
      expect(part, part).toMatch(/\n\}\n\s*$/);
      let depth = 0;
      for (const sign of part.replace(/\\./g, '')) depth += sign === '{' ? 1 : sign === '}' ? -1 : 0;
      expect(depth, part).toBe(0);
      const fields = [...part.matchAll(/^ {2}([a-z]+) = \{(.*)\},$/gm)].map(
        ([, name, value]) => [name, value] as const,
      );
      return { key, fields: new Map(fields) };
    });
}

describe('BibTeX of what a run used', () => {
  const all = [...createParameters().ids()];

  it('has an entry for each source, once, with year and DOI where they are known', () => {
    const entries = parsed(bibtex(bibliography(all)));
    const cited = new Set(bibliography(all).map(({ key }) => key));
    expect(entries.map(({ key }) => key)).toEqual([...cited].sort());
    for (const { key, fields } of entries) {
      const source = sourceList.find((each) => each.key === key);
      expect(fields.get('year') ?? 'none', key).toBe(source?.year);
      expect(fields.get('doi') ?? 'none', key).toBe(source?.doi);
      expect(fields.get('title')?.length, key).toBeGreaterThan(5);
    }
  });

  it('says of each what came from it, and how', () => {
    const [entry] = parsed(bibtex(bibliography(['molar.nitrogen', 'molar.carbon'])));
    expect(entry.fields.get('note')).toMatch(/: molar\.carbon, molar\.nitrogen$/);
  });

  it('writes out what means something to TeX, and makes keys of sources in words', () => {
    const text = bibtex([
      {
        key: 'Ours & theirs, 50 %',
        citation: 'Ours & theirs, 50 %',
        mark: 'P',
        given: 'my_own.tsv',
        ids: ['a.b'],
      },
      { key: 'Ours, theirs (50)', citation: 'x^2 {y} \\z', mark: 'P', ids: ['c.d'] },
      { key: 'Ours theirs 50', citation: 'again\nand again', mark: 'P', ids: ['e.f'] },
      { key: 'scenario', citation: 'Given by the scenario', mark: 'U', ids: ['g.h'] },
    ]);
    const entries = parsed(text);
    expect(entries.map(({ key }) => key)).toEqual(['Ours-theirs-50', 'Ours-theirs-50-2', 'Ours-theirs-50-3']);
    expect(entries.map(({ fields }) => fields.get('title'))).toEqual([
      '{Ours \\& theirs, 50 \\%}',
      '{x\\textasciicircum{}2 \\{y\\} \\textbackslash{}z}',
      '{again and again}',
    ]);
    expect(entries[0].fields.get('note')).toBe('common practice (given in my\\_own.tsv): a.b');
  });
});
