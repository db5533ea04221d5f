import type { Plain } from '../../scenario/file/tree.js';
import type { Vessel } from '../../scenario/scenario.js';
import type { OpenChange } from './change.js';
import { amountLess, isBox, type PlainFile, tidy, valueAt, withValue } from './file-edit.js';

/** Most air that is added, 1/h, and the steps to it. */
const AIR = { most: 20, steps: 40 };

/** More air in the fish tanks, and in the filter where it lacks air: 1/h added to each. */
export const moreAir: OpenChange = ({ scenario, situation, asked }) => {
  const wanting = situation.passed.some((each) => each === 'oxygen below' || each === 'carbon-dioxide above');
  const held = situation.held === 'oxygen' || situation.held === 'stunned';
  if (!(asked || wanting || held || situation.causes.includes('oxygen'))) return undefined;
  const homes = new Set(scenario.fish.map(({ vessel }) => vessel));
  const aired = scenario.vessels.filter(
    ({ name, kind }) => homes.has(name) || (held && (kind === 'biofilter' || kind === 'media-bed')),
  );
  if (aired.length === 0) return undefined;
  const amount = (steps: number): number => tidy((AIR.most * steps) / AIR.steps);
  const rate = ({ aeration }: Vessel, steps: number): string => `${tidy(aeration / 24 + amount(steps))} 1/h`;
  return {
    ...{ name: 'air', effort: 4, most: AIR.steps, ends: false, unit: '1/h' },
    at: aired.map(({ name }) => name),
    amount,
    apply: (file, steps) =>
      aired.reduce((so, vessel) => {
        const path = ['vessels', vessel.name, 'aeration'];
        const mapped = isBox(valueAt(so, path));
        return withValue(so, mapped ? [...path, 'rate'] : path, rate(vessel, steps));
      }, file),
  };
};

/** Most media that are added, percent of what is there, and the steps to it. */
const MEDIA = { most: 300, steps: 30 };

/** More filter media, in the biofilters or else in every bed that has some: percent more. */
export const moreMedia: OpenChange = ({ scenario, file, situation, asked }) => {
  const hurt = situation.passed.some((each) =>
    /^(un-ionised-ammonia|tan|nitrite\S*|chloride-shortage) above/.test(each),
  );
  if (!(asked || situation.behind || hurt)) return undefined;
  const pathOf = (name: string): readonly string[] => ['vessels', name, 'media', 'volume'];
  const filled = scenario.vessels.filter(({ name }) => typeof valueAt(file, pathOf(name)) === 'string');
  const filters = filled.filter(({ kind }) => kind === 'biofilter');
  const meant = filters.length > 0 ? filters : filled;
  if (meant.length === 0) return undefined;
  const amount = (steps: number): number => (MEDIA.most * steps) / MEDIA.steps;
  return {
    ...{ name: 'media', effort: 4, most: MEDIA.steps, ends: false, unit: '%' },
    at: meant.map(({ name }) => name),
    amount,
    apply: (so, steps) =>
      meant.reduce((changed, { name }) => {
        const path = pathOf(name);
        return withValue(changed, path, amountLess(valueAt(changed, path), 1 + amount(steps) / 100));
      }, so),
  };
};

/** Steps of shade, each of five percent. */
const SHADE = { most: 16, size: 5 };

/** Shade cloth over all crops, which takes light and evaporation: percent. */
export const shade: OpenChange = ({ scenario, file, situation, asked }) => {
  if (!(asked || situation.short) || scenario.plantings.length === 0) return undefined;
  const light = valueAt(file, ['climate', 'light']);
  if (isBox(light) && light['shade'] !== undefined) return undefined;
  // A plain light is that on the crops; a list of months, or a file, cannot stand under a cloth as it is.
  if (isBox(light) && (light['monthly'] !== undefined || light['csv'] !== undefined)) return undefined;
  return {
    ...{ name: 'shade', effort: 4, most: SHADE.most, ends: false, unit: '%', at: [] },
    amount: (steps) => steps * SHADE.size,
    apply: (so, steps) => {
      const under: PlainFile =
        typeof light === 'string' ? { outdoors: light, cover: '100 %' } : isBox(light) ? light : {};
      return withValue(so, ['climate', 'light'], { ...under, shade: `${steps * SHADE.size} %` });
    },
  };
};

/** Most degrees by which water is warmed. */
const WARMER = 20;

/** The temperature as it is written, nowhere below so many degC; undefined where it is written in another way. */
function atLeast(written: Plain | undefined, least: number): Plain | undefined {
  const raised = (value: Plain): Plain => (typeof value === 'number' ? Math.max(value, least) : value);
  if (typeof written === 'string') {
    const match = /^\s*([\d.]+)\s*degC\s*$/.exec(written);
    return match === null ? undefined : `${Math.max(Number(match[1]), least)} degC`;
  }
  if (!isBox(written) || written['unit'] !== 'degC' || !Array.isArray(written['monthly'])) return undefined;
  return { ...written, monthly: (written['monthly'] as readonly Plain[]).map(raised) };
}

/** Water heated so that it is never colder than so many degC. */
export const heat: OpenChange = ({ file, situation, scenario, asked }) => {
  const cold = situation.passed.includes('temperature below') || situation.held === 'cold';
  if (!(asked || cold || situation.causes.includes('cold'))) return undefined;
  const path = ['climate', 'water-temperature'];
  const written = valueAt(file, path);
  if (atLeast(written, 0) === undefined) return undefined;
  const coldest = Math.min(
    ...scenario.vessels.flatMap(({ temperature }) =>
      temperature.kind === 'constant' ? [temperature.value] : temperature.values,
    ),
  );
  const amount = (steps: number): number => Math.floor(coldest) + steps;
  return {
    ...{ name: 'heat', effort: 4, most: WARMER, ends: false, unit: 'degC', at: [] },
    amount,
    apply: (so, steps) => withValue(so, path, atLeast(valueAt(so, path), amount(steps)) ?? written ?? null),
  };
};
