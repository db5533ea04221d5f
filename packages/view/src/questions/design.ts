import {
  aerationFor,
  appetiteOf,
  appetiteShare,
  createParameters,
  massByGrowthCoefficient,
  names,
  type Parameters,
} from '@leat/core';
import type { Answers } from './answers.js';
import { climateOf } from './climate.js';

/** Length of the run, d. */
export const RUN_DAYS = 120;

/** Feed by appetite: this share of what fish eat to satiety (common practice: a little less than they would take). */
export const FED_SHARE = 0.8;

/** Oxygen is held at this share of saturation (common practice: above 5 mg/L, and near 6 in warm water). */
const HELD_AT = 0.75;

/** Least aeration, 1/h: of a tank, of a filter, of a bed (common practice). */
const LEAST_AIR = { tank: 2, filter: 5, bed: 2 } as const;

/** Share of the oxygen demand of the feed for which a filter has air of its own (a guess; tanks have air for all of it). */
const FILTER_SHARE = 0.5;

/** Depths, m (common practice; media beds and rafts of 30 cm, films of channels of 2 cm). */
export const DEPTH = {
  tank: 1,
  raft: 0.3,
  media: 0.3,
  channel: 0.02,
  settler: 1,
  filter: 0.8,
  sump: 0.8,
} as const;

/** Minutes of flow that a settler holds (common practice). */
export const SETTLER_MINUTES = 20;

/** A crop with more days than this from planting to harvest stands as one batch; others are cut in turns. */
const LONG_CROP = 60;

/** Base that a dose brings to the water, eq m-3: 50 mg/L as CaCO3. */
const LIFT = 1;

/** Base that nitrification of 1 g N eats, eq: two for each of 14.007 g. */
const BASE_PER_NITROGEN = 2 / 14.007;

/** A tank with the fish that are put into it. */
interface TankDesign {
  readonly name: string;
  readonly fish: number;
}

/** A bed. */
interface BedDesign {
  readonly name: 'rafts' | 'media-bed' | 'channels';
  readonly kind: 'raft-bed' | 'media-bed' | 'channel';
  /** m2. */
  readonly area: number;
  /** Of water, m3. */
  readonly volume: number;
  /** Share of the water that flows to the beds. */
  readonly share: number;
}

/** A planting. */
interface PlantingDesign {
  readonly name: string;
  readonly bed: string;
  readonly crop: string;
  readonly area: number;
  readonly batches: number;
}

/** What the answers leave open, by rules of thumb: volumes m3, areas m2, aeration h-1, flow m3 h-1, feed g d-1. */
export interface Design {
  readonly tanks: readonly TankDesign[];
  /** Of one tank: m3, and what is pumped to it. */
  readonly tankVolume: number;
  readonly tankFlow: number;
  readonly tankAir: number;
  /** Tank volumes an hour, by `limit.turnover-tank-low`. */
  readonly turnover: number;
  readonly beds: readonly BedDesign[];
  readonly plantings: readonly PlantingDesign[];
  /** Whether tanks flow to a settler: all but those whose media beds are the filter. */
  readonly settler: number | undefined;
  readonly filter: { readonly volume: number; readonly media: number; readonly air: number } | undefined;
  readonly sump: number;
  readonly bedAir: number;
  /** Feed of all fish on the day of most feed. */
  readonly mostFeed: number;
  readonly feedName: string;
  /** Rows of a ration by appetite: from this mass, g, a share of body mass, d-1. */
  readonly rations: readonly { readonly mass: number; readonly perDay: number }[];
  /** Share of appetite by month, January first; empty where feed is weighed or there are no fish. */
  readonly warmth: readonly number[];
  /** Potassium bicarbonate dosed at a time, g. */
  readonly dose: number;
}

/** Months of the run, 0 for January, the first first. */
export function monthsOfRun({ month }: Pick<Answers, 'month'>): readonly number[] {
  const count = Math.ceil(RUN_DAYS / 28);
  return Array.from({ length: count }, (_, index) => (month - 1 + index) % 12);
}

function tanksOf({ tanks, fish }: Answers): readonly TankDesign[] {
  return Array.from({ length: tanks }, (_, index) => ({
    name: `tank-${index + 1}`,
    fish: Math.floor(fish / tanks) + (index < fish % tanks ? 1 : 0),
  }));
}

/** Feed of all fish on the day of most feed, g d-1: by the ration, or by appetite of fish that grew as far as is known. */
function mostFeedOf(parameters: Parameters, answers: Answers): number {
  const { species, fish, feeding, ration } = answers;
  if (fish === 0) return 0;
  if (feeding === 'ration') return ration;
  const { water } = climateOf(answers);
  const months = monthsOfRun(answers).map((month) => water[month]);
  const temperature = months.reduce((sum, each) => sum + each, 0) / months.length;
  const mass = answers['fish-mass'];
  const guess = { mass, temperature, days: RUN_DAYS };
  const grown = Math.max(mass, massByGrowthCoefficient(parameters, species, guess) ?? 2 * mass);
  const at = (each: number): number => FED_SHARE * fish * each * appetiteOf(parameters, species, each);
  return at(grown);
}

/** Masses from which a ration holds, as multiples of that at the start. */
const steps = [1, 1.5, 2, 3, 4.5, 7, 10];

function rationsOf(parameters: Parameters, answers: Answers): Design['rations'] {
  if (answers.fish === 0 || answers.feeding !== 'appetite') return [];
  return steps.map((step) => {
    const mass = step * answers['fish-mass'];
    return { mass, perDay: FED_SHARE * appetiteOf(parameters, answers.species, mass) };
  });
}

function warmthOf(parameters: Parameters, answers: Answers): readonly number[] {
  if (answers.fish === 0 || answers.feeding !== 'appetite') return [];
  return climateOf(answers).water.map((degrees) => appetiteShare(parameters, answers.species, degrees));
}

function bedsOf(parameters: Parameters, answers: Answers): readonly BedDesign[] {
  const isMedia = answers['media-bed-area'] > 0;
  const pores = isMedia ? parameters.value(`media.${answers['bed-medium']}.porosity`) : 1;
  const given = [
    { name: 'rafts', kind: 'raft-bed', area: answers['raft-area'], depth: DEPTH.raft },
    { name: 'media-bed', kind: 'media-bed', area: answers['media-bed-area'], depth: DEPTH.media * pores },
    { name: 'channels', kind: 'channel', area: answers['channel-area'], depth: DEPTH.channel },
  ] as const;
  const total = given.reduce((sum, { area }) => sum + area, 0);
  return given
    .filter(({ area }) => area > 0)
    .map(({ name, kind, area, depth }) => ({ name, kind, area, volume: area * depth, share: area / total }));
}

function plantingsOf(
  parameters: Parameters,
  { crops }: Answers,
  beds: readonly BedDesign[],
): readonly PlantingDesign[] {
  return beds.flatMap(({ name: bed, area }) =>
    crops.map((crop) => ({
      name: beds.length === 1 ? crop : `${crop}-${bed}`,
      ...{ bed, crop, area: area / crops.length },
      batches: parameters.value(`crop.${crop}.days`) > LONG_CROP ? 1 : 4,
    })),
  );
}

/** The feed of the tables that is nearest in protein. */
function feedNameOf(parameters: Parameters, protein: number): string {
  const off = (name: string): number => Math.abs(parameters.value(`feed.${name}.protein`) - protein / 100);
  return names('feed').reduce((a, b) => (off(b) < off(a) ? b : a));
}

/** Where fish are fed, air for what the feed can burn, h-1; never less than the least. */
function airOf(
  parameters: Parameters,
  oxygen: number,
  volume: number,
  warmest: number,
  least: number,
): number {
  const perDay = aerationFor(parameters, { oxygen, volume, temperature: warmest, heldAt: HELD_AT });
  return Math.max(least, perDay / 24);
}

/** What the answers leave open, worked out by rules of thumb; answers are taken to be sound. */
export function designOf(answers: Answers): Design {
  const parameters = createParameters();
  const tankVolume = answers['tank-volume'] / 1000;
  const turnover = parameters.value('limit.turnover-tank-low.value') / 24;
  const flow = answers.tanks * tankVolume * turnover;
  const { water } = climateOf(answers);
  const warmest = Math.max(...monthsOfRun(answers).map((month) => water[month]));
  const mostFeed = mostFeedOf(parameters, answers);
  const feedName = feedNameOf(parameters, answers.protein);
  const burnt = mostFeed * parameters.value(`feed.${feedName}.demand`);
  const tanks = tanksOf(answers);
  const most = answers.fish === 0 ? 0 : tanks[0].fish / answers.fish;
  const beds = bedsOf(parameters, answers);
  const bedWater = beds.reduce((sum, { volume }) => sum + volume, 0);
  const media = answers['medium-volume'] / 1000;
  const isFilter = answers.filter === 'biofilter';
  const settled = isFilter || answers['media-bed-area'] === 0;
  const volume = 2 * media;
  const sump = answers.tanks * tankVolume * 0.25 + bedWater * 0.05;
  const all = answers.tanks * tankVolume + bedWater + 0.75 * sump + (isFilter ? volume : 0);
  const made = mostFeed * (answers.protein / 100) * parameters.value('limit.tan-per-protein.value');
  const base = Math.max(LIFT * all, made * BASE_PER_NITROGEN);
  return {
    ...{ tanks, tankVolume, turnover, tankFlow: tankVolume * turnover, beds, sump, mostFeed, feedName },
    tankAir: airOf(parameters, burnt * most, tankVolume, warmest, LEAST_AIR.tank),
    bedAir: LEAST_AIR.bed,
    plantings: plantingsOf(parameters, answers, beds),
    settler: settled ? (flow * SETTLER_MINUTES) / 60 : undefined,
    filter: isFilter
      ? { volume, media, air: airOf(parameters, burnt * FILTER_SHARE, volume, warmest, LEAST_AIR.filter) }
      : undefined,
    rations: rationsOf(parameters, answers),
    warmth: warmthOf(parameters, answers),
    dose: base / parameters.value('dose.potassium-bicarbonate.alkalinity'),
  };
}
