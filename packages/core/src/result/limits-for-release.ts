import { openAcuteCriterion, openChronicCriterion } from './epa-criteria.js';
import { limitFrom, type LimitCheck, type LimitReader } from './limit-check.js';

/** Salmon and trout that the acute criterion has a value of its own for. */
const oncorhynchus = ['rainbow-trout'];

const always = (): boolean => true;

/** Checks of the water of one vessel, as total ammonia over the criterion at its pH and temperature. */
function checksAt(reader: LimitReader, vessel: string): readonly LimitCheck[] {
  const { parameters } = reader;
  const trout = reader.run.model.scenario.cohorts.some(({ species }) => oncorhynchus.includes(species));
  const tan = reader.values(`tan@${vessel}`);
  const pH = reader.values(`pH@${vessel}`);
  const temperature = reader.values(`temperature@${vessel}`);
  const acuteAt = openAcuteCriterion(parameters, trout);
  const chronicAt = openChronicCriterion(parameters);
  const acute = tan.map((each, i) => each / acuteAt(pH[i], temperature[i]));
  const chronic = tan.map((each, i) => each / chronicAt(pH[i], temperature[i]));
  const criterion = (kind: 'acute' | 'chronic', averaging: string, quantity: string) => ({
    ...limitFrom(parameters, {
      id: `epa.${kind}.factor`,
      averaging,
      quantity,
      unit: '1',
      direction: 'above',
      whom: 'wild life',
    }),
    value: 1,
  });
  const peak = {
    ...criterion('chronic', 'epa.chronic.peak-averaging', 'ammonia-4-day-ratio'),
    value: parameters.value('epa.chronic.peak-factor'),
  };
  const check = (limit: LimitCheck['limit'], values: Float64Array): LimitCheck => ({
    limit,
    place: vessel,
    values,
    matters: always,
  });
  return [
    check(criterion('acute', 'epa.acute.averaging', 'ammonia-acute-ratio'), acute),
    check(criterion('chronic', 'epa.chronic.averaging', 'ammonia-chronic-ratio'), chronic),
    check(peak, chronic),
  ];
}

/**
 * The criteria of US EPA 2013 for ammonia, for the water that would be let out: the reservoir and every
 * vessel that discharges. They protect wild life in the water that receives it, before any dilution.
 */
export function limitsForRelease(reader: LimitReader): readonly LimitCheck[] {
  const { vessels, reservoir } = reader.run.model.scenario;
  return vessels
    .filter(({ name, exchange, leak }) => name === reservoir || exchange > 0 || leak > 0)
    .flatMap(({ name }) => checksAt(reader, name));
}
