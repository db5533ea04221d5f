import * as z from 'zod';
import { type Override } from '../../library/override.js';
import type { TableRow } from '../../library/table-row.js';
import { type Reader } from '../file/reader.js';
import type { Path } from '../file/tree.js';
/** A species, crop ... of one's own that is like one of the tables but for a few numbers. */
export declare const likenessSchema: z.ZodObject<{
    like: import("../file/values.js").Reads<string, string>;
}, z.core.$catchall<z.ZodUnion<readonly [import("../file/values.js").Reads<number, number>, z.ZodObject<{
    value: import("../file/values.js").Reads<number, number>;
    low: z.ZodOptional<import("../file/values.js").Reads<number, number>>;
    high: z.ZodOptional<import("../file/values.js").Reads<number, number>>;
}, z.core.$strict>]>>>;
/** The overrides that make a subject `id`, such as `crop.tatsoi`, from another; each goes into `rows`. Faults where it cannot be. */
export declare function readLikeness(reader: Reader, path: Path, id: string, rows: Map<string, TableRow>): readonly Override[];
//# sourceMappingURL=likeness.d.ts.map