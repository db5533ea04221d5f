// Reads numbers as: waters in a file
import { type Dimension, formatQuantity } from '../../base/units.js';
import { openIonicStrength } from '../../chemistry/ions.js';
import { carbonFromPh } from '../../chemistry/acid-base.js';
import { oxygenSaturation } from '../../chemistry/gases.js';
import type { Named } from '../file/report.js';
import type { ScenarioReader } from './scenario-reader.js';
import type { Path } from '../file/tree.js';
import { bounded, number, section, word } from '../file/values.js';
import { most, writtenWaterRanges } from '../checks/ranges.js';
import { pressureShare } from '../../weather/penman-monteith.js';
import type { SourceWater } from '../scenario.js';
import { valueOn } from '../value-on.js';
import type { RunFrame } from './run.js';

/** Keys that say what is in water. */
const waterKeys = {
  like: word(
    'a water of the library (or, at the start, of this file) for whatever is not given; default: none',
  ).optional(),
  ammonia: bounded(
    writtenWaterRanges.ammonia,
    'total ammonia nitrogen; default: that of `like`, else none',
  ).optional(),
  nitrite: bounded(
    writtenWaterRanges.nitrite,
    'nitrite nitrogen; default: that of `like`, else none',
  ).optional(),
  nitrate: bounded(writtenWaterRanges.nitrate, 'nitrate nitrogen; default: that of `like`').optional(),
  alkalinity: bounded(writtenWaterRanges.alkalinity, 'alkalinity; default: that of `like`').optional(),
  pH: number('acidity; default: that of `like`', 4, 10.5).optional(),
  oxygen: bounded(
    writtenWaterRanges.oxygen,
    'dissolved oxygen; default: that of `like`, else saturation',
  ).optional(),
  chloride: bounded(writtenWaterRanges.chloride, 'chloride; default: that of `like`').optional(),
  calcium: bounded(
    writtenWaterRanges.calcium,
    'calcium; default: that of `like`, else in proportion to the alkalinity',
  ).optional(),
};

/** One water of `waters`. */
export const waterSchema = section(waterKeys, 'water from outside');

/** Water in a vessel at the start. */
export const startWaterSchema = section(
  {
    ...waterKeys,
    solids: bounded(writtenWaterRanges.solids, 'all suspended solids, dry; default: none').optional(),
  },
  'water at the start',
);

/** What is in water, apart from its name. */
export type Quality = Omit<SourceWater, 'name'>;

/** Water as written: any of its values may be left to `like` or to a default. */
export interface QualityGiven {
  readonly like?: string | undefined;
  readonly ammonia?: number | undefined;
  readonly nitrite?: number | undefined;
  readonly nitrate?: number | undefined;
  readonly alkalinity?: number | undefined;
  readonly pH?: number | undefined;
  readonly oxygen?: number | undefined;
  readonly chloride?: number | undefined;
  readonly calcium?: number | undefined;
}

type Key = Exclude<keyof QualityGiven, 'like'>;

const dimensions: Record<Exclude<Key, 'pH'>, Dimension> = {
  ammonia: 'ammonia',
  nitrite: 'nitrite',
  nitrate: 'nitrate',
  alkalinity: 'alkalinity',
  oxygen: 'concentration',
  chloride: 'concentration',
  calcium: 'calcium',
};

/** Water at room temperature, degC, where no temperature of the run is known (a fault elsewhere). */
const roomTemperature = 20;

/** Temperature at which water from outside is taken to be: that of the system on the first day, degC. */
function sourceTemperature(frame: RunFrame): number {
  return frame.waterTemperature === undefined
    ? roomTemperature
    : valueOn(frame.waterTemperature, frame.startDate, 0);
}

function writeValue(key: Key, value: number): string | number {
  return key === 'pH' ? value : formatQuantity(value, dimensions[key]);
}

/** Where water is taken to be: its `temperature`, degC, and the pressure of the air, atm. */
interface WaterPlace {
  readonly temperature: number;
  readonly pressure: number;
}

/**
 * Completes water as written. What is not given is that of `like` (a water of the library, or one of
 * `others`); without it ammonia and nitrite are none, oxygen is at saturation, and nitrate, alkalinity,
 * pH and chloride must be given, and calcium is a share of alkalinity. Inorganic carbon follows from alkalinity and pH
 * at `temperature`.
 */
export function completeQuality(
  reader: ScenarioReader,
  path: Path,
  given: QualityGiven,
  { temperature, pressure }: WaterPlace,
  others: Named<SourceWater>,
): Quality | undefined {
  const { parameters } = reader;
  const { like } = given;
  const inLibrary = reader.names('water');
  const known =
    like === undefined || reader.known(like, [...others.keys(), ...inLibrary], [...path, 'like'], 'water');
  if (!known) return undefined;
  const own = like === undefined ? undefined : others.get(like);
  if (like !== undefined && own === undefined && !inLibrary.includes(like)) return undefined;
  let complete = true;
  const value = (key: Key, usual?: () => number): number => {
    const written = given[key];
    if (written !== undefined) return written;
    const at = [...path, key];
    if (own !== undefined && key !== 'pH') return own[key];
    // The row says `tan`, as users write it in tables of their own; a literal, by which `leat show` knows who reads it.
    const id = `water.${like ?? ''}.${key === 'ammonia' ? 'tan' : key.toLowerCase()}`;
    if (like !== undefined && own === undefined && (usual === undefined || parameters.has(id))) {
      const number = parameters.value(id);
      return reader.fallback(at, number, writeValue(key, number));
    }
    if (usual !== undefined) return reader.fallback(at, usual(), writeValue(key, usual()));
    complete = false;
    reader.fault(at, 'missing', { expected: 'a value, or `like` with a water to take it from' });
    return 0;
  };
  const none = (): number => 0;
  const ammonia = value('ammonia', none);
  const alkalinity = value('alkalinity');
  const quality = {
    ammonia,
    nitrite: value('nitrite', none),
    nitrate: value('nitrate'),
    alkalinity,
    oxygen: value('oxygen', () => oxygenSaturation(parameters, temperature, pressure)),
    chloride: value('chloride'),
    calcium: value('calcium', () => alkalinity * parameters.value('water.calcium-share')),
  };
  if (
    own !== undefined &&
    given.pH === undefined &&
    given.alkalinity === undefined &&
    given.ammonia === undefined
  ) {
    return { ...quality, carbon: own.carbon };
  }
  if (own !== undefined && given.pH === undefined) {
    reader.fault([...path, 'pH'], 'missing', { expected: 'a pH beside another alkalinity or ammonia' });
    return undefined;
  }
  const pH = value('pH');
  if (!complete) return undefined;
  const ionic = openIonicStrength(parameters)(quality);
  const carbon = carbonFromPh(parameters, quality.alkalinity, pH, ammonia, temperature, ionic);
  if (carbon >= 0) return { ...quality, carbon };
  reader.fault(
    [...path, reader.has([...path, 'pH']) ? 'pH' : 'alkalinity'],
    'no water of this alkalinity has this pH',
    {
      expected: 'a lower pH, or more alkalinity',
    },
  );
  return undefined;
}

/** Reads the section `waters`. */
export function readWaters(reader: ScenarioReader, frame: RunFrame): Named<SourceWater> {
  const temperature = sourceTemperature(frame);
  const pressure = pressureShare(reader.parameters, frame.altitude);
  return reader.named('waters', most.waters, (path, name) => {
    const given = reader.parse(waterSchema, path);
    const quality =
      given === undefined
        ? undefined
        : completeQuality(reader, path, given, { temperature, pressure }, new Map());
    return quality === undefined ? undefined : { name, ...quality };
  });
}
