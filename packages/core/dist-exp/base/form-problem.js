/**
 * What is wrong with the form that a saved document says it has, or nothing where it is the one that is read.
 * @param document what the file holds
 * @param schema the name of the form that is read, such as `leat-state`
 * @param version the version of it that is read
 */
export function formProblem(document, schema, version) {
    const expected = `schema ${schema}, version ${version}`;
    const held = typeof document === 'object' && document !== null ? { ...document } : {};
    const { schema: named, version: written } = held;
    if (named === undefined)
        return { problem: 'the file does not say its schema', expected };
    if (named !== schema)
        return { problem: `schema ${JSON.stringify(named)} is another kind of file`, expected };
    if (written === version)
        return undefined;
    if (typeof written !== 'number')
        return {
            problem: `the version of the schema is no number: ${JSON.stringify(written) ?? 'none'}`,
            expected,
        };
    const by = written > version ? 'a later' : 'an earlier';
    return { problem: `version ${written} of ${schema}, written by ${by} leat`, expected };
}
//# sourceMappingURL=form-problem.js.map