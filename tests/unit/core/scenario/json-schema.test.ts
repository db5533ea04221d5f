import { readFileSync, readdirSync } from 'node:fs';
import { Ajv } from 'ajv';
import { describe, expect, it } from 'vitest';
import { readTree } from '../../../../packages/core/src/scenario/file/read-tree.js';
import { plainOf } from '../../../../packages/core/src/scenario/file/tree.js';
import { edited, smallSystem } from '../../../product/faults/small-system.js';
import { schemaFaults } from '../../../support/json-schema-faults.js';

const cli = new URL('../../../../packages/cli/', import.meta.url);
const written = readFileSync(new URL('schema/leat.schema.json', cli), 'utf8');

/** What the schema on disk finds wrong with a file. */
function faultsOf(text: string): string[] {
  const { tree } = readTree(text, 'file.yaml');
  if (tree === undefined) throw new Error('not YAML');
  // Null entries take away what was included; plainOf leaves them out as reading does.
  const plain = JSON.parse(JSON.stringify(plainOf(tree))) as Parameters<typeof schemaFaults>[1];
  return schemaFaults(JSON.parse(written) as Parameters<typeof schemaFaults>[0], plain);
}

describe('the JSON Schema for editors', () => {
  const shipped = readdirSync(new URL('scenarios/', cli)).filter((file) => file.endsWith('.yaml'));
  it.each(shipped)('accepts the shipped %s', (file) => {
    expect(faultsOf(readFileSync(new URL(`scenarios/${file}`, cli), 'utf8'))).toEqual([]);
  });

  it('accepts the small system of the tests', () => {
    expect(faultsOf(smallSystem)).toEqual([]);
  });

  it.each([
    ['an unknown key', edited(['days: 30', 'days: 30\nvesels: {}']), ['$: unknown key vesels']],
    ['a bare number', edited(['volume: 500 L', 'volume: 500']), ['$.vessels.sump.volume: not string']],
    ['a missing section', edited(['days: 30\n', '']), ['$: no days']],
    ['an unknown word', edited(['kind: sump', 'kind: smup']), ['$.vessels.sump.kind: not one of the words']],
    ['a bad count', edited(['number: 20', 'number: 2.5']), ['$.fish.tilapia.number: not integer']],
  ])('refuses %s', (_, text, faults) => {
    expect(faultsOf(text)).toEqual(faults);
  });

  it('is draft-07 by its own name, as editors of YAML know it, and has an id that is no address', () => {
    const schema = JSON.parse(written) as Record<string, unknown>;
    expect(schema['$schema']).toBe('http://json-schema.org/draft-07/schema#');
    expect(schema['$id']).toBe('urn:leat:system-file:1');
    // A checker that knows only draft-07 takes the schema, all its references too, and finds what ours finds.
    const ajv = new Ajv({ strictTypes: false });
    expect(ajv.validateSchema(schema)).toBe(true);
    const check = ajv.compile(schema);
    for (const [text, sound] of [
      [smallSystem, true],
      [edited(['kind: sump', 'kind: smup']), false],
      ['include: a.yaml\nfish: { carp: { number: 3 } }', true],
      ['include: a.yaml\nfish: { carp: { nmber: 3 } }', false],
    ] as const) {
      const { tree } = readTree(text, 'file.yaml');
      if (tree === undefined) throw new Error('not YAML');
      expect(check(JSON.parse(JSON.stringify(plainOf(tree))))).toBe(sound);
    }
  });

  it('lets a file that includes another leave things out, but not misspell them', () => {
    expect(faultsOf('include: a.yaml\nfish: { carp: { number: 3 } }')).toEqual([]);
    const faults = faultsOf('include: a.yaml\nfish: { carp: { nmber: 3 } }');
    expect(faults).toEqual(['$.fish.carp: unknown key nmber']);
  });

  it('lets such a file take an entry away', () => {
    const schema = JSON.parse(written) as Parameters<typeof schemaFaults>[0];
    expect(schemaFaults(schema, { include: 'a.yaml', fish: { carp: null } })).toEqual([]);
  });
});
