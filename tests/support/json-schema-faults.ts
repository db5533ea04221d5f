type Json = string | number | boolean | null | Json[] | { [key: string]: Json };
type Schema = Record<string, Json>;

const silent = new Set(['$schema', '$id', 'definitions', 'title', 'description', 'examples', 'then', 'else']);

function typeOf(value: Json): string[] {
  if (value === null) return ['null'];
  if (Array.isArray(value)) return ['array'];
  if (typeof value === 'number') return Number.isInteger(value) ? ['number', 'integer'] : ['number'];
  return [typeof value];
}

function isMap(value: Json): value is Record<string, Json> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

/**
 * What a JSON Schema finds wrong with a value, for the keywords that ours uses; any other keyword
 * throws, so that the schema cannot outgrow its check. Knows nothing of the library that made it.
 */
export function schemaFaults(schema: Schema, value: Json, root: Schema = schema, at = '$'): string[] {
  const inside = (part: Json, item: Json, place = at): string[] =>
    schemaFaults(part as Schema, item, root, place);
  return Object.entries(schema).flatMap(([keyword, rule]): string[] => {
    if (silent.has(keyword)) return [];
    switch (keyword) {
      case 'type':
        return typeOf(value).some((type) => [rule].flat().includes(type))
          ? []
          : [`${at}: not ${([rule].flat() as string[]).join(' or ')}`];
      case 'enum':
        return (rule as Json[]).includes(value) ? [] : [`${at}: not one of the words`];
      case 'minimum':
        return typeof value === 'number' && value < (rule as number) ? [`${at}: too small`] : [];
      case 'maximum':
        return typeof value === 'number' && value > (rule as number) ? [`${at}: too large`] : [];
      case 'required':
        return isMap(value)
          ? (rule as string[]).filter((key) => !(key in value)).map((key) => `${at}: no ${key}`)
          : [];
      case 'properties':
        if (!isMap(value)) return [];
        return Object.entries(rule as Schema).flatMap(([key, part]) =>
          key in value ? inside(part, value[key], `${at}.${key}`) : [],
        );
      case 'additionalProperties': {
        if (!isMap(value)) return [];
        const known = Object.keys((schema['properties'] ?? {}) as Schema);
        const others = Object.entries(value).filter(([key]) => !known.includes(key));
        return others.flatMap(([key, item]) =>
          rule === false ? [`${at}: unknown key ${key}`] : inside(rule, item, `${at}.${key}`),
        );
      }
      case 'propertyNames':
        return isMap(value) ? Object.keys(value).flatMap((key) => inside(rule, key)) : [];
      case 'items':
        return Array.isArray(value)
          ? value.flatMap((item, index) => inside(rule, item, `${at}[${index}]`))
          : [];
      case 'anyOf': {
        const answers = (rule as Json[]).map((part) => inside(part, value));
        return answers.some((answer) => answer.length === 0) ? [] : (answers[0] ?? []);
      }
      case '$ref':
        return inside((root['definitions'] as Schema)[(rule as string).replace('#/definitions/', '')], value);
      case 'if':
        return inside((inside(rule, value).length === 0 ? schema['then'] : schema['else']) ?? {}, value);
      default:
        throw new Error(`the check of the schema does not know the keyword ${keyword}`);
    }
  });
}
