import { readFileSync, readdirSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { marks } from '@leat/core';
import { describe, expect, it } from 'vitest';
import { root } from '../packages/packed.js';

// The reader of YAML that core depends on: tests have none of their own.
const yaml = createRequire(join(root, 'packages/core/package.json'))('yaml') as {
  readonly parse: (text: string) => unknown;
};
const folder = join(root, '.github/ISSUE_TEMPLATE');
const read = (name: string): unknown => yaml.parse(readFileSync(join(folder, name), 'utf8'));

interface Field {
  readonly type: string;
  readonly id: string;
  readonly attributes: { readonly label: string; readonly options?: readonly unknown[] };
  readonly validations?: { readonly required: boolean };
}
interface Form {
  readonly name: string;
  readonly description: string;
  readonly body: readonly Field[];
}

describe('issue forms', () => {
  const forms = new Map(
    readdirSync(folder)
      .filter((name) => name !== 'config.yml')
      .map((name) => [name, read(name) as Form]),
  );

  it('are three: a number with its source, a fault, a wish', () => {
    expect([...forms.values()].map(({ name }) => name).sort()).toEqual([
      'A fault',
      'A number with its source',
      'A wish',
    ]);
    expect(read('config.yml')).toEqual({ blank_issues_enabled: false });
  });

  it('have fields of kinds that there are, each with an id of its own and a label', () => {
    for (const [name, { description, body }] of forms) {
      expect(description.length, name).toBeGreaterThan(10);
      expect(new Set(body.map(({ id }) => id)).size, name).toBe(body.length);
      for (const { type, id, attributes } of body) {
        expect(['input', 'textarea', 'dropdown', 'checkboxes'], `${name} ${id}`).toContain(type);
        expect(attributes.label, `${name} ${id}`).not.toBe('');
      }
    }
  });

  it('take no number without its source', () => {
    const body = forms.get('number.yml')?.body ?? [];
    const required = body.filter(({ validations }) => validations?.required === true).map(({ id }) => id);
    expect(required).toEqual(expect.arrayContaining(['id', 'value', 'source', 'mark', 'conditions']));
    const offered = body.find(({ id }) => id === 'mark')?.attributes.options ?? [];
    expect(offered.length).toBe(Object.keys(marks).length - 2);
  });
});
