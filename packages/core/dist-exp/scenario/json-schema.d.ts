/**
 * JSON Schema (draft 2020-12) of a system file, for editors, made from the definitions that read it.
 * A file that includes another is held to the same keys and kinds, but need not be complete.
 */
export declare function scenarioJsonSchema(): Record<string, unknown>;
//# sourceMappingURL=json-schema.d.ts.map