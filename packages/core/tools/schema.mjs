// The JSON Schema of a system file for editors, from the definitions that read it. `npm run generate` writes it.
import { format } from 'prettier';
import { scenarioJsonSchema } from '../dist/scenario/json-schema.js';

/** The text of leat.schema.json. */
export const schemaText = () =>
  format(JSON.stringify(scenarioJsonSchema()), { parser: 'json', printWidth: 110 });
