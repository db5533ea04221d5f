import { formatQuantity } from '../units.js';
import { compact } from './compact.js';
import type { Named, Reader } from './reader.js';
import { readDaily } from './read-daily.js';
import type { RunFrame } from './read-run.js';
import type { RainTank, SourceWater, TopUp, TopUpSource, Vessel } from './scenario.js';
import { rainTankSchema, topUpSchema } from './schema/top-up-schema.js';

/** Top-up and the rain tank, where there are any. */
export interface Supply {
  readonly topUp?: TopUp;
  readonly rainTank?: RainTank;
}

function readRainTank(reader: Reader, frame: RunFrame, waters: Named<SourceWater>): RainTank | undefined {
  if (!reader.has(['rain-tank'])) return undefined;
  const given = reader.parse(rainTankSchema, ['rain-tank']);
  if (given === undefined) return undefined;
  const { capacity, volume, water } = given;
  reader.known(water, waters, ['rain-tank', 'water'], 'water');
  if (volume > capacity) {
    reader.fault(['rain-tank', 'volume'], 'more than the tank holds', {
      expected: `at most ${formatQuantity(capacity, 'volume')}`,
    });
  }
  const need = { dimension: 'depth-rate', days: frame.days, low: 0, high: 2 } as const;
  const rain = readDaily(reader, ['rain-tank', 'rain'], given.rain, need);
  const runoff = given.runoff ?? reader.fallback(['rain-tank', 'runoff'], 1, 1);
  return rain === undefined ? undefined : { capacity, volume, roof: given.roof * runoff, rain, water };
}

function readTopUp(
  reader: Reader,
  waters: Named<SourceWater>,
  reservoir: Vessel | undefined,
): TopUp | undefined {
  if (!reader.has(['top-up'])) return undefined;
  const given = reader.parse(topUpSchema, ['top-up']);
  if (given === undefined) return undefined;
  const { level, rate, from } = given;
  if (from.length === 0)
    reader.fault(['top-up', 'from'], 'an empty list', { expected: 'at least one supply' });
  if (reservoir !== undefined && level > reservoir.volume) {
    const expected = `at most ${formatQuantity(reservoir.volume, 'volume')}`;
    reader.fault(['top-up', 'level'], `above the overflow of ${reservoir.name}`, { expected });
  }
  const sources = from.map((source, index): TopUpSource => {
    const path = ['top-up', 'from', index];
    if (source === 'rain-tank') {
      if (!reader.has(['rain-tank']))
        reader.fault(path, 'no rain tank in this file', { expected: 'a section rain-tank' });
      return { kind: 'rain-tank' };
    }
    const { water, cap } = typeof source === 'string' ? { water: source, cap: undefined } : source;
    const at = typeof source === 'string' ? path : [...path, 'water'];
    reader.known(water, typeof source === 'string' ? ['rain-tank', ...waters.keys()] : waters, at, 'water');
    return { kind: 'mains', water, dailyCap: Infinity, ...cap };
  });
  return { level, rate, sources };
}

/** Reads `top-up` and `rain-tank`. */
export function readSupply(
  reader: Reader,
  frame: RunFrame,
  waters: Named<SourceWater>,
  reservoir: Vessel | undefined,
): Supply {
  return compact({
    rainTank: readRainTank(reader, frame, waters),
    topUp: readTopUp(reader, waters, reservoir),
  });
}
