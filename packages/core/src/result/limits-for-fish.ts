// Reads numbers as: limits for fish
import type { Cohort } from '../scenario/scenario.js';
import { limitFrom, type Limit, type LimitCheck, type LimitReader } from './limit-check.js';

/** One limit of a species on a series of the vessel it lives in. */
interface FishRule extends Pick<Limit, 'quantity' | 'unit' | 'direction' | 'harm'> {
  /** Row: `fish.<species>.<property>`, or a general row. */
  readonly id: (species: string) => string;
  readonly averaging?: string;
}

const own = (property: string) => (species: string) => `fish.${species}.${property}`;
const general = (id: string) => () => id;

const rules: readonly FishRule[] = [
  {
    quantity: 'un-ionised-ammonia',
    unit: 'mg N/L',
    direction: 'above',
    id: own('limit-ammonia'),
    harm: 'harmful',
    averaging: 'limit.un-ionised-ammonia-warm.averaging',
  },
  {
    quantity: 'nitrite',
    unit: 'mg N/L',
    direction: 'above',
    id: own('limit-nitrite'),
    harm: 'harmful',
    averaging: 'limit.nitrite-guide.averaging',
  },
  {
    quantity: 'nitrate',
    unit: 'mg N/L',
    direction: 'above',
    id: own('limit-nitrate'),
    harm: 'uncomfortable',
    averaging: 'limit.nitrite-guide.averaging',
  },
  {
    quantity: 'oxygen',
    unit: 'mg/L',
    direction: 'below',
    id: own('limit-oxygen'),
    harm: 'harmful',
    averaging: 'limit.oxygen-low.averaging',
  },
  {
    quantity: 'temperature',
    unit: 'degC',
    direction: 'below',
    id: own('temperature-low'),
    harm: 'uncomfortable',
  },
  {
    quantity: 'temperature',
    unit: 'degC',
    direction: 'above',
    id: own('temperature-high'),
    harm: 'harmful',
  },
  {
    quantity: 'pH',
    unit: 'pH',
    direction: 'below',
    id: general('limit.ph-low.value'),
    harm: 'uncomfortable',
    averaging: 'limit.ph-low.averaging',
  },
  {
    quantity: 'pH',
    unit: 'pH',
    direction: 'above',
    id: general('limit.ph-high.value'),
    harm: 'uncomfortable',
    averaging: 'limit.ph-high.averaging',
  },
  {
    quantity: 'carbon-dioxide',
    unit: 'mg/L',
    direction: 'above',
    id: general('limit.carbon-dioxide-high.value'),
    harm: 'uncomfortable',
    averaging: 'limit.carbon-dioxide-high.averaging',
  },
  {
    quantity: 'un-ionised-ammonia',
    unit: 'mg N/L',
    direction: 'above',
    id: own('lethal-ammonia'),
    harm: 'lethal',
    averaging: 'fish.lethal-time',
  },
  {
    quantity: 'oxygen',
    unit: 'mg/L',
    direction: 'below',
    id: own('lethal-oxygen'),
    harm: 'lethal',
    averaging: 'limit.oxygen-low.averaging',
  },
  {
    quantity: 'temperature',
    unit: 'degC',
    direction: 'below',
    id: own('lethal-temperature-low'),
    harm: 'lethal',
  },
  {
    quantity: 'temperature',
    unit: 'degC',
    direction: 'above',
    id: own('lethal-temperature-high'),
    harm: 'lethal',
  },
];

/**
 * Chloride that is wanting, mg/L: so many times the nitrite (counted as NO2) less what is there. Said as a
 * difference because the ratio itself has no value where there is no nitrite.
 */
function chlorideWanting(reader: LimitReader, cohort: Cohort, matters: LimitCheck['matters']): LimitCheck {
  const { parameters } = reader;
  const rule = limitFrom(parameters, {
    id: 'limit.chloride-nitrite-ratio.value',
    averaging: 'limit.chloride-nitrite-ratio.averaging',
    quantity: 'chloride-shortage',
    harm: 'uncomfortable',
    unit: 'mg/L',
    direction: 'above',
    whom: cohort.species,
  });
  const perNitrogen = parameters.value('molar.nitrite-ion') / parameters.value('molar.nitrogen');
  const chloride = reader.values(`chloride@${cohort.vessel}`);
  const nitrite = reader.values(`nitrite@${cohort.vessel}`);
  const values = nitrite.map((n, i) => rule.value * perNitrogen * n - chloride[i]);
  return { limit: { ...rule, value: 0 }, place: cohort.vessel, values, matters };
}

/**
 * Nitrite as fish feel it, against what kills half of them without chloride: gills take up both by one way, so that so much
 * chloride (`chloride-halving`) halves what nitrite does.
 */
function nitriteFelt(reader: LimitReader, cohort: Cohort, matters: LimitCheck['matters']): LimitCheck {
  const { parameters } = reader;
  const limit = limitFrom(parameters, {
    id: `fish.${cohort.species}.lethal-nitrite`,
    averaging: 'fish.lethal-time',
    quantity: 'nitrite-felt',
    unit: 'mg N/L',
    direction: 'above',
    harm: 'lethal',
    whom: cohort.species,
  });
  const halving = parameters.value(`fish.${cohort.species}.chloride-halving`);
  const chloride = reader.values(`chloride@${cohort.vessel}`);
  const nitrite = reader.values(`nitrite@${cohort.vessel}`);
  const values = nitrite.map((each, i) => each / (1 + chloride[i] / halving));
  return { limit, place: cohort.vessel, values, matters };
}

/** Fish per water of their vessel, g m-3, all cohorts of the vessel together. */
function stocking(reader: LimitReader, cohort: Cohort, matters: LimitCheck['matters']): LimitCheck {
  const neighbours = reader.run.model.scenario.fish.filter(({ vessel }) => vessel === cohort.vessel);
  const volume = reader.values(`volume@${cohort.vessel}`);
  const masses = neighbours.map(({ name }) => reader.values(`fish-mass@${name}`));
  const limit = limitFrom(reader.parameters, {
    id: `fish.${cohort.species}.density-high`,
    averaging: 'limit.stocking-high.averaging',
    quantity: 'stocking',
    harm: 'uncomfortable',
    unit: 'g/m3',
    direction: 'above',
    whom: cohort.species,
  });
  const values = volume.map((each, i) => masses.reduce((mass, fish) => mass + fish[i], 0) / each);
  return { limit, place: cohort.vessel, values, matters };
}

/** Limits for the species of one cohort, which matter while the cohort has fish. */
function checksFor(reader: LimitReader, cohort: Cohort): readonly LimitCheck[] {
  const number = reader.values(`fish-number@${cohort.name}`);
  const matters = (index: number): boolean => number[index] > 0;
  const known = rules.filter(({ id }) => reader.parameters.has(id(cohort.species)));
  const fromRules = known.map(({ id, ...rule }) => ({
    limit: limitFrom(reader.parameters, { ...rule, id: id(cohort.species), whom: cohort.species }),
    place: cohort.vessel,
    values: reader.values(`${rule.quantity}@${cohort.vessel}`),
    matters,
  }));
  return [
    ...fromRules,
    nitriteFelt(reader, cohort, matters),
    chlorideWanting(reader, cohort, matters),
    stocking(reader, cohort, matters),
  ];
}

/** Limits for fish: each species in each vessel once (cohorts of one species in one vessel are judged together). */
export function limitsForFish(reader: LimitReader): readonly LimitCheck[] {
  const { fish: cohorts } = reader.run.model.scenario;
  const seen = new Map<string, LimitCheck[]>();
  for (const cohort of cohorts) {
    const key = `${cohort.species}@${cohort.vessel}`;
    const before = seen.get(key);
    const checks = checksFor(reader, cohort);
    seen.set(
      key,
      checks.map((check, i) =>
        before === undefined
          ? check
          : { ...check, matters: (at: number) => before[i].matters(at) || check.matters(at) },
      ),
    );
  }
  return [...seen.values()].flat();
}
