import * as z from 'zod';
/** What a rule does: one verb. */
export declare const actionSchema: z.ZodObject<{
    stock: z.ZodOptional<z.ZodObject<{
        cohort: import("../file/values.js").Reads<string, string>;
        number: import("../file/values.js").Reads<number, number>;
        mass: import("../file/values.js").Reads<number, string>;
    }, z.core.$strict>>;
    'harvest-fish': z.ZodOptional<z.ZodObject<{
        cohort: import("../file/values.js").Reads<string, string>;
        share: z.ZodOptional<import("../file/values.js").Reads<number, string | number>>;
        number: z.ZodOptional<import("../file/values.js").Reads<number, number>>;
    }, z.core.$strict>>;
    'lose-fish': z.ZodOptional<z.ZodObject<{
        cohort: import("../file/values.js").Reads<string, string>;
        share: z.ZodOptional<import("../file/values.js").Reads<number, string | number>>;
        number: z.ZodOptional<import("../file/values.js").Reads<number, number>>;
    }, z.core.$strict>>;
    grade: z.ZodOptional<z.ZodObject<{
        cohort: import("../file/values.js").Reads<string, string>;
        to: import("../file/values.js").Reads<string, string>;
        share: import("../file/values.js").Reads<number, string | number>;
        'relative-mass': z.ZodOptional<import("../file/values.js").Reads<number, number>>;
    }, z.core.$strict>>;
    plant: z.ZodOptional<import("../file/values.js").Reads<string, string>>;
    'harvest-crop': z.ZodOptional<z.ZodObject<{
        planting: import("../file/values.js").Reads<string, string>;
        replant: z.ZodOptional<import("../file/values.js").Reads<boolean, boolean>>;
    }, z.core.$strict>>;
    'leave-empty': z.ZodOptional<import("../file/values.js").Reads<string, string>>;
    feed: z.ZodOptional<z.ZodObject<{
        cohort: import("../file/values.js").Reads<string, string>;
        ration: z.ZodOptional<import("../file/values.js").Reads<import("../supplies.js").Ration>>;
        feed: z.ZodOptional<import("../file/values.js").Reads<string, string>>;
        protein: z.ZodOptional<import("../file/values.js").Reads<number, string | number>>;
        factor: z.ZodOptional<import("../file/values.js").Reads<number, number>>;
    }, z.core.$strict>>;
    'top-up': z.ZodOptional<z.ZodUnion<readonly [z.ZodEnum<{
        stopped: "stopped";
        restored: "restored";
    }>, z.ZodObject<{
        cap: import("../file/values.js").Reads<import("./cap.js").Cap, string>;
    }, z.core.$strict>]>>;
    'source-water': z.ZodOptional<z.ZodObject<{
        water: import("../file/values.js").Reads<string, string>;
        to: import("../file/values.js").Reads<string, string>;
    }, z.core.$strict>>;
    'change-water': z.ZodOptional<z.ZodObject<{
        vessel: import("../file/values.js").Reads<string, string>;
        volume: z.ZodOptional<import("../file/values.js").Reads<number, string>>;
        share: z.ZodOptional<import("../file/values.js").Reads<number, string | number>>;
        water: import("../file/values.js").Reads<string, string>;
    }, z.core.$strict>>;
    'cart-water': z.ZodOptional<z.ZodObject<{
        volume: import("../file/values.js").Reads<number, string>;
        water: z.ZodOptional<import("../file/values.js").Reads<string, string>>;
        into: z.ZodOptional<import("../file/values.js").Reads<"rain-tank" | "reservoir", "rain-tank" | "reservoir">>;
    }, z.core.$strict>>;
    dose: z.ZodOptional<z.ZodObject<{
        into: import("../file/values.js").Reads<string, string>;
        product: import("../file/values.js").Reads<string, string>;
        mass: import("../file/values.js").Reads<number, string>;
    }, z.core.$strict>>;
    'pump-off': z.ZodOptional<import("../file/values.js").Reads<string, string>>;
    'pump-on': z.ZodOptional<import("../file/values.js").Reads<string, string>>;
    'air-off': z.ZodOptional<import("../file/values.js").Reads<string, string>>;
    'air-on': z.ZodOptional<import("../file/values.js").Reads<string, string>>;
    'control-off': z.ZodOptional<import("../file/values.js").Reads<string, string>>;
    'control-on': z.ZodOptional<import("../file/values.js").Reads<string, string>>;
    'power-cut': z.ZodOptional<import("../file/values.js").Reads<"all", "all">>;
    clean: z.ZodOptional<z.ZodObject<{
        vessel: import("../file/values.js").Reads<string, string>;
        biofilm: z.ZodOptional<import("../file/values.js").Reads<number, string | number>>;
        solids: z.ZodOptional<import("../file/values.js").Reads<number, string | number>>;
        stuns: z.ZodOptional<import("../file/values.js").Reads<number, string | number>>;
    }, z.core.$strict>>;
    medicate: z.ZodOptional<z.ZodObject<{
        vessel: import("../file/values.js").Reads<string, string>;
        kills: z.ZodOptional<import("../file/values.js").Reads<number, string | number>>;
        stuns: z.ZodOptional<import("../file/values.js").Reads<number, string | number>>;
    }, z.core.$strict>>;
    'drain-solids': z.ZodOptional<z.ZodObject<{
        vessel: import("../file/values.js").Reads<string, string>;
        share: import("../file/values.js").Reads<number, string | number>;
        water: z.ZodOptional<import("../file/values.js").Reads<number, string>>;
    }, z.core.$strict>>;
}, z.core.$strict>;
/** One action of `actions`: when, and one verb. */
export declare const timedActionSchema: z.ZodObject<{
    stock: z.ZodOptional<z.ZodObject<{
        cohort: import("../file/values.js").Reads<string, string>;
        number: import("../file/values.js").Reads<number, number>;
        mass: import("../file/values.js").Reads<number, string>;
    }, z.core.$strict>>;
    'harvest-fish': z.ZodOptional<z.ZodObject<{
        cohort: import("../file/values.js").Reads<string, string>;
        share: z.ZodOptional<import("../file/values.js").Reads<number, string | number>>;
        number: z.ZodOptional<import("../file/values.js").Reads<number, number>>;
    }, z.core.$strict>>;
    'lose-fish': z.ZodOptional<z.ZodObject<{
        cohort: import("../file/values.js").Reads<string, string>;
        share: z.ZodOptional<import("../file/values.js").Reads<number, string | number>>;
        number: z.ZodOptional<import("../file/values.js").Reads<number, number>>;
    }, z.core.$strict>>;
    grade: z.ZodOptional<z.ZodObject<{
        cohort: import("../file/values.js").Reads<string, string>;
        to: import("../file/values.js").Reads<string, string>;
        share: import("../file/values.js").Reads<number, string | number>;
        'relative-mass': z.ZodOptional<import("../file/values.js").Reads<number, number>>;
    }, z.core.$strict>>;
    plant: z.ZodOptional<import("../file/values.js").Reads<string, string>>;
    'harvest-crop': z.ZodOptional<z.ZodObject<{
        planting: import("../file/values.js").Reads<string, string>;
        replant: z.ZodOptional<import("../file/values.js").Reads<boolean, boolean>>;
    }, z.core.$strict>>;
    'leave-empty': z.ZodOptional<import("../file/values.js").Reads<string, string>>;
    feed: z.ZodOptional<z.ZodObject<{
        cohort: import("../file/values.js").Reads<string, string>;
        ration: z.ZodOptional<import("../file/values.js").Reads<import("../supplies.js").Ration>>;
        feed: z.ZodOptional<import("../file/values.js").Reads<string, string>>;
        protein: z.ZodOptional<import("../file/values.js").Reads<number, string | number>>;
        factor: z.ZodOptional<import("../file/values.js").Reads<number, number>>;
    }, z.core.$strict>>;
    'top-up': z.ZodOptional<z.ZodUnion<readonly [z.ZodEnum<{
        stopped: "stopped";
        restored: "restored";
    }>, z.ZodObject<{
        cap: import("../file/values.js").Reads<import("./cap.js").Cap, string>;
    }, z.core.$strict>]>>;
    'source-water': z.ZodOptional<z.ZodObject<{
        water: import("../file/values.js").Reads<string, string>;
        to: import("../file/values.js").Reads<string, string>;
    }, z.core.$strict>>;
    'change-water': z.ZodOptional<z.ZodObject<{
        vessel: import("../file/values.js").Reads<string, string>;
        volume: z.ZodOptional<import("../file/values.js").Reads<number, string>>;
        share: z.ZodOptional<import("../file/values.js").Reads<number, string | number>>;
        water: import("../file/values.js").Reads<string, string>;
    }, z.core.$strict>>;
    'cart-water': z.ZodOptional<z.ZodObject<{
        volume: import("../file/values.js").Reads<number, string>;
        water: z.ZodOptional<import("../file/values.js").Reads<string, string>>;
        into: z.ZodOptional<import("../file/values.js").Reads<"rain-tank" | "reservoir", "rain-tank" | "reservoir">>;
    }, z.core.$strict>>;
    dose: z.ZodOptional<z.ZodObject<{
        into: import("../file/values.js").Reads<string, string>;
        product: import("../file/values.js").Reads<string, string>;
        mass: import("../file/values.js").Reads<number, string>;
    }, z.core.$strict>>;
    'pump-off': z.ZodOptional<import("../file/values.js").Reads<string, string>>;
    'pump-on': z.ZodOptional<import("../file/values.js").Reads<string, string>>;
    'air-off': z.ZodOptional<import("../file/values.js").Reads<string, string>>;
    'air-on': z.ZodOptional<import("../file/values.js").Reads<string, string>>;
    'control-off': z.ZodOptional<import("../file/values.js").Reads<string, string>>;
    'control-on': z.ZodOptional<import("../file/values.js").Reads<string, string>>;
    'power-cut': z.ZodOptional<import("../file/values.js").Reads<"all", "all">>;
    clean: z.ZodOptional<z.ZodObject<{
        vessel: import("../file/values.js").Reads<string, string>;
        biofilm: z.ZodOptional<import("../file/values.js").Reads<number, string | number>>;
        solids: z.ZodOptional<import("../file/values.js").Reads<number, string | number>>;
        stuns: z.ZodOptional<import("../file/values.js").Reads<number, string | number>>;
    }, z.core.$strict>>;
    medicate: z.ZodOptional<z.ZodObject<{
        vessel: import("../file/values.js").Reads<string, string>;
        kills: z.ZodOptional<import("../file/values.js").Reads<number, string | number>>;
        stuns: z.ZodOptional<import("../file/values.js").Reads<number, string | number>>;
    }, z.core.$strict>>;
    'drain-solids': z.ZodOptional<z.ZodObject<{
        vessel: import("../file/values.js").Reads<string, string>;
        share: import("../file/values.js").Reads<number, string | number>;
        water: z.ZodOptional<import("../file/values.js").Reads<number, string>>;
    }, z.core.$strict>>;
    at: z.ZodOptional<import("../file/values.js").Reads<import("./times.js").When, string>>;
    from: z.ZodOptional<import("../file/values.js").Reads<import("./times.js").When, string>>;
    until: z.ZodOptional<import("../file/values.js").Reads<import("./times.js").When, string>>;
    for: z.ZodOptional<import("../file/values.js").Reads<number, string>>;
    every: z.ZodOptional<import("../file/values.js").Reads<number, string>>;
}, z.core.$strict>;
/** One plan of `dosing`. */
export declare const dosingSchema: z.ZodObject<{
    at: z.ZodOptional<import("../file/values.js").Reads<import("./times.js").When, string>>;
    every: z.ZodOptional<import("../file/values.js").Reads<number, string>>;
    until: z.ZodOptional<import("../file/values.js").Reads<import("./times.js").When, string>>;
    into: import("../file/values.js").Reads<string, string>;
    product: import("../file/values.js").Reads<string, string>;
    mass: import("../file/values.js").Reads<number, string>;
}, z.core.$strict>;
/** One plan of `drain-solids`. */
export declare const drainPlanSchema: z.ZodObject<{
    at: z.ZodOptional<import("../file/values.js").Reads<import("./times.js").When, string>>;
    every: z.ZodOptional<import("../file/values.js").Reads<number, string>>;
    until: z.ZodOptional<import("../file/values.js").Reads<import("./times.js").When, string>>;
    vessel: import("../file/values.js").Reads<string, string>;
    share: import("../file/values.js").Reads<number, string | number>;
    water: z.ZodOptional<import("../file/values.js").Reads<number, string>>;
}, z.core.$strict>;
//# sourceMappingURL=action-schema.d.ts.map