import type { ScenarioReader } from './scenario-reader.js';
import type { Rule } from '../scenario.js';
import type { Cast } from '../checks/actions.js';
import { type Level } from './level.js';
/** One rule of `rules`: a reading, and what is done about it. */
export declare const ruleSchema: import("zod").ZodObject<{
    when: import("zod").ZodObject<{
        read: import("../file/values.js").Reads<"pH" | "ammonia" | "nitrite" | "nitrate" | "alkalinity" | "oxygen" | "temperature" | "chloride" | "volume", "pH" | "ammonia" | "nitrite" | "nitrate" | "alkalinity" | "oxygen" | "temperature" | "chloride" | "volume">;
        in: import("../file/values.js").Reads<string, string>;
        above: import("zod").ZodOptional<import("../file/values.js").Reads<Level, Level>>;
        below: import("zod").ZodOptional<import("../file/values.js").Reads<Level, Level>>;
        until: import("zod").ZodOptional<import("../file/values.js").Reads<Level, Level>>;
    }, import("zod/v4/core").$strict>;
    kit: import("zod").ZodOptional<import("zod").ZodObject<{
        resolution: import("zod").ZodOptional<import("../file/values.js").Reads<Level, Level>>;
        error: import("zod").ZodOptional<import("../file/values.js").Reads<Level, Level>>;
        every: import("zod").ZodOptional<import("../file/values.js").Reads<number, string>>;
    }, import("zod/v4/core").$strict>>;
    do: import("zod").ZodObject<{
        stock: import("zod").ZodOptional<import("zod").ZodObject<{
            cohort: import("../file/values.js").Reads<string, string>;
            number: import("../file/values.js").Reads<number, number>;
            mass: import("../file/values.js").Reads<number, string>;
        }, import("zod/v4/core").$strict>>;
        'harvest-fish': import("zod").ZodOptional<import("zod").ZodObject<{
            cohort: import("../file/values.js").Reads<string, string>;
            share: import("zod").ZodOptional<import("../file/values.js").Reads<number, string | number>>;
            number: import("zod").ZodOptional<import("../file/values.js").Reads<number, number>>;
        }, import("zod/v4/core").$strict>>;
        'lose-fish': import("zod").ZodOptional<import("zod").ZodObject<{
            cohort: import("../file/values.js").Reads<string, string>;
            share: import("zod").ZodOptional<import("../file/values.js").Reads<number, string | number>>;
            number: import("zod").ZodOptional<import("../file/values.js").Reads<number, number>>;
        }, import("zod/v4/core").$strict>>;
        grade: import("zod").ZodOptional<import("zod").ZodObject<{
            cohort: import("../file/values.js").Reads<string, string>;
            to: import("../file/values.js").Reads<string, string>;
            share: import("../file/values.js").Reads<number, string | number>;
            'relative-mass': import("zod").ZodOptional<import("../file/values.js").Reads<number, number>>;
        }, import("zod/v4/core").$strict>>;
        plant: import("zod").ZodOptional<import("../file/values.js").Reads<string, string>>;
        'harvest-crop': import("zod").ZodOptional<import("zod").ZodObject<{
            planting: import("../file/values.js").Reads<string, string>;
            replant: import("zod").ZodOptional<import("../file/values.js").Reads<boolean, boolean>>;
        }, import("zod/v4/core").$strict>>;
        'leave-empty': import("zod").ZodOptional<import("../file/values.js").Reads<string, string>>;
        feed: import("zod").ZodOptional<import("zod").ZodObject<{
            cohort: import("../file/values.js").Reads<string, string>;
            ration: import("zod").ZodOptional<import("../file/values.js").Reads<import("../supplies.js").Ration>>;
            feed: import("zod").ZodOptional<import("../file/values.js").Reads<string, string>>;
            protein: import("zod").ZodOptional<import("../file/values.js").Reads<number, string | number>>;
            factor: import("zod").ZodOptional<import("../file/values.js").Reads<number, number>>;
        }, import("zod/v4/core").$strict>>;
        'top-up': import("zod").ZodOptional<import("zod").ZodUnion<readonly [import("zod").ZodEnum<{
            stopped: "stopped";
            restored: "restored";
        }>, import("zod").ZodObject<{
            cap: import("../file/values.js").Reads<import("./cap.js").Cap, string>;
        }, import("zod/v4/core").$strict>]>>;
        'source-water': import("zod").ZodOptional<import("zod").ZodObject<{
            water: import("../file/values.js").Reads<string, string>;
            to: import("../file/values.js").Reads<string, string>;
        }, import("zod/v4/core").$strict>>;
        'change-water': import("zod").ZodOptional<import("zod").ZodObject<{
            vessel: import("../file/values.js").Reads<string, string>;
            volume: import("zod").ZodOptional<import("../file/values.js").Reads<number, string>>;
            share: import("zod").ZodOptional<import("../file/values.js").Reads<number, string | number>>;
            water: import("../file/values.js").Reads<string, string>;
        }, import("zod/v4/core").$strict>>;
        'cart-water': import("zod").ZodOptional<import("zod").ZodObject<{
            volume: import("../file/values.js").Reads<number, string>;
            water: import("zod").ZodOptional<import("../file/values.js").Reads<string, string>>;
            into: import("zod").ZodOptional<import("../file/values.js").Reads<"rain-tank" | "reservoir", "rain-tank" | "reservoir">>;
        }, import("zod/v4/core").$strict>>;
        dose: import("zod").ZodOptional<import("zod").ZodObject<{
            into: import("../file/values.js").Reads<string, string>;
            product: import("../file/values.js").Reads<string, string>;
            mass: import("../file/values.js").Reads<number, string>;
        }, import("zod/v4/core").$strict>>;
        'pump-off': import("zod").ZodOptional<import("../file/values.js").Reads<string, string>>;
        'pump-on': import("zod").ZodOptional<import("../file/values.js").Reads<string, string>>;
        'air-off': import("zod").ZodOptional<import("../file/values.js").Reads<string, string>>;
        'air-on': import("zod").ZodOptional<import("../file/values.js").Reads<string, string>>;
        'control-off': import("zod").ZodOptional<import("../file/values.js").Reads<string, string>>;
        'control-on': import("zod").ZodOptional<import("../file/values.js").Reads<string, string>>;
        'power-cut': import("zod").ZodOptional<import("../file/values.js").Reads<"all", "all">>;
        clean: import("zod").ZodOptional<import("zod").ZodObject<{
            vessel: import("../file/values.js").Reads<string, string>;
            biofilm: import("zod").ZodOptional<import("../file/values.js").Reads<number, string | number>>;
            solids: import("zod").ZodOptional<import("../file/values.js").Reads<number, string | number>>;
            stuns: import("zod").ZodOptional<import("../file/values.js").Reads<number, string | number>>;
        }, import("zod/v4/core").$strict>>;
        medicate: import("zod").ZodOptional<import("zod").ZodObject<{
            vessel: import("../file/values.js").Reads<string, string>;
            kills: import("zod").ZodOptional<import("../file/values.js").Reads<number, string | number>>;
            stuns: import("zod").ZodOptional<import("../file/values.js").Reads<number, string | number>>;
        }, import("zod/v4/core").$strict>>;
        'drain-solids': import("zod").ZodOptional<import("zod").ZodObject<{
            vessel: import("../file/values.js").Reads<string, string>;
            share: import("../file/values.js").Reads<number, string | number>;
            water: import("zod").ZodOptional<import("../file/values.js").Reads<number, string>>;
        }, import("zod/v4/core").$strict>>;
    }, import("zod/v4/core").$strict>;
    undo: import("zod").ZodOptional<import("zod").ZodObject<{
        stock: import("zod").ZodOptional<import("zod").ZodObject<{
            cohort: import("../file/values.js").Reads<string, string>;
            number: import("../file/values.js").Reads<number, number>;
            mass: import("../file/values.js").Reads<number, string>;
        }, import("zod/v4/core").$strict>>;
        'harvest-fish': import("zod").ZodOptional<import("zod").ZodObject<{
            cohort: import("../file/values.js").Reads<string, string>;
            share: import("zod").ZodOptional<import("../file/values.js").Reads<number, string | number>>;
            number: import("zod").ZodOptional<import("../file/values.js").Reads<number, number>>;
        }, import("zod/v4/core").$strict>>;
        'lose-fish': import("zod").ZodOptional<import("zod").ZodObject<{
            cohort: import("../file/values.js").Reads<string, string>;
            share: import("zod").ZodOptional<import("../file/values.js").Reads<number, string | number>>;
            number: import("zod").ZodOptional<import("../file/values.js").Reads<number, number>>;
        }, import("zod/v4/core").$strict>>;
        grade: import("zod").ZodOptional<import("zod").ZodObject<{
            cohort: import("../file/values.js").Reads<string, string>;
            to: import("../file/values.js").Reads<string, string>;
            share: import("../file/values.js").Reads<number, string | number>;
            'relative-mass': import("zod").ZodOptional<import("../file/values.js").Reads<number, number>>;
        }, import("zod/v4/core").$strict>>;
        plant: import("zod").ZodOptional<import("../file/values.js").Reads<string, string>>;
        'harvest-crop': import("zod").ZodOptional<import("zod").ZodObject<{
            planting: import("../file/values.js").Reads<string, string>;
            replant: import("zod").ZodOptional<import("../file/values.js").Reads<boolean, boolean>>;
        }, import("zod/v4/core").$strict>>;
        'leave-empty': import("zod").ZodOptional<import("../file/values.js").Reads<string, string>>;
        feed: import("zod").ZodOptional<import("zod").ZodObject<{
            cohort: import("../file/values.js").Reads<string, string>;
            ration: import("zod").ZodOptional<import("../file/values.js").Reads<import("../supplies.js").Ration>>;
            feed: import("zod").ZodOptional<import("../file/values.js").Reads<string, string>>;
            protein: import("zod").ZodOptional<import("../file/values.js").Reads<number, string | number>>;
            factor: import("zod").ZodOptional<import("../file/values.js").Reads<number, number>>;
        }, import("zod/v4/core").$strict>>;
        'top-up': import("zod").ZodOptional<import("zod").ZodUnion<readonly [import("zod").ZodEnum<{
            stopped: "stopped";
            restored: "restored";
        }>, import("zod").ZodObject<{
            cap: import("../file/values.js").Reads<import("./cap.js").Cap, string>;
        }, import("zod/v4/core").$strict>]>>;
        'source-water': import("zod").ZodOptional<import("zod").ZodObject<{
            water: import("../file/values.js").Reads<string, string>;
            to: import("../file/values.js").Reads<string, string>;
        }, import("zod/v4/core").$strict>>;
        'change-water': import("zod").ZodOptional<import("zod").ZodObject<{
            vessel: import("../file/values.js").Reads<string, string>;
            volume: import("zod").ZodOptional<import("../file/values.js").Reads<number, string>>;
            share: import("zod").ZodOptional<import("../file/values.js").Reads<number, string | number>>;
            water: import("../file/values.js").Reads<string, string>;
        }, import("zod/v4/core").$strict>>;
        'cart-water': import("zod").ZodOptional<import("zod").ZodObject<{
            volume: import("../file/values.js").Reads<number, string>;
            water: import("zod").ZodOptional<import("../file/values.js").Reads<string, string>>;
            into: import("zod").ZodOptional<import("../file/values.js").Reads<"rain-tank" | "reservoir", "rain-tank" | "reservoir">>;
        }, import("zod/v4/core").$strict>>;
        dose: import("zod").ZodOptional<import("zod").ZodObject<{
            into: import("../file/values.js").Reads<string, string>;
            product: import("../file/values.js").Reads<string, string>;
            mass: import("../file/values.js").Reads<number, string>;
        }, import("zod/v4/core").$strict>>;
        'pump-off': import("zod").ZodOptional<import("../file/values.js").Reads<string, string>>;
        'pump-on': import("zod").ZodOptional<import("../file/values.js").Reads<string, string>>;
        'air-off': import("zod").ZodOptional<import("../file/values.js").Reads<string, string>>;
        'air-on': import("zod").ZodOptional<import("../file/values.js").Reads<string, string>>;
        'control-off': import("zod").ZodOptional<import("../file/values.js").Reads<string, string>>;
        'control-on': import("zod").ZodOptional<import("../file/values.js").Reads<string, string>>;
        'power-cut': import("zod").ZodOptional<import("../file/values.js").Reads<"all", "all">>;
        clean: import("zod").ZodOptional<import("zod").ZodObject<{
            vessel: import("../file/values.js").Reads<string, string>;
            biofilm: import("zod").ZodOptional<import("../file/values.js").Reads<number, string | number>>;
            solids: import("zod").ZodOptional<import("../file/values.js").Reads<number, string | number>>;
            stuns: import("zod").ZodOptional<import("../file/values.js").Reads<number, string | number>>;
        }, import("zod/v4/core").$strict>>;
        medicate: import("zod").ZodOptional<import("zod").ZodObject<{
            vessel: import("../file/values.js").Reads<string, string>;
            kills: import("zod").ZodOptional<import("../file/values.js").Reads<number, string | number>>;
            stuns: import("zod").ZodOptional<import("../file/values.js").Reads<number, string | number>>;
        }, import("zod/v4/core").$strict>>;
        'drain-solids': import("zod").ZodOptional<import("zod").ZodObject<{
            vessel: import("../file/values.js").Reads<string, string>;
            share: import("../file/values.js").Reads<number, string | number>;
            water: import("zod").ZodOptional<import("../file/values.js").Reads<number, string>>;
        }, import("zod/v4/core").$strict>>;
    }, import("zod/v4/core").$strict>>;
    wait: import("zod").ZodOptional<import("../file/values.js").Reads<number, string>>;
    most: import("zod").ZodOptional<import("../file/values.js").Reads<number, number>>;
}, import("zod/v4/core").$strict>;
/** Reads `rules`, in the order of the file: what is done when a reading passes a level. */
export declare function readRules(reader: ScenarioReader, cast: Cast): Rule[];
//# sourceMappingURL=rules.d.ts.map