import { type Bound } from '../../base/bounds.js';
import type { Measurable } from '../scenario.js';
/**
 * What the numbers of a system may be, for its file and for a scenario built in code. Names are those of the fields
 * of a scenario.
 */
/** Most of each that one system has; of actions once repeats are written out. */
export declare const most: {
    readonly vessels: 5000;
    readonly flows: 20000;
    readonly pumps: 5000;
    readonly waters: 200;
    readonly groups: 5000;
    readonly rules: 1000;
    readonly dosers: 200;
    readonly actions: 100000;
    readonly outputs: 1000000;
    /** Outputs of all vessels: about a gigabyte is kept. */
    readonly values: 2000000;
};
/** The run. */
export declare const runRanges: {
    readonly days: import("../../base/bounds.js").NumberBound;
    readonly every: import("../../base/bounds.js").QuantityBound;
    readonly seed: import("../../base/bounds.js").NumberBound;
};
/** Daily values. */
export declare const dailyRanges: {
    /** Water can be followed between freezing and what any fish or nitrifier bears. */
    readonly water: {
        readonly dimension: "temperature";
        readonly low: 0;
        readonly high: 45;
    };
    readonly air: {
        readonly dimension: "temperature";
        readonly low: -40;
        readonly high: 60;
    };
    readonly et0: {
        readonly dimension: "depth-rate";
        readonly low: 0;
        readonly high: 0.03;
    };
    /** ET0 after the factor of a greenhouse, which may be any. */
    readonly et0UnderCover: {
        readonly dimension: "depth-rate";
        readonly low: 0;
        readonly high: number;
    };
    readonly rain: {
        readonly dimension: "depth-rate";
        readonly low: 0;
        readonly high: 2;
    };
    /** Under lamps day and night more than the brightest day outdoors, 65. */
    readonly light: {
        readonly dimension: "light";
        readonly low: 0;
        readonly high: 150;
    };
    readonly sunshine: {
        readonly dimension: "time";
        readonly low: 0;
        readonly high: 1;
    };
    readonly radiation: {
        readonly dimension: "radiation";
        readonly low: 0;
        readonly high: 50;
    };
    /** Of shade cloth: the share of light that it takes. */
    readonly shade: {
        readonly dimension: "share";
        readonly low: 0;
        readonly high: 1;
    };
    /** In air: from less than open air holds to more than people bear. */
    readonly carbonDioxide: {
        readonly dimension: "mole-share";
        readonly low: 0.0002;
        readonly high: 0.02;
    };
};
/** Lime laid in a vessel. */
export declare const limeRanges: {
    readonly mass: import("../../base/bounds.js").QuantityBound;
};
/** Share of its oxygen that the air of an aeration gives up. */
export declare const airRanges: {
    readonly airShare: import("../../base/bounds.js").ShareBound;
};
/** Draining that is not resolved: mean water, m3 d-1; in a file `drained` each time and `cycles`. */
export declare const floodedRanges: {
    readonly flooded: import("../../base/bounds.js").QuantityBound;
};
export declare const floodRanges: {
    readonly drained: import("../../base/bounds.js").QuantityBound;
    readonly cycles: import("../../base/bounds.js").QuantityBound;
};
/** The place: up to the highest with water to keep fish in, m. */
export declare const climateRanges: {
    readonly altitude: import("../../base/bounds.js").NumberBound;
};
/** Dosers: `band` in pH or eq m-3. */
export declare const doserRanges: {
    readonly band: import("../../base/bounds.js").NumberBound;
    readonly most: import("../../base/bounds.js").QuantityBound;
};
/** Vessels. */
export declare const vesselRanges: {
    readonly volume: import("../../base/bounds.js").QuantityBound;
    readonly surface: import("../../base/bounds.js").QuantityBound;
    readonly floor: import("../../base/bounds.js").QuantityBound;
    readonly open: import("../../base/bounds.js").QuantityBound;
    readonly covered: import("../../base/bounds.js").QuantityBound;
    readonly aeration: import("../../base/bounds.js").QuantityBound;
    readonly capture: import("../../base/bounds.js").ShareBound;
    readonly leak: import("../../base/bounds.js").QuantityBound;
    readonly exchange: import("../../base/bounds.js").QuantityBound;
};
/** The lower outlet of a vessel. */
export declare const drainRanges: {
    readonly rate: import("../../base/bounds.js").QuantityBound;
    readonly to: import("../../base/bounds.js").QuantityBound;
};
/** The clock of a pump; `offset` is of a file, which knows nothing from before the run. */
export declare const timerRanges: {
    readonly on: import("../../base/bounds.js").QuantityBound;
    readonly off: import("../../base/bounds.js").QuantityBound;
    readonly offset: import("../../base/bounds.js").QuantityBound;
};
/** Pumps. */
export declare const pumpRanges: {
    readonly inlet: import("../../base/bounds.js").QuantityBound;
    readonly restart: import("../../base/bounds.js").QuantityBound;
};
/** Flows: `rate` of a pumped one, `share` of one by gravity. */
export declare const flowRanges: {
    readonly rate: import("../../base/bounds.js").QuantityBound;
    readonly share: import("../../base/bounds.js").ShareBound;
};
/** The float valve. */
export declare const topUpRanges: {
    readonly level: import("../../base/bounds.js").QuantityBound;
    readonly rate: import("../../base/bounds.js").QuantityBound;
};
/** Caps of a supply. */
export declare const capRanges: {
    readonly dailyCap: import("../../base/bounds.js").QuantityBound;
    readonly weeklyCap: import("../../base/bounds.js").QuantityBound;
};
/** The rain tank. */
export declare const rainTankRanges: {
    readonly capacity: import("../../base/bounds.js").QuantityBound;
    readonly volume: import("../../base/bounds.js").QuantityBound;
    readonly roof: import("../../base/bounds.js").QuantityBound;
};
/** Water from outside; without `carbon` in a file, where pH stands in its place. */
export declare const waterRanges: {
    readonly tan: import("../../base/bounds.js").QuantityBound;
    readonly nitrite: import("../../base/bounds.js").QuantityBound;
    readonly nitrate: import("../../base/bounds.js").QuantityBound;
    readonly alkalinity: import("../../base/bounds.js").QuantityBound;
    readonly carbon: import("../../base/bounds.js").NumberBound;
    readonly oxygen: import("../../base/bounds.js").QuantityBound;
    readonly chloride: import("../../base/bounds.js").QuantityBound;
    readonly calcium: import("../../base/bounds.js").QuantityBound;
};
/** Water at the start. */
export declare const startWaterRanges: {
    readonly solids: import("../../base/bounds.js").QuantityBound;
    readonly tan: import("../../base/bounds.js").QuantityBound;
    readonly nitrite: import("../../base/bounds.js").QuantityBound;
    readonly nitrate: import("../../base/bounds.js").QuantityBound;
    readonly alkalinity: import("../../base/bounds.js").QuantityBound;
    readonly carbon: import("../../base/bounds.js").NumberBound;
    readonly oxygen: import("../../base/bounds.js").QuantityBound;
    readonly chloride: import("../../base/bounds.js").QuantityBound;
    readonly calcium: import("../../base/bounds.js").QuantityBound;
};
/**
 * What a file may write of water: more cannot be meant. A scenario built in code may hold what no water does, as an
 * experiment of thought with food without end; that it is outside what the model knows is told of its runs.
 */
export declare const writtenWaterRanges: {
    readonly tan: import("../../base/bounds.js").QuantityBound;
    readonly nitrite: import("../../base/bounds.js").QuantityBound;
    readonly nitrate: import("../../base/bounds.js").QuantityBound;
    readonly alkalinity: import("../../base/bounds.js").QuantityBound;
    readonly oxygen: import("../../base/bounds.js").QuantityBound;
    readonly chloride: import("../../base/bounds.js").QuantityBound;
    readonly calcium: import("../../base/bounds.js").QuantityBound;
    readonly solids: import("../../base/bounds.js").QuantityBound;
};
/** Organic matter in water at the start that may be absent. */
export declare const startOrganicRanges: {
    readonly refractory: import("../../base/bounds.js").QuantityBound;
    readonly dissolved: import("../../base/bounds.js").QuantityBound;
    readonly 'organic-nitrogen': import("../../base/bounds.js").QuantityBound;
};
/** The rest of what a vessel holds at the start. */
export declare const startRanges: {
    readonly volume: import("../../base/bounds.js").QuantityBound;
    readonly aob: import("../../base/bounds.js").ShareBound;
    readonly nob: import("../../base/bounds.js").ShareBound;
    readonly settled: import("../../base/bounds.js").QuantityBound;
};
/** Settled solids at the start that may be absent. */
export declare const startRefractoryRanges: {
    readonly settledRefractory: import("../../base/bounds.js").QuantityBound;
};
/** pH of the water that a film has grown in. */
export declare const grownRange: import("../../base/bounds.js").NumberBound;
/** Rations: a mass or a share a day, and a row of a table. */
export declare const rationRanges: {
    readonly gramsPerDay: import("../../base/bounds.js").QuantityBound;
    readonly perDay: import("../../base/bounds.js").QuantityBound;
    readonly mass: import("../../base/bounds.js").QuantityBound;
};
/** Feeds. */
export declare const feedRanges: {
    readonly protein: import("../../base/bounds.js").ShareBound;
};
/** Cohorts. */
export declare const cohortRanges: {
    readonly number: import("../../base/bounds.js").NumberBound;
    readonly mass: import("../../base/bounds.js").QuantityBound;
    readonly feedConversion: import("../../base/bounds.js").NumberBound;
};
/** Most that can be meant, whatever stands beside it: reasons are told with the fault. */
export declare const absurd: {
    /** g of fish per m3 of water. */
    readonly stocking: 500000;
    /** g of feed a day per g of fish. */
    readonly ration: 2;
    /** g of one fish. */
    readonly fish: 300000;
    /** g of a product dosed at once per m3. */
    readonly dose: 200000;
};
/** Plantings. */
export declare const plantingRanges: {
    readonly area: import("../../base/bounds.js").QuantityBound;
    readonly cover: import("../../base/bounds.js").ShareBound;
    readonly batches: import("../../base/bounds.js").NumberBound;
    readonly harvest: import("../../base/bounds.js").QuantityBound;
    readonly age: import("../../base/bounds.js").QuantityBound;
    readonly picks: import("../../base/bounds.js").QuantityBound;
    /** Fresh mass of a seedling in a file, g; dry mass of all in a scenario, g m-2. */
    readonly seedling: import("../../base/bounds.js").QuantityBound;
};
/** Crops that are cut to grow again. */
export declare const cutRanges: {
    readonly every: import("../../base/bounds.js").QuantityBound;
    readonly leave: import("../../base/bounds.js").ShareBound;
};
/** Actions, by kind. */
export declare const actionRanges: {
    readonly stock: {
        readonly number: import("../../base/bounds.js").NumberBound;
        readonly mass: import("../../base/bounds.js").QuantityBound;
    };
    readonly 'harvest-fish': {
        readonly share: import("../../base/bounds.js").ShareBound;
        readonly number: import("../../base/bounds.js").NumberBound;
    };
    readonly 'lose-fish': {
        readonly share: import("../../base/bounds.js").ShareBound;
        readonly number: import("../../base/bounds.js").NumberBound;
    };
    readonly grade: {
        readonly share: import("../../base/bounds.js").ShareBound;
        readonly relativeMass: import("../../base/bounds.js").NumberBound;
    };
    readonly plant: {};
    readonly 'harvest-crop': {};
    readonly 'leave-empty': {};
    readonly feed: {
        readonly factor: import("../../base/bounds.js").NumberBound;
    };
    readonly 'top-up': {
        readonly dailyCap: import("../../base/bounds.js").QuantityBound;
        readonly weeklyCap: import("../../base/bounds.js").QuantityBound;
    };
    readonly 'source-water': {};
    readonly 'change-water': {
        readonly volume: import("../../base/bounds.js").QuantityBound;
        readonly share: import("../../base/bounds.js").ShareBound;
    };
    readonly 'cart-water': {
        readonly volume: import("../../base/bounds.js").QuantityBound;
    };
    readonly dose: {
        readonly mass: import("../../base/bounds.js").QuantityBound;
    };
    readonly pump: {};
    readonly aeration: {};
    readonly control: {};
    readonly clean: {
        readonly biofilm: import("../../base/bounds.js").ShareBound;
        readonly solids: import("../../base/bounds.js").ShareBound;
        readonly stuns: import("../../base/bounds.js").ShareBound;
    };
    readonly medicate: {
        readonly kills: import("../../base/bounds.js").ShareBound;
        readonly stuns: import("../../base/bounds.js").ShareBound;
    };
    readonly 'drain-solids': {
        readonly share: import("../../base/bounds.js").ShareBound;
        readonly water: import("../../base/bounds.js").QuantityBound;
    };
};
/** Rules: `wait` where one is written (0 in a scenario: none), and `most`. */
export declare const ruleRanges: {
    readonly wait: import("../../base/bounds.js").QuantityBound;
    readonly most: import("../../base/bounds.js").NumberBound;
};
/** Test kits: whole days between readings, and steps of the scale. */
export declare const kitRanges: {
    readonly every: import("../../base/bounds.js").NumberBound;
    readonly resolution: import("../../base/bounds.js").NumberBound;
};
/** Errors of a test kit: a share of the reading, or in its unit. */
export declare const errorRanges: {
    readonly relative: import("../../base/bounds.js").NumberBound;
    readonly absolute: import("../../base/bounds.js").NumberBound;
};
/** A state saved by a run. */
export declare const savedRanges: {
    readonly volume: import("../../base/bounds.js").QuantityBound;
    readonly rainTank: import("../../base/bounds.js").QuantityBound;
    readonly age: import("../../base/bounds.js").QuantityBound;
    readonly time: import("../../base/bounds.js").QuantityBound;
    /** The day that a run goes on from, where it is another. */
    readonly day: import("../../base/bounds.js").NumberBound;
    readonly factor: import("../../base/bounds.js").NumberBound;
    readonly amount: import("../../base/bounds.js").NumberBound;
};
/** A level of something that is read. */
export declare function levelRange(read: Measurable): Bound;
/** Words that a field may hold. */
export declare const words: {
    readonly vesselKind: readonly ["fish-tank", "settler", "screen", "biofilter", "media-bed", "raft-bed", "channel", "sump", "vessel"];
    readonly afterHarvest: readonly ["replant", "empty"];
    readonly plantingStart: readonly ["staggered", "new", "empty"];
    readonly deadFish: readonly ["left"];
    readonly cartedInto: readonly ["rain-tank", "reservoir"];
};
//# sourceMappingURL=ranges.d.ts.map