/** What the questions are answered with: one field a question, numbers in the unit of the question. */
export interface Answers {
  readonly tanks: number;
  readonly 'tank-volume': number;
  readonly species: string;
  readonly fish: number;
  readonly 'fish-mass': number;
  readonly feeding: Feeding;
  readonly ration: number;
  readonly protein: number;
  readonly filter: FilterKind;
  readonly medium: string;
  readonly 'medium-volume': number;
  readonly 'raft-area': number;
  readonly 'media-bed-area': number;
  readonly 'bed-medium': string;
  readonly 'channel-area': number;
  readonly crops: readonly string[];
  readonly water: string;
  readonly rationed: 'no' | 'yes';
  readonly 'water-a-day': number;
  readonly roof: number;
  readonly 'rain-tank': number;
  readonly climate: ClimateKind;
  readonly hemisphere: 'north' | 'south';
  readonly 'water-temperatures': readonly number[];
  readonly et0: readonly number[];
  readonly rain: readonly number[];
  readonly cover: 'open' | 'greenhouse';
  readonly month: number;
  readonly place: 'after' | 'before';
  readonly start: 'cycled' | 'new';
}

/** By a ration, or as much as fish eat. */
export type Feeding = 'appetite' | 'ration';

/** A filter of its own, or none: beds do its work. */
export type FilterKind = 'biofilter' | 'beds';

/** A climate of the questions, or one's own months. */
export type ClimateKind = 'warm' | 'temperate' | 'dry' | 'own';

/** Name of a question. */
export type QuestionId = keyof Answers;
