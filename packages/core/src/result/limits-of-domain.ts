// Reads numbers as: domain of the model
import { type Limit, type LimitCheck, limitFrom, type LimitReader } from './limit-check.js';

const rules: readonly (Pick<Limit, 'quantity' | 'unit' | 'direction'> & { readonly id: string })[] = [
  { quantity: 'temperature', unit: 'degC', direction: 'below', id: 'limit.domain-temperature-low.value' },
  { quantity: 'temperature', unit: 'degC', direction: 'above', id: 'limit.domain-temperature-high.value' },
  { quantity: 'pH', unit: 'pH', direction: 'below', id: 'limit.domain-ph-low.value' },
  { quantity: 'pH', unit: 'pH', direction: 'above', id: 'limit.domain-ph-high.value' },
  { quantity: 'chloride', unit: 'mg/L', direction: 'above', id: 'limit.domain-chloride-high.value' },
  { quantity: 'tan', unit: 'mg N/L', direction: 'above', id: 'limit.domain-tan-high.value' },
  { quantity: 'nitrite', unit: 'mg N/L', direction: 'above', id: 'limit.domain-nitrite-high.value' },
  { quantity: 'oxygen', unit: 'mg/L', direction: 'above', id: 'limit.domain-oxygen-high.value' },
];

/** Fish and feed per water of a vessel with fish, g m-3 and g m-3 d-1. */
function crowding(reader: LimitReader, vessel: string): readonly LimitCheck[] {
  const cohorts = reader.run.model.scenario.fish.filter((cohort) => cohort.vessel === vessel);
  const volume = reader.values(`volume@${vessel}`);
  const perVolume = (series: string): Float64Array => {
    const all = cohorts.map(({ name }) => reader.values(`${series}@${name}`));
    return volume.map((each, i) => all.reduce((total, values) => total + values[i], 0) / each);
  };
  const check = (quantity: string, unit: string, id: string, series: string): LimitCheck => ({
    limit: limitFrom(reader.parameters, {
      quantity,
      unit,
      direction: 'above',
      harm: 'domain',
      id,
      whom: 'the model',
    }),
    place: vessel,
    values: perVolume(series),
    matters: () => true,
  });
  return [
    check('stocking', 'g/m3', 'limit.domain-stocking-high.value', 'fish-mass'),
    check('feed-per-volume', 'g/(m3 d)', 'limit.domain-feed-high.value', 'feed'),
  ];
}

/**
 * Where the laws of the model were measured: outside it a run goes on, by its laws, and is no forecast. Held against
 * every vessel at every output.
 */
export function limitsOfDomain(reader: LimitReader): readonly LimitCheck[] {
  const { vessels, fish: cohorts } = reader.run.model.scenario;
  const homes = new Set(cohorts.map(({ vessel }) => vessel));
  return vessels.flatMap(({ name }) => [
    ...rules.map((rule): LimitCheck => ({
      limit: limitFrom(reader.parameters, { ...rule, harm: 'domain', whom: 'the model' }),
      place: name,
      values: reader.values(`${rule.quantity}@${name}`),
      matters: () => true,
    })),
    ...(homes.has(name) ? crowding(reader, name) : []),
  ]);
}
