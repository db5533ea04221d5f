import * as z from 'zod';
import { fileSchema } from './sections/whole-file.js';

type Json = string | number | boolean | null | readonly Json[] | { readonly [key: string]: Json };
type Box = Readonly<Record<string, Json>>;

function isBox(value: Json | undefined): value is Box {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

/** The same schema with nothing required: a file that includes another need only say what differs. */
function loosened(schema: Json): Json {
  if (Array.isArray(schema)) return (schema as readonly Json[]).map(loosened);
  if (!isBox(schema)) return schema;
  const entries = Object.entries(schema).filter(
    ([key, value]) => !(key === 'required' && Array.isArray(value)),
  );
  return Object.fromEntries(entries.map(([key, value]) => [key, loosened(value)]));
}

/** Entries by name may be null: that takes the entry of the included file away. */
function removable(schema: Json): Json {
  if (!isBox(schema) || !isBox(schema['additionalProperties'])) return schema;
  return { ...schema, additionalProperties: { anyOf: [schema['additionalProperties'], { type: 'null' }] } };
}

/** A list may be added to: its items under its key with `+` behind it. */
function added(key: string, schema: Json): [string, Json][] {
  return isBox(schema) && schema['type'] === 'array' ? [[`${key}+`, schema]] : [];
}

/** Name of the schema. It is no address: nothing is fetched by it. The number is that of the form of a system file. */
const schemaId = 'urn:leat:system-file:1';

/**
 * JSON Schema (draft-07, which editors of YAML know) of a system file, for editors, made from the definitions that read it.
 * A file that includes another is held to the same keys and kinds, but need not be complete.
 */
export function scenarioJsonSchema(): Record<string, unknown> {
  const made = z.toJSONSchema(fileSchema, { io: 'input', target: 'draft-7' });
  const { $schema, ...whole } = JSON.parse(JSON.stringify(made)) as Box;
  const over = loosened(whole) as Box;
  const sections = Object.entries(over['properties'] as Box).flatMap(([key, schema]) => [
    [key, removable(schema)],
    ...added(key, schema),
  ]);
  return {
    $schema,
    $id: schemaId,
    title: 'Leat system file',
    definitions: { whole, over: { ...over, properties: Object.fromEntries(sections) as Box } },
    if: { required: ['include'] },
    then: { $ref: '#/definitions/over' },
    else: { $ref: '#/definitions/whole' },
  };
}
