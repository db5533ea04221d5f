import * as z from 'zod';
import { fileSchema } from './sections/whole-file.js';
function isBox(value) {
    return typeof value === 'object' && value !== null && !Array.isArray(value);
}
/** The same schema with nothing required: a file that includes another need only say what differs. */
function loosened(schema) {
    if (Array.isArray(schema))
        return schema.map(loosened);
    if (!isBox(schema))
        return schema;
    const entries = Object.entries(schema).filter(([key, value]) => !(key === 'required' && Array.isArray(value)));
    return Object.fromEntries(entries.map(([key, value]) => [key, loosened(value)]));
}
/** Entries by name may be null: that takes the entry of the included file away. */
function removable(schema) {
    if (!isBox(schema) || !isBox(schema['additionalProperties']))
        return schema;
    return { ...schema, additionalProperties: { anyOf: [schema['additionalProperties'], { type: 'null' }] } };
}
/**
 * JSON Schema (draft 2020-12) of a system file, for editors, made from the definitions that read it.
 * A file that includes another is held to the same keys and kinds, but need not be complete.
 */
export function scenarioJsonSchema() {
    const made = z.toJSONSchema(fileSchema, { io: 'input', target: 'draft-2020-12' });
    const { $schema, ...whole } = JSON.parse(JSON.stringify(made));
    const over = loosened(whole);
    const sections = Object.entries(over['properties']).map(([key, schema]) => [key, removable(schema)]);
    return {
        $schema,
        title: 'Leat system file',
        $defs: { whole, over: { ...over, properties: Object.fromEntries(sections) } },
        if: { required: ['include'] },
        then: { $ref: '#/$defs/over' },
        else: { $ref: '#/$defs/whole' },
    };
}
//# sourceMappingURL=json-schema.js.map