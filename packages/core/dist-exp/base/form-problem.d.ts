/** What is wrong with the form of a saved document, as a fault tells it. */
export interface FormProblem {
    readonly problem: string;
    readonly expected: string;
}
/**
 * What is wrong with the form that a saved document says it has, or nothing where it is the one that is read.
 * @param document what the file holds
 * @param schema the name of the form that is read, such as `leat-state`
 * @param version the version of it that is read
 */
export declare function formProblem(document: unknown, schema: string, version: number): FormProblem | undefined;
//# sourceMappingURL=form-problem.d.ts.map