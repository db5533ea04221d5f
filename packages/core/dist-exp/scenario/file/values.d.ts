import * as z from 'zod';
import { type NumberBound, type QuantityBound, type ShareBound } from '../../base/bounds.js';
import { type Dimension } from '../../base/units.js';
/** A schema that reads `In` as written in a file and gives `Out` in internal units. */
export type Reads<Out, In = unknown> = z.ZodType<Out, In>;
/** The usual complaint about what should be a quantity: a bare number lacks its unit. */
export declare function quantityComplaint(input: unknown, expected: string): string;
/** A description without its range and default, as messages say it. */
export declare function described(description: string): string;
/** A written quantity such as `"450 L"`, read into the internal unit of its dimension. Only temperatures go below 0. */
export declare function quantity(dimension: Dimension, description: string): Reads<number, string>;
/** A quantity that must be more than zero. */
export declare function positive(dimension: Dimension, description: string): Reads<number, string>;
/** A share: `0.6` or `"60 %"`. `below` leaves out 1 itself. */
export declare function share(description: string, upTo?: ShareBound['upTo']): Reads<number, string | number>;
/** A plain number between two bounds, both allowed. */
export declare function number(description: string, low: number, high: number): Reads<number, number>;
/** A whole number of things. */
export declare function count(description: string, low: number, high: number): Reads<number, number>;
/** What a number may be, as a schema of how it is written in a file. */
export declare function bounded(bound: QuantityBound, description: string): Reads<number, string>;
export declare function bounded(bound: ShareBound, description: string): Reads<number, string | number>;
export declare function bounded(bound: NumberBound, description: string): Reads<number, number>;
/** Words: a name used here, a title, a file. */
export declare function word(description: string): Reads<string, string>;
/** `true` or `false`. */
export declare function truth(description: string): Reads<boolean, boolean>;
/** One of a few words. */
export declare function choice<const Options extends readonly [string, ...string[]]>(description: string, options: Options): Reads<Options[number], Options[number]>;
/** A map of known keys; any other key is a fault that lists them. */
export declare function section<Shape extends z.core.$ZodShape>(shape: Shape, description: string): z.ZodObject<Shape, z.core.$strict>;
/** A calendar date `yyyy-mm-dd`. */
export declare function date(description: string): Reads<string, string>;
/**
 * A value that may be written in one of two forms: a map with a certain key or one of several, or anything else.
 * Faults are those of the form that the key tells.
 */
export declare function formByKey<Keyed, Other>(key: string | readonly string[], keyed: Reads<Keyed>, other: Reads<Other>): Reads<Keyed | Other>;
//# sourceMappingURL=values.d.ts.map