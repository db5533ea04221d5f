import { SPECIATION } from '../chemistry/acid-base.js';
import { groupProducts, SumsOfProducts } from '../solve/sums-of-products.js';
import { waterComponents } from '../processes/components.js';
import { waterRead } from './instance.js';
import { ownInWater } from './layout.js';
import { AMOUNT, CHEMISTRY, CONCENTRATION } from './rate-tables.js';
const WATER = waterComponents.length;
/** Components that chemistry depends on, in the order of its partials. */
const ACIDS = ['tan', 'alkalinity', 'carbon'].map((name) => waterComponents.indexOf(name));
const VALUES = 4;
const SPREAD = VALUES * ACIDS.length;
/** Factors of one vessel by which partials of a process at a place become partials by states (m: 0 whole, 1 per m3). */
const PER_STATE = 2 * (2 + SPREAD);
const byConcentration = (m) => m * (2 + SPREAD);
const byAmount = (m) => m * (2 + SPREAD) + 1;
const byAcid = (m, value, acid) => m * (2 + SPREAD) + 2 + value * ACIDS.length + acid;
/** Which products make the partials by states and by time. */
function layProducts({ instances }, { reads, at, kind, slot }, { drifts, own }) {
    const state = { to: [], partial: [], factor: [] };
    const time = { to: [], partial: [], factor: [] };
    const add = (list, to, partial, factor) => {
        list.to.push(to);
        list.partial.push(partial);
        list.factor.push(factor);
    };
    instances.forEach((instance, j) => {
        const { process, row } = instance;
        const vessel = waterRead(instance);
        const m = process.basis === 'volume' ? 1 : 0;
        const s = vessel * PER_STATE;
        const t = vessel * 2 * drifts.one;
        const componentOf = (state) => {
            const extra = own.findIndex((states) => states[vessel] === state);
            return extra < 0 ? state - vessel * WATER : WATER + extra;
        };
        for (let q = reads[j]; q < reads[j + 1]; q++) {
            if (kind[q] === CONCENTRATION) {
                add(state, slot[3 * q], q, s + byConcentration(m));
                add(time, row, q, t + m * drifts.one + componentOf(at[q]));
            }
            else if (kind[q] === AMOUNT)
                add(state, slot[3 * q], q, s + byAmount(m));
            else {
                const value = kind[q] - CHEMISTRY;
                ACIDS.forEach((_, acid) => {
                    add(state, slot[3 * q + acid], q, s + byAcid(m, value, acid));
                });
                add(time, row, q, t + m * drifts.one + drifts.components + value);
            }
        }
    });
    return { state, time };
}
/** Lays the chain rule of a model out as sums of products of partials and factors. */
export function openRateChain(model, regime, tables, { v, volume, perVolume, speciation }) {
    const { dependence } = model;
    const { d } = tables;
    const vesselCount = model.layout.vessels.length;
    const own = ownInWater(model.layout).map(({ states }) => states);
    const components = WATER + own.length;
    const one = components + VALUES;
    const { state, time } = layProducts(model, tables, { drifts: { components, one }, own });
    const entries = dependence.column.length;
    const toStates = new SumsOfProducts(groupProducts(state.to, state.partial, state.factor, entries), 'set');
    const toTime = new SumsOfProducts(groupProducts(time.to, time.partial, time.factor, model.rows.length), 'set');
    const perState = new Float64Array(PER_STATE * vesselCount);
    const perTime = new Float64Array(2 * one * vesselCount);
    return {
        byState(dr) {
            for (let vessel = 0; vessel < vesselCount; vessel++) {
                const s = vessel * PER_STATE;
                const size = volume[vessel];
                const inverse = perVolume[vessel];
                perState[s] = inverse;
                perState[s + 1] = 1;
                perState[s + 2 + SPREAD] = 1;
                perState[s + 3 + SPREAD] = size;
                const o = vessel * SPECIATION + VALUES;
                for (let e = 0; e < SPREAD; e++) {
                    perState[s + 2 + e] = speciation[o + e] * inverse;
                    perState[s + 4 + SPREAD + e] = speciation[o + e];
                }
            }
            toStates.apply(d, perState, dr);
        },
        byTime(rt) {
            for (let vessel = 0; vessel < vesselCount; vessel++) {
                const t = vessel * 2 * one;
                const first = vessel * WATER;
                const spread = -regime.slope[vessel];
                for (let c = 0; c < WATER; c++) {
                    const drift = spread * v[first + c];
                    perTime[t + c] = drift * perVolume[vessel];
                    perTime[t + one + c] = drift;
                }
                for (let c = 0; c < own.length; c++) {
                    const drift = spread * v[own[c][vessel]];
                    perTime[t + WATER + c] = drift * perVolume[vessel];
                    perTime[t + one + WATER + c] = drift;
                }
                for (let value = 0; value < VALUES; value++) {
                    const o = vessel * SPECIATION + VALUES + value * ACIDS.length;
                    let drift = 0;
                    for (let acid = 0; acid < ACIDS.length; acid++)
                        drift += speciation[o + acid] * v[first + ACIDS[acid]];
                    drift *= spread;
                    perTime[t + components + value] = drift * perVolume[vessel];
                    perTime[t + one + components + value] = drift;
                }
            }
            toTime.apply(d, perTime, rt);
        },
    };
}
//# sourceMappingURL=rate-chain.js.map