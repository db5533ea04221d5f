import { marks, type Mark } from './table-row.js';
import { type BibliographyEntry, sourceList } from './sources.js';

const special: Readonly<Record<string, string>> = {
  '\\': '\\textbackslash{}',
  '~': '\\textasciitilde{}',
  '^': '\\textasciicircum{}',
};

/** A text as BibTeX takes it: signs that mean something to TeX are written out, line ends are spaces. */
const tex = (text: string): string =>
  text.replace(/\s+/g, ' ').replace(/[\\~^&%$#_{}]/g, (sign) => special[sign] ?? `\\${sign}`);

/** A key that BibTeX takes: of letters, digits, `:` and `-`. */
const keyOf = (key: string): string =>
  key.replace(/[^A-Za-z0-9:]+/g, '-').replace(/^-+|-+$/g, '') || 'source';

/** Which numbers came from a source, by how they came: `read in the publication: aob.growth, aob.yield`. */
const useOf = ({ mark, ids, given }: BibliographyEntry): string =>
  `${marks[mark satisfies Mark]}${given === undefined ? '' : ` (given in ${given})`}: ${ids.join(', ')}`;

/**
 * What a run used as BibTeX: a `@misc` for each source, its citation as it stands in the tables (whole under `title`: the tables
 * do not part authors from titles), year and DOI where they are known, and in `note` what came from it and how. Numbers that the
 * scenario gives have no source and are left out.
 */
export function bibtex(entries: readonly BibliographyEntry[]): string {
  const bySource = new Map<string, BibliographyEntry[]>();
  for (const entry of entries) {
    if (entry.key === 'scenario') continue;
    const found = bySource.get(entry.key) ?? [];
    found.push(entry);
    bySource.set(entry.key, found);
  }
  const taken = new Set<string>();
  return [...bySource]
    .map(([key, uses]) => {
      const ours = sourceList.find((source) => source.key === key);
      let name = keyOf(key);
      for (let again = 2; taken.has(name); again++) name = `${keyOf(key)}-${again}`;
      taken.add(name);
      const fields = [
        ['title', `{${tex(ours?.citation ?? uses[0].citation)}}`],
        ...(ours !== undefined && ours.year !== 'none' ? [['year', tex(ours.year)]] : []),
        ...(ours !== undefined && ours.doi !== 'none' ? [['doi', ours.doi]] : []),
        ['note', tex(uses.map(useOf).join('; '))],
      ];
      return `@misc{${name},\n${fields.map(([field, text]) => `  ${field} = {${text}},\n`).join('')}}\n`;
    })
    .join('\n');
}
