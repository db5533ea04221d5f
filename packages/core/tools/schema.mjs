// Writes the JSON Schema of a system file for editors, from the definitions that read it.
// Run after `tsc -b`: node packages/core/tools/schema.mjs
import { writeFileSync } from 'node:fs';
import { format } from 'prettier';
import { scenarioJsonSchema } from '../dist/scenario/json-schema.js';

const target = new URL('../../cli/schema/leat.schema.json', import.meta.url);
const text = await format(JSON.stringify(scenarioJsonSchema()), { parser: 'json', printWidth: 110 });
writeFileSync(target, text);
