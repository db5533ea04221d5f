import * as z from 'zod';
/** A whole file. Sections are read one entry at a time, so that one fault hides no other. */
export declare const fileSchema: z.ZodObject<{
    climate: z.ZodObject<{
        'water-temperature': z.ZodOptional<import("../file/values.js").Reads<import("./daily.js").DailyGiven | {
            follows: "air";
            lag: number;
            start?: number | undefined;
        }>>;
        'air-temperature': z.ZodOptional<import("../file/values.js").Reads<import("./daily.js").DailyGiven>>;
        'carbon-dioxide': z.ZodOptional<import("../file/values.js").Reads<import("./daily.js").DailyGiven>>;
        light: z.ZodOptional<import("../file/values.js").Reads<import("./daily.js").DailyGiven | {
            cover?: number | undefined;
            shade?: import("./daily.js").DailyGiven | undefined;
            lamps?: {
                hours: import("./daily.js").DailyGiven;
                level: import("./daily.js").DailyGiven;
            } | undefined;
            outdoors?: import("./daily.js").DailyGiven | undefined;
            radiation?: import("./daily.js").DailyGiven | undefined;
            latitude?: number | undefined;
            sunshine?: import("./daily.js").DailyGiven | undefined;
        }>>;
        altitude: z.ZodOptional<import("../file/values.js").Reads<number, string>>;
        et0: import("../file/values.js").Reads<import("./daily.js").DailyGiven | {
            weather: string;
            latitude: number;
            columns: {
                high: import("./weather.js").ColumnGiven;
                low: import("./weather.js").ColumnGiven;
                'dew-point'?: import("./weather.js").ColumnGiven | undefined;
                'humidity-high'?: import("./weather.js").ColumnGiven | undefined;
                'humidity-low'?: import("./weather.js").ColumnGiven | undefined;
                humidity?: import("./weather.js").ColumnGiven | undefined;
                radiation?: import("./weather.js").ColumnGiven | undefined;
                sunshine?: import("./weather.js").ColumnGiven | undefined;
                wind?: import("./weather.js").ColumnGiven | undefined;
            };
            method?: "penman-monteith" | "hargreaves" | undefined;
            altitude?: number | undefined;
            coastal?: boolean | undefined;
            'wind-height'?: number | undefined;
        }, unknown>;
        'greenhouse-factor': z.ZodOptional<import("../file/values.js").Reads<number, string | number>>;
    }, z.core.$strict>;
    waters: z.ZodOptional<z.ZodRecord<z.ZodString, z.ZodObject<{
        like: z.ZodOptional<import("../file/values.js").Reads<string, string>>;
        ammonia: z.ZodOptional<import("../file/values.js").Reads<number, string>>;
        nitrite: z.ZodOptional<import("../file/values.js").Reads<number, string>>;
        nitrate: z.ZodOptional<import("../file/values.js").Reads<number, string>>;
        alkalinity: z.ZodOptional<import("../file/values.js").Reads<number, string>>;
        pH: z.ZodOptional<import("../file/values.js").Reads<number, number>>;
        oxygen: z.ZodOptional<import("../file/values.js").Reads<number, string>>;
        chloride: z.ZodOptional<import("../file/values.js").Reads<number, string>>;
        calcium: z.ZodOptional<import("../file/values.js").Reads<number, string>>;
    }, z.core.$strict>>>;
    vessels: z.ZodRecord<z.ZodString, z.ZodObject<{
        kind: import("../file/values.js").Reads<"fish-tank" | "settler" | "screen" | "biofilter" | "media-bed" | "raft-bed" | "channel" | "sump" | "vessel", "fish-tank" | "settler" | "screen" | "biofilter" | "media-bed" | "raft-bed" | "channel" | "sump" | "vessel">;
        volume: import("../file/values.js").Reads<number, string>;
        area: z.ZodOptional<import("../file/values.js").Reads<number, string>>;
        media: z.ZodOptional<z.ZodObject<{
            type: import("../file/values.js").Reads<string, string>;
            volume: import("../file/values.js").Reads<number, string>;
        }, z.core.$strict>>;
        surface: z.ZodOptional<import("../file/values.js").Reads<number, string>>;
        floor: z.ZodOptional<import("../file/values.js").Reads<number, string>>;
        open: z.ZodOptional<import("../file/values.js").Reads<number, string>>;
        covered: z.ZodOptional<import("../file/values.js").Reads<number, string>>;
        aeration: z.ZodOptional<z.ZodUnion<readonly [import("../file/values.js").Reads<number>, z.ZodObject<{
            rate: import("../file/values.js").Reads<number>;
            device: z.ZodOptional<import("../file/values.js").Reads<string, string>>;
        }, z.core.$strict>]>>;
        capture: z.ZodOptional<import("../file/values.js").Reads<number, string | number>>;
        temperature: z.ZodOptional<import("../file/values.js").Reads<import("./daily.js").DailyGiven | {
            follows: "air";
            lag: number;
            start?: number | undefined;
        }>>;
        leak: z.ZodOptional<import("../file/values.js").Reads<number, string>>;
        exchange: z.ZodOptional<import("../file/values.js").Reads<number, string>>;
        drain: z.ZodOptional<z.ZodObject<{
            rate: import("../file/values.js").Reads<number, string>;
            to: import("../file/values.js").Reads<number, string>;
        }, z.core.$strict>>;
        flood: z.ZodOptional<z.ZodObject<{
            drained: import("../file/values.js").Reads<number, string>;
            cycles: import("../file/values.js").Reads<number, string>;
        }, z.core.$strict>>;
        lime: z.ZodOptional<z.ZodObject<{
            kind: import("../file/values.js").Reads<string, string>;
            mass: import("../file/values.js").Reads<number, string>;
        }, z.core.$strict>>;
    }, z.core.$strict>>;
    pumps: z.ZodOptional<z.ZodRecord<z.ZodString, z.ZodObject<{
        timer: z.ZodOptional<z.ZodObject<{
            on: import("../file/values.js").Reads<number, string>;
            off: import("../file/values.js").Reads<number, string>;
            offset: z.ZodOptional<import("../file/values.js").Reads<number, string>>;
        }, z.core.$strict>>;
        inlet: z.ZodOptional<import("../file/values.js").Reads<number, string>>;
        restart: z.ZodOptional<import("../file/values.js").Reads<number, string>>;
    }, z.core.$strict>>>;
    flows: z.ZodOptional<z.ZodArray<z.ZodObject<{
        from: import("../file/values.js").Reads<string, string>;
        to: import("../file/values.js").Reads<string, string>;
        pump: z.ZodOptional<import("../file/values.js").Reads<string, string>>;
        rate: z.ZodOptional<import("../file/values.js").Reads<number, string>>;
        share: z.ZodOptional<import("../file/values.js").Reads<number, string | number>>;
    }, z.core.$strict>>>;
    'top-up': z.ZodOptional<z.ZodObject<{
        level: import("../file/values.js").Reads<number, string>;
        rate: import("../file/values.js").Reads<number, string>;
        from: z.ZodArray<z.ZodUnion<readonly [import("../file/values.js").Reads<string, string>, z.ZodObject<{
            water: import("../file/values.js").Reads<string, string>;
            cap: z.ZodOptional<import("../file/values.js").Reads<import("./cap.js").Cap, string>>;
        }, z.core.$strict>]>>;
    }, z.core.$strict>>;
    'rain-tank': z.ZodOptional<z.ZodObject<{
        capacity: import("../file/values.js").Reads<number, string>;
        volume: import("../file/values.js").Reads<number, string>;
        roof: import("../file/values.js").Reads<number, string>;
        runoff: z.ZodOptional<import("../file/values.js").Reads<number, string | number>>;
        rain: import("../file/values.js").Reads<import("./daily.js").DailyGiven>;
        water: import("../file/values.js").Reads<string, string>;
    }, z.core.$strict>>;
    fish: z.ZodOptional<z.ZodRecord<z.ZodString, z.ZodObject<{
        in: import("../file/values.js").Reads<string, string>;
        species: import("../file/values.js").Reads<string, string>;
        number: import("../file/values.js").Reads<number, number>;
        mass: import("../file/values.js").Reads<number, string>;
        ration: import("../file/values.js").Reads<import("../supplies.js").Ration>;
        feed: z.ZodOptional<import("../file/values.js").Reads<string, string>>;
        protein: z.ZodOptional<import("../file/values.js").Reads<number, string | number>>;
        'feed-conversion': z.ZodOptional<import("../file/values.js").Reads<number, number>>;
        dead: z.ZodOptional<import("../file/values.js").Reads<"left", "left">>;
        hours: z.ZodOptional<z.ZodPipe<z.ZodString, z.ZodTransform<{
            from: number;
            to: number;
        }, string>>>;
    }, z.core.$strict>>>;
    plantings: z.ZodOptional<z.ZodRecord<z.ZodString, z.ZodObject<{
        picks: z.ZodOptional<import("../file/values.js").Reads<number, string>>;
        cut: z.ZodOptional<z.ZodObject<{
            every: import("../file/values.js").Reads<number, string>;
            leave: z.ZodOptional<import("../file/values.js").Reads<number, string | number>>;
        }, z.core.$strict>>;
        seedling: z.ZodOptional<import("../file/values.js").Reads<number, string>>;
        light: z.ZodOptional<import("../file/values.js").Reads<import("./daily.js").DailyGiven | {
            cover?: number | undefined;
            shade?: import("./daily.js").DailyGiven | undefined;
            lamps?: {
                hours: import("./daily.js").DailyGiven;
                level: import("./daily.js").DailyGiven;
            } | undefined;
        }>>;
        after: z.ZodOptional<import("../file/values.js").Reads<"replant" | "empty", "replant" | "empty">>;
        start: z.ZodOptional<import("../file/values.js").Reads<"empty" | "staggered" | "new", "empty" | "staggered" | "new">>;
        age: z.ZodOptional<import("../file/values.js").Reads<number, string>>;
        from: z.ZodOptional<import("../file/values.js").Reads<import("./times.js").When, string>>;
        until: z.ZodOptional<import("../file/values.js").Reads<import("./times.js").When, string>>;
        in: import("../file/values.js").Reads<string, string>;
        crop: import("../file/values.js").Reads<string, string>;
        area: import("../file/values.js").Reads<number, string>;
        cover: z.ZodOptional<import("../file/values.js").Reads<number, string | number>>;
        batches: z.ZodOptional<import("../file/values.js").Reads<number, number>>;
        harvest: z.ZodOptional<import("../file/values.js").Reads<number, string>>;
    }, z.core.$strict>>>;
    dosing: z.ZodOptional<z.ZodArray<z.ZodObject<{
        at: z.ZodOptional<import("../file/values.js").Reads<import("./times.js").When, string>>;
        every: z.ZodOptional<import("../file/values.js").Reads<number, string>>;
        until: z.ZodOptional<import("../file/values.js").Reads<import("./times.js").When, string>>;
        into: import("../file/values.js").Reads<string, string>;
        product: import("../file/values.js").Reads<string, string>;
        mass: import("../file/values.js").Reads<number, string>;
    }, z.core.$strict>>>;
    control: z.ZodOptional<z.ZodArray<z.ZodObject<{
        hold: import("../file/values.js").Reads<"pH" | "alkalinity", "pH" | "alkalinity">;
        in: import("../file/values.js").Reads<string, string>;
        probe: z.ZodOptional<import("../file/values.js").Reads<string, string>>;
        at: import("../file/values.js").Reads<import("./level.js").Level, import("./level.js").Level>;
        with: z.ZodUnion<readonly [z.ZodString, z.ZodArray<z.ZodString>]>;
        band: z.ZodOptional<import("../file/values.js").Reads<import("./level.js").Level, import("./level.js").Level>>;
        most: import("../file/values.js").Reads<number, string>;
    }, z.core.$strict>>>;
    'drain-solids': z.ZodOptional<z.ZodArray<z.ZodObject<{
        at: z.ZodOptional<import("../file/values.js").Reads<import("./times.js").When, string>>;
        every: z.ZodOptional<import("../file/values.js").Reads<number, string>>;
        until: z.ZodOptional<import("../file/values.js").Reads<import("./times.js").When, string>>;
        vessel: import("../file/values.js").Reads<string, string>;
        share: import("../file/values.js").Reads<number, string | number>;
        water: z.ZodOptional<import("../file/values.js").Reads<number, string>>;
    }, z.core.$strict>>>;
    start: z.ZodObject<{
        'grown-at': z.ZodOptional<import("../file/values.js").Reads<number, number>>;
        saved: z.ZodOptional<import("../file/values.js").Reads<string, string>>;
        day: z.ZodOptional<import("../file/values.js").Reads<number, number>>;
        biofilm: z.ZodOptional<import("../file/values.js").Reads<{
            readonly kind: "uncycled";
        } | {
            readonly kind: "cycled";
            readonly share: number;
        } | {
            readonly kind: "shares";
            readonly aob: number;
            readonly nob: number;
        }>>;
        water: z.ZodOptional<z.ZodObject<{
            solids: z.ZodOptional<import("../file/values.js").Reads<number, string>>;
            like: z.ZodOptional<import("../file/values.js").Reads<string, string>>;
            ammonia: z.ZodOptional<import("../file/values.js").Reads<number, string>>;
            nitrite: z.ZodOptional<import("../file/values.js").Reads<number, string>>;
            nitrate: z.ZodOptional<import("../file/values.js").Reads<number, string>>;
            alkalinity: z.ZodOptional<import("../file/values.js").Reads<number, string>>;
            pH: z.ZodOptional<import("../file/values.js").Reads<number, number>>;
            oxygen: z.ZodOptional<import("../file/values.js").Reads<number, string>>;
            chloride: z.ZodOptional<import("../file/values.js").Reads<number, string>>;
            calcium: z.ZodOptional<import("../file/values.js").Reads<number, string>>;
        }, z.core.$strict>>;
        vessels: z.ZodOptional<z.ZodRecord<z.ZodString, z.ZodObject<{
            biofilm: z.ZodOptional<import("../file/values.js").Reads<{
                readonly kind: "uncycled";
            } | {
                readonly kind: "cycled";
                readonly share: number;
            } | {
                readonly kind: "shares";
                readonly aob: number;
                readonly nob: number;
            }>>;
            'grown-at': z.ZodOptional<import("../file/values.js").Reads<number, number>>;
            water: z.ZodOptional<z.ZodObject<{
                solids: z.ZodOptional<import("../file/values.js").Reads<number, string>>;
                like: z.ZodOptional<import("../file/values.js").Reads<string, string>>;
                ammonia: z.ZodOptional<import("../file/values.js").Reads<number, string>>;
                nitrite: z.ZodOptional<import("../file/values.js").Reads<number, string>>;
                nitrate: z.ZodOptional<import("../file/values.js").Reads<number, string>>;
                alkalinity: z.ZodOptional<import("../file/values.js").Reads<number, string>>;
                pH: z.ZodOptional<import("../file/values.js").Reads<number, number>>;
                oxygen: z.ZodOptional<import("../file/values.js").Reads<number, string>>;
                chloride: z.ZodOptional<import("../file/values.js").Reads<number, string>>;
                calcium: z.ZodOptional<import("../file/values.js").Reads<number, string>>;
            }, z.core.$strict>>;
            settled: z.ZodOptional<import("../file/values.js").Reads<number, string>>;
            volume: z.ZodOptional<import("../file/values.js").Reads<number, string>>;
        }, z.core.$strict>>>;
    }, z.core.$strict>;
    actions: z.ZodOptional<z.ZodArray<z.ZodObject<{
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
    }, z.core.$strict>>>;
    rules: z.ZodOptional<z.ZodArray<z.ZodObject<{
        when: z.ZodObject<{
            read: import("../file/values.js").Reads<"pH" | "ammonia" | "nitrite" | "nitrate" | "alkalinity" | "oxygen" | "temperature" | "chloride" | "volume", "pH" | "ammonia" | "nitrite" | "nitrate" | "alkalinity" | "oxygen" | "temperature" | "chloride" | "volume">;
            in: import("../file/values.js").Reads<string, string>;
            above: z.ZodOptional<import("../file/values.js").Reads<import("./level.js").Level, import("./level.js").Level>>;
            below: z.ZodOptional<import("../file/values.js").Reads<import("./level.js").Level, import("./level.js").Level>>;
            until: z.ZodOptional<import("../file/values.js").Reads<import("./level.js").Level, import("./level.js").Level>>;
        }, z.core.$strict>;
        kit: z.ZodOptional<z.ZodObject<{
            resolution: z.ZodOptional<import("../file/values.js").Reads<import("./level.js").Level, import("./level.js").Level>>;
            error: z.ZodOptional<import("../file/values.js").Reads<import("./level.js").Level, import("./level.js").Level>>;
            every: z.ZodOptional<import("../file/values.js").Reads<number, string>>;
        }, z.core.$strict>>;
        do: z.ZodObject<{
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
        undo: z.ZodOptional<z.ZodObject<{
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
        }, z.core.$strict>>;
        wait: z.ZodOptional<import("../file/values.js").Reads<number, string>>;
        most: z.ZodOptional<import("../file/values.js").Reads<number, number>>;
    }, z.core.$strict>>>;
    tables: z.ZodOptional<z.ZodUnion<readonly [import("../file/values.js").Reads<string, string>, z.ZodArray<import("../file/values.js").Reads<string, string>>]>>;
    parameters: z.ZodOptional<z.ZodRecord<z.ZodString, import("../file/values.js").Reads<number | {
        value: number;
        low?: number | undefined;
        high?: number | undefined;
    } | {
        [x: string]: number | {
            value: number;
            low?: number | undefined;
            high?: number | undefined;
        };
        like: string;
    }, unknown>>>;
    version: z.ZodOptional<z.ZodLiteral<1>>;
    title: import("../file/values.js").Reads<string, string>;
    note: z.ZodOptional<import("../file/values.js").Reads<string, string>>;
    days: import("../file/values.js").Reads<number, number>;
    every: z.ZodOptional<import("../file/values.js").Reads<number, string>>;
    'start-date': z.ZodOptional<import("../file/values.js").Reads<string, string>>;
    reservoir: import("../file/values.js").Reads<string, string>;
    seed: z.ZodOptional<import("../file/values.js").Reads<number, number>>;
    include: z.ZodOptional<z.ZodUnion<readonly [z.ZodString, z.ZodArray<z.ZodString>]>>;
}, z.core.$strict>;
/** Top keys that hold maps or lists of entries. */
export declare const sectionKeys: readonly string[];
/** Only the keys at the top, whatever they hold. */
export declare const topSchema: z.ZodObject<{
    [k: string]: z.ZodOptional<z.ZodUnknown>;
}, z.core.$strict>;
//# sourceMappingURL=whole-file.d.ts.map