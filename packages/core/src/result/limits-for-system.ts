// Reads numbers as: limits for the system
import { areaByClass } from './limits-for-crops.js';
import { limitFrom, type Limit, type LimitCheck, type LimitReader } from './limit-check.js';

const always = (): boolean => true;

/** Feed per planted area against the range for leafy and fruiting crops, in proportion to their areas. */
function feedPerArea(reader: LimitReader): readonly LimitCheck[] {
  const { plantings, fish: cohorts } = reader.run.model.scenario;
  const { leafy, fruiting } = areaByClass(plantings);
  const area = leafy + fruiting;
  if (area === 0 || cohorts.length === 0) return [];
  const values = reader.values('feed@system').map((feed) => feed / area);
  return (['low', 'high'] as const).map((end) => {
    const limit = (kind: 'leafy' | 'fruiting'): Limit =>
      limitFrom(reader.parameters, {
        id: `limit.feed-per-area-${kind}-${end}.value`,
        averaging: `limit.feed-per-area-${kind}-${end}.averaging`,
        quantity: 'feed-per-planted-area',
        harm: 'design',
        unit: 'g/(m2 d)',
        direction: end === 'low' ? 'below' : 'above',
        whom: leafy === 0 ? 'fruiting crops' : fruiting === 0 ? 'leafy crops' : 'leafy and fruiting crops',
      });
    const value = (leafy * limit('leafy').value + fruiting * limit('fruiting').value) / area;
    return {
      limit: { ...limit(leafy > 0 ? 'leafy' : 'fruiting'), value },
      place: 'system',
      values,
      matters: always,
    };
  });
}

/** Water taken in each day as a share of what the system holds. */
function waterUse(reader: LimitReader): LimitCheck {
  const volume = reader.values('volume@system');
  const values = reader.values('top-up@system').map((topUp, i) => topUp / volume[i]);
  const limit = limitFrom(reader.parameters, {
    id: 'limit.water-loss-high.value',
    averaging: 'limit.water-loss-high.averaging',
    quantity: 'water-use',
    harm: 'design',
    unit: '1/d',
    direction: 'above',
    whom: 'usual systems',
  });
  return { limit, place: 'system', values, matters: always };
}

/** Guides on the design of the whole. */
export function limitsForSystem(reader: LimitReader): readonly LimitCheck[] {
  return [...feedPerArea(reader), waterUse(reader)];
}
