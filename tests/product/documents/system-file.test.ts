import { readFileSync } from 'node:fs';
import { InputError, parseQuantity, readScenario, type Dimension } from '@leat/core';
import { describe, expect, it } from 'vitest';

const text = readFileSync(new URL('../../../packages/cli/docs/system-file.md', import.meta.url), 'utf8');
const [whole, ...pieces] = [...text.matchAll(/```yaml\n([\s\S]*?)```/g)].map(([, yaml]) => yaml);

/** Files that the document shows: their name, then their text. */
const shown = new Map(
  [...text.matchAll(/`([\w.-]+)`:\n\n```csv\n([\s\S]*?)```/g)].map(([, name, held]) => [name, held]),
);

const table =
  'id\tvalue\tunit\tlow\thigh\tdistribution\tconditions\tsource\tpage\tmark\n' +
  'aob.growth\t0.5\t1/d\t0.4\t0.6\ttriangular\tinvented\tInvented log book 2025\t-\tU\n';

/** What is wrong with a text, one line a fault. */
function faultsOf(yaml: string): readonly string[] {
  const load = (path: string): string => {
    const held = path === 'whole.yaml' ? whole : path === 'my-numbers.tsv' ? table : shown.get(path);
    if (held === undefined) throw new Error(`no ${path} in the document`);
    return held;
  };
  try {
    readScenario(yaml, { file: 'piece.yaml', load });
    return [];
  } catch (error) {
    if (error instanceof InputError) return error.faults.map((fault) => JSON.stringify(fault));
    throw error;
  }
}

describe('the reference of the system file', () => {
  it('opens with a file that is read as it stands', () => {
    expect(faultsOf(whole)).toEqual([]);
  });

  it.each(pieces)('has pieces that may be laid over it: %s', (piece) => {
    expect(faultsOf(`include: whole.yaml\n${piece}`)).toEqual([]);
  });

  it('names units that are read', () => {
    const rows = [...text.matchAll(/^\| ([a-z, ]+?) +\| (.*`.*) \|$/gm)];
    const units = rows.flatMap(([, kinds, cell]) =>
      kinds
        .split(', ')
        .map((kind) => [kind, [...cell.matchAll(/`([^`]+)`/g)].map(([, unit]) => unit)] as const),
    );
    expect(units.length).toBe(20);
    for (const [kind, names] of units) {
      const dimension = kind.replace(' ', '-') as Dimension;
      const read = names.filter(
        (name) => 'value' in parseQuantity(/^\d+\S* |^\d+\.\d/.test(name) ? name : `1 ${name}`, dimension),
      );
      const ions = ['ammonia', 'nitrite', 'nitrate'].includes(kind);
      // Each form of nitrogen has its own ion.
      expect(names.length - read.length, `${kind}: ${names.join(' ')}`).toBe(ions ? 2 : 0);
    }
  });
});
