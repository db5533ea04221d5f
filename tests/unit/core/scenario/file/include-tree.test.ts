import { describe, expect, it } from 'vitest';
import { includeTree, resolvePath } from '../../../../../packages/core/src/scenario/file/include-tree.js';
import { originAt, plainOf } from '../../../../../packages/core/src/scenario/file/tree.js';

function loader(files: Record<string, string>): (path: string) => string {
  return (path) => {
    const text = files[path];
    if (text === undefined) throw new Error('no such file');
    return text;
  };
}

describe('includeTree', () => {
  it('lays a file over what it includes, key by key; lists replace, null takes away', () => {
    const base = 'a: 1\nb: { c: 2, d: 3, e: 4 }\nf: [1, 2]\n';
    const own = 'include: base.yaml\nb: { c: 20, e: ~ }\nf: [9]\n';
    const { tree, faults } = includeTree(own, 'dir/own.yaml', loader({ 'dir/base.yaml': base }));
    expect(faults).toEqual([]);
    expect(tree === undefined ? undefined : plainOf(tree)).toEqual({ a: 1, b: { c: 20, d: 3 }, f: [9] });
  });

  it('keeps where each value was written', () => {
    const files = loader({ 'base.yaml': 'a: 1\nb: 2\n' });
    const { tree } = includeTree('include: base.yaml\nb: 3\n', 'own.yaml', files);
    expect(tree && originAt(tree, ['a'])).toEqual({ file: 'base.yaml', line: 1, column: 4 });
    expect(tree && originAt(tree, ['b'])).toEqual({ file: 'own.yaml', line: 2, column: 4 });
  });

  it('lays several included files in the order named', () => {
    const files = loader({ 'x.yaml': 'a: x\nb: x', 'y.yaml': 'b: y\nc: y' });
    const { tree } = includeTree('include: [x.yaml, y.yaml]', 'own.yaml', files);
    expect(tree && plainOf(tree)).toEqual({ a: 'x', b: 'y', c: 'y' });
  });

  it('sees paths from the file that names them', () => {
    expect(resolvePath('a/b/c.yaml', 'd.yaml')).toBe('a/b/d.yaml');
    expect(resolvePath('c.yaml', 'd.yaml')).toBe('d.yaml');
    expect(resolvePath('a/c.yaml', '/d.yaml')).toBe('/d.yaml');
    const files = loader({ 'sub/x.yaml': 'include: y.yaml', 'sub/y.yaml': 'a: 1' });
    const { tree } = includeTree('include: sub/x.yaml', 'own.yaml', files);
    expect(tree && plainOf(tree)).toEqual({ a: 1 });
  });

  it('refuses a circle, a missing file, too many levels and what is no name, each where it is written', () => {
    const circle = loader({ 'b.yaml': 'include: a.yaml', 'a.yaml': 'include: b.yaml' });
    expect(includeTree('include: b.yaml', 'a.yaml', circle).faults).toMatchObject([
      { file: 'b.yaml', line: 1, key: 'include', problem: 'a file that includes itself' },
    ]);
    expect(includeTree('include: c.yaml', 'a.yaml', circle).faults).toMatchObject([
      { file: 'a.yaml', line: 1, problem: 'cannot be read: no such file' },
    ]);
    const deep = (path: string): string => `include: x${Number(path.slice(1, -5)) + 1}.yaml`;
    expect(includeTree('include: x0.yaml', 'a.yaml', deep).faults).toMatchObject([
      { file: 'x6.yaml', problem: 'included more than 8 deep' },
    ]);
    expect(includeTree('include: [3]', 'a.yaml', circle).faults).toMatchObject([
      { problem: 'wrong kind of value', got: '3' },
    ]);
  });

  it('reports the faults of an included file with its own name and line', () => {
    const { faults } = includeTree('include: x.yaml', 'a.yaml', loader({ 'x.yaml': 'a: 1\na: 2' }));
    expect(faults).toMatchObject([{ file: 'x.yaml', line: 2, problem: 'key written twice' }]);
  });
});
