import type { TableRow } from './table-row.js';
/** What the tables have subjects of; the first part of an id such as `fish.nile-tilapia.body-nitrogen`. */
export type SubjectGroup = 'fish' | 'crop' | 'feed' | 'media' | 'dose' | 'water' | 'aerator' | 'lime' | 'limit';
/**
 * The subjects of a group in the order of the tables: `names('feed')` is `['grower-32', ...]`. Of our tables, or
 * of the rows given (those of a scenario hold what the user added).
 */
export declare function names(group: SubjectGroup, rows?: Iterable<TableRow>): string[];
//# sourceMappingURL=names.d.ts.map