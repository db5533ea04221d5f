/** How a number varies: low..high is 90 % of normal and lognormal, a hard bound of the others. */
export declare const distributions: readonly ["fixed", "uniform", "triangular", "normal", "lognormal"];
/** One of `distributions`. */
export type Distribution = (typeof distributions)[number];
/** How a number came here, each mark in words; U is never in a table of ours. */
export declare const marks: {
    readonly R: "read in the publication";
    readonly S: "second-hand: read in another work that cites it";
    readonly C: "computed from it";
    readonly M: "from memory of it";
    readonly W: "from memory, digits uncertain";
    readonly P: "common practice";
    readonly U: "given by the user";
};
/** One of `marks`. */
export type Mark = keyof typeof marks;
/** One number of the science with all that is known of it. */
export interface TableRow {
    /** Table it stands in, such as `fish`. */
    readonly table: string;
    readonly id: string;
    /** In the internal unit named by `unit`. */
    readonly value: number;
    readonly unit: string;
    /** Lower end of the range, in the same unit: 5 % of a normal or lognormal number lies below, of others none. */
    readonly low: number;
    /** Upper end, likewise. */
    readonly high: number;
    readonly distribution: Distribution;
    /** What it holds for, where the user said it; of a row of ours `conditionsOf` tells. */
    readonly conditions?: string;
    /** Key in the table of sources. */
    readonly source: string;
    readonly page: string;
    readonly mark: Mark;
    /** Where the user gave it, such as `my-numbers.tsv:3`; absent: a row of ours. */
    readonly given?: string;
}
/** Every row of our tables, column by column. */
export type TableColumns = {
    readonly [Name in Exclude<keyof TableRow, 'given' | 'conditions'>]: readonly TableRow[Name][];
};
/** The cells of a source: key, citation, year, DOI or `none`, note. */
export type SourceCells = readonly [key: string, citation: string, year: string, doi: string, note: string];
/** The cells of a correlation: the two ids, the rank correlation, conditions, source, page, mark. */
export type CorrelationCells = readonly [
    a: string,
    b: string,
    rank: number,
    conditions: string,
    source: string,
    page: string,
    mark: Mark
];
/** The table in which the subjects of a group stand. */
export declare const tableOf: {
    readonly fish: "fish";
    readonly crop: "crops";
    readonly media: "media";
    readonly feed: "feeds";
    readonly dose: "dosing";
    readonly water: "waters";
    readonly aerator: "aerators";
    readonly lime: "lime";
};
//# sourceMappingURL=table-row.d.ts.map