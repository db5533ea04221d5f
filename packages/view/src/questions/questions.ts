import {
  capRanges,
  cohortRanges,
  dailyRanges,
  feedRanges,
  names,
  plantingRanges,
  rainTankRanges,
  rationRanges,
  vesselRanges,
} from '@leat/core';
import type { Answers, QuestionId } from './answers.js';
import { climateYears } from './climate.js';
import { type Limits, limitsIn } from './limits.js';

/** The ten groups of questions, in order. */
export const groups = [
  'tanks',
  'fish',
  'feed',
  'filter',
  'beds',
  'crops',
  'water',
  'climate',
  'place',
  'start',
] as const;

/** A group of questions. */
export type QuestionGroup = (typeof groups)[number];

/** When a question is asked: where another is answered by one of some words, or one of some numbers is above 0. */
export type Applies =
  | { readonly question: QuestionId; readonly is: readonly string[] }
  | { readonly anyAboveZero: readonly QuestionId[] };

interface Asked {
  readonly id: QuestionId;
  readonly group: QuestionGroup;
  /** All of these must hold; absent: always asked. */
  readonly when?: readonly Applies[];
}

/** A number with its unit. */
export interface NumberQuestion extends Asked {
  readonly kind: 'number';
  /** As a file writes it; empty where things are counted. */
  readonly unit: string;
  /** What it may be, in `unit`: by the bounds of the system file, or those of these questions. */
  readonly limits: Limits;
  /** Usual values, in `unit`: the ends of a slider, not of what may be answered. */
  readonly usual: readonly [low: number, high: number];
  readonly step: number;
  readonly default: number;
}

/** One of some words. */
export interface ChoiceQuestion extends Asked {
  readonly kind: 'choice';
  readonly options: readonly string[];
  readonly default: string;
}

/** Some of some words, none too. */
export interface SeveralQuestion extends Asked {
  readonly kind: 'several';
  readonly options: readonly string[];
  readonly default: readonly string[];
}

/** Twelve numbers, January first. */
export interface MonthsQuestion extends Asked {
  readonly kind: 'months';
  readonly unit: string;
  readonly limits: Limits;
  readonly usual: readonly [low: number, high: number];
  readonly step: number;
  readonly default: readonly number[];
}

/** A question. */
export type Question = NumberQuestion | ChoiceQuestion | SeveralQuestion | MonthsQuestion;

const beds = ['raft-area', 'media-bed-area', 'channel-area'] as const;
const ofFilter: readonly Applies[] = [{ question: 'filter', is: ['biofilter'] }];
const ofBeds: readonly Applies[] = [{ anyAboveZero: beds }];
const ofOwnClimate: readonly Applies[] = [{ question: 'climate', is: ['own'] }];

const area = (id: (typeof beds)[number], value: number): NumberQuestion => ({
  ...{ id, group: 'beds', kind: 'number', unit: 'm2' },
  // None is answered by 0; a bed that is there has an area as plantings have.
  limits: limitsIn({ ...plantingRanges.area, above: false }, 'm2'),
  ...{ usual: [0, 50], step: 0.5, default: value },
});

/** Questions of tanks, fish and feed. At most twelve tanks are drawn up: more are written into the file. */
const ofFish = (): readonly Question[] => [
  {
    ...{ id: 'tanks', group: 'tanks', kind: 'number', unit: '' },
    limits: limitsIn({ kind: 'count', low: 1, high: 12 }, ''),
    ...{ usual: [1, 12], step: 1, default: 1 },
  },
  {
    ...{
      id: 'tank-volume',
      group: 'tanks',
      kind: 'number',
      unit: 'L',
      limits: limitsIn(vesselRanges.volume, 'L'),
    },
    ...{ usual: [100, 10_000], step: 50, default: 1000 },
  },
  { id: 'species', group: 'fish', kind: 'choice', options: names('fish'), default: 'nile-tilapia' },
  {
    ...{ id: 'fish', group: 'fish', kind: 'number', unit: '', limits: limitsIn(cohortRanges.number, '') },
    ...{ usual: [0, 500], step: 1, default: 30 },
  },
  {
    ...{
      id: 'fish-mass',
      group: 'fish',
      kind: 'number',
      unit: 'g',
      limits: limitsIn(cohortRanges.mass, 'g'),
    },
    ...{ usual: [1, 1000], step: 1, default: 80 },
    when: [{ anyAboveZero: ['fish'] }],
  },
  {
    ...{ id: 'feeding', group: 'feed', kind: 'choice', options: ['appetite', 'ration'] },
    ...{ default: 'appetite', when: [{ anyAboveZero: ['fish'] }] },
  },
  {
    ...{
      id: 'ration',
      group: 'feed',
      kind: 'number',
      unit: 'g/d',
      limits: limitsIn(rationRanges.gramsPerDay, 'g/d'),
    },
    ...{ usual: [0, 2000], step: 5, default: 80 },
    when: [{ anyAboveZero: ['fish'] }, { question: 'feeding', is: ['ration'] }],
  },
  {
    ...{ id: 'protein', group: 'feed', kind: 'number', unit: '%', limits: limitsIn(feedRanges.protein, '%') },
    ...{ usual: [20, 50], step: 1, default: 32, when: [{ anyAboveZero: ['fish'] }] },
  },
];

const ofPlants = (): readonly Question[] => [
  { id: 'filter', group: 'filter', kind: 'choice', options: ['biofilter', 'beds'], default: 'biofilter' },
  {
    ...{ id: 'medium', group: 'filter', kind: 'choice', options: names('media') },
    ...{ default: 'moving-bed-carrier', when: ofFilter },
  },
  {
    ...{
      id: 'medium-volume',
      group: 'filter',
      kind: 'number',
      unit: 'L',
      limits: limitsIn(vesselRanges.volume, 'L'),
    },
    ...{ usual: [5, 2000], step: 5, default: 60, when: ofFilter },
  },
  area('raft-area', 6),
  area('media-bed-area', 0),
  {
    ...{ id: 'bed-medium', group: 'beds', kind: 'choice', options: names('media') },
    ...{ default: 'expanded-clay', when: [{ anyAboveZero: ['media-bed-area'] }] },
  },
  area('channel-area', 0),
  {
    ...{ id: 'crops', group: 'crops', kind: 'several', when: ofBeds },
    options: names('crop').filter((crop) => crop !== 'seedling-tray'),
    default: ['lettuce-butterhead', 'basil'],
  },
];

const ofWater = (): readonly Question[] => [
  {
    ...{ id: 'water', group: 'water', kind: 'choice', default: 'soft-mains' },
    options: names('water').filter((water) => water !== 'rain'),
  },
  { id: 'rationed', group: 'water', kind: 'choice', options: ['no', 'yes'], default: 'no' },
  {
    ...{
      id: 'water-a-day',
      group: 'water',
      kind: 'number',
      unit: 'L',
      limits: limitsIn(capRanges.dailyCap, 'L'),
    },
    ...{ usual: [0, 500], step: 5, default: 100, when: [{ question: 'rationed', is: ['yes'] }] },
  },
  {
    ...{
      id: 'roof',
      group: 'water',
      kind: 'number',
      unit: 'm2',
      limits: limitsIn(rainTankRanges.roof, 'm2'),
    },
    ...{ usual: [0, 200], step: 1, default: 0 },
  },
  {
    ...{
      id: 'rain-tank',
      group: 'water',
      kind: 'number',
      unit: 'L',
      limits: limitsIn(rainTankRanges.capacity, 'L'),
    },
    ...{ usual: [100, 20_000], step: 100, default: 1000, when: [{ anyAboveZero: ['roof'] }] },
  },
];

const ofClimate = (): readonly Question[] => [
  {
    ...{ id: 'climate', group: 'climate', kind: 'choice', default: 'dry' },
    options: [...Object.keys(climateYears), 'own'],
  },
  {
    ...{ id: 'hemisphere', group: 'climate', kind: 'choice', options: ['north', 'south'], default: 'north' },
    when: [{ question: 'climate', is: Object.keys(climateYears) }],
  },
  {
    ...{ id: 'water-temperatures', group: 'climate', kind: 'months', unit: 'degC' },
    ...{
      limits: limitsIn(dailyRanges.water, 'degC'),
      usual: [5, 35],
      step: 0.5,
      default: climateYears.dry.water,
    },
    when: ofOwnClimate,
  },
  {
    ...{ id: 'et0', group: 'climate', kind: 'months', unit: 'mm/d' },
    ...{
      limits: limitsIn(dailyRanges.et0, 'mm/d'),
      usual: [0, 12],
      step: 0.1,
      default: climateYears.dry.et0,
    },
    when: ofOwnClimate,
  },
  {
    ...{ id: 'rain', group: 'climate', kind: 'months', unit: 'mm/d' },
    ...{
      limits: limitsIn(dailyRanges.rain, 'mm/d'),
      usual: [0, 20],
      step: 0.1,
      default: climateYears.dry.rain,
    },
    when: [...ofOwnClimate, { anyAboveZero: ['roof'] }],
  },
  { id: 'cover', group: 'climate', kind: 'choice', options: ['open', 'greenhouse'], default: 'greenhouse' },
  {
    ...{
      id: 'month',
      group: 'climate',
      kind: 'number',
      unit: '',
      limits: limitsIn({ kind: 'count', low: 1, high: 12 }, ''),
    },
    ...{ usual: [1, 12], step: 1, default: 3 },
  },
  {
    ...{ id: 'place', group: 'place', kind: 'choice', options: ['after', 'before'], default: 'after' },
    when: [...ofFilter, ...ofBeds],
  },
  { id: 'start', group: 'start', kind: 'choice', options: ['cycled', 'new'], default: 'cycled' },
];

/** The questions in the order in which they are asked; each only depends on those before it. */
export const questions: readonly Question[] = /* @__PURE__ */ Object.freeze([
  ...ofFish(),
  ...ofPlants(),
  ...ofWater(),
  ...ofClimate(),
]);

/** Every question answered by its default: a small sound system of the questions, invented. */
export function defaultAnswers(): Answers {
  return Object.fromEntries(questions.map(({ id, default: value }) => [id, value])) as unknown as Answers;
}

/** Whether a question is asked after these answers. */
export function isAsked({ when = [] }: Pick<Question, 'when'>, answers: Answers): boolean {
  return when.every((condition) =>
    'question' in condition
      ? condition.is.includes(String(answers[condition.question]))
      : condition.anyAboveZero.some((id) => Number(answers[id]) > 0),
  );
}
