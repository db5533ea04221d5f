import * as z from 'zod';
import { formatQuantity } from '../../base/units.js';
import { kindComplaint } from '../file/complaint.js';
import { compact, type Reader } from '../file/reader.js';
import type { Named } from '../file/report.js';
import { positive, quantity, section, share, word } from '../file/values.js';
import type { RainTank, SourceWater, TopUp, TopUpSource, Vessel } from '../scenario.js';
import { cap } from './cap.js';
import { daily, readDaily } from './daily.js';
import type { RunFrame } from './run.js';

/** The section `rain-tank`. */
export const rainTankSchema = section(
  {
    capacity: positive('volume', 'what it holds'),
    volume: quantity('volume', 'what is in it at the start; range: 0 to the capacity'),
    roof: quantity('area', 'roof that drains into it'),
    runoff: share('share of the rain on the roof that reaches it; default: 1').optional(),
    rain: daily('depth-rate', 'rain; range: 0 to 2 m/d'),
    water: word('what the rain holds: a name of `waters`'),
  },
  'a store of rain',
);

const source = section(
  {
    water: word('a name of `waters`'),
    cap: cap('most in one day or one week, as written; default: no cap').optional(),
  },
  'a supply',
);

/** The section `top-up`. */
export const topUpSchema = section(
  {
    level: positive(
      'volume',
      'volume of the reservoir at which the float closes; range: more than 0, at most what it holds',
    ),
    rate: positive('volume-flow', 'most that the valve lets in'),
    from: z
      .array(
        z.union([word('`rain-tank` or a name of `waters`'), source], {
          error: ({ input }) =>
            kindComplaint(input, '`rain-tank`, a name of `waters`, or a map of water and cap'),
        }),
        { error: ({ input }) => kindComplaint(input, 'a list of supplies, the first used first') },
      )
      .meta({ description: 'supplies, the first used first: `rain-tank`, a name of `waters`, or a map' }),
  },
  'top-up of the reservoir by a float valve',
);

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
