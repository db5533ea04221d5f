import { type SubjectGroup } from './names.js';
/** Groups that a user may add subjects to: a species, a crop, a medium ... */
export type OpenGroup = Exclude<SubjectGroup, 'limit'>;
/** The properties of a group: those the model reads, which every subject must have, and those kept for reading. */
interface Properties {
    readonly needed: readonly string[];
    readonly further: readonly string[];
    /** Those that a subject has all or none of: the fruit of a crop. */
    readonly together?: readonly string[];
}
/** What each kind of subject has. A test holds this against what the code reads and what the tables hold. */
export declare const properties: Readonly<Record<OpenGroup, Properties>>;
/** Whether a word names a group that a user may add to. */
export declare function isOpenGroup(word: string): word is OpenGroup;
/** What a property of a group is counted in, and between which values our subjects have it. */
export interface PropertyForm {
    readonly unit: string;
    readonly low: number;
    readonly high: number;
}
/** The form of a property, from all our subjects that have it. Throws RangeError when none has. */
export declare function formOf(group: OpenGroup, property: string): PropertyForm;
export {};
//# sourceMappingURL=properties.d.ts.map