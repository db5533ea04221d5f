import {
  type Lesson,
  lessonElement,
  type LessonWords,
  type Stage,
  teachersAnswer,
  worksheet,
} from '@leat/view/lesson';
import type { Edition } from '../support/edition.js';
import type { Shared } from '../support/words.js';
import { oneTank } from './01-one-tank-and-a-tap.js';
import { balance } from './02-reading-a-nitrogen-balance.js';
import { feed } from './03-where-the-feed-goes.js';
import { biofilter } from './04-starting-a-biofilter.js';
import { alkalinity } from './05-alkalinity-and-why-ph-falls.js';
import { unplanted } from './06-unplanted-beds.js';
import { drought } from './07-drought.js';
import { suddenStock } from './08-sudden-stock.js';
import { sizing } from './09-sizing-a-filter-before-you-buy-it.js';
import { howSure } from './10-how-sure-are-we.js';
import { ownLog } from './11-your-own-log.js';
import { notKnown } from './12-what-this-model-does-not-know.js';
import { testKit } from './13-reading-a-test-kit.js';
import { pumpStopped } from './14-the-pump-stopped-at-night.js';
import { droughtSummer } from './15-a-drought-summer.js';
import { designAFarm } from './16-design-a-farm.js';

type Key = keyof Edition['lessons'];
type Group = keyof Edition['site']['groups'];

/** A lesson with its words to be had from any edition. */
export interface BoundLesson {
  readonly id: string;
  readonly group: Group;
  readonly words: (edition: Edition) => LessonWords;
  readonly element: (edition: Edition, stage: Stage) => HTMLElement;
  readonly worksheet: (edition: Edition, stage: Stage) => HTMLElement;
  readonly answers: (edition: Edition, stage: Stage) => HTMLElement;
}

function bound<K extends Key>(
  group: Group,
  key: K,
  lesson: Lesson<Edition['lessons'][K] & Shared>,
): BoundLesson {
  const words = (edition: Edition): Edition['lessons'][K] & Shared => {
    const { names, logColumns } = edition;
    const shared: Shared = { names, logColumns };
    return Object.assign({}, edition.lessons[key], shared);
  };
  return {
    ...{ id: lesson.id, group, words },
    element: (edition, stage) => lessonElement(lesson, words(edition), stage),
    worksheet: (edition, stage) => worksheet(lesson, words(edition), stage),
    answers: (edition, stage) => teachersAnswer(lesson, words(edition), stage),
  };
}

/** All lessons, group by group in the order in which they are best taken. */
export const lessons: readonly BoundLesson[] = [
  bound('begin', 'oneTank', oneTank),
  bound('begin', 'testKit', testKit),
  bound('nitrogen', 'balance', balance),
  bound('nitrogen', 'feed', feed),
  bound('nitrogen', 'unplanted', unplanted),
  bound('filter', 'biofilter', biofilter),
  bound('filter', 'alkalinity', alkalinity),
  bound('filter', 'suddenStock', suddenStock),
  bound('filter', 'pumpStopped', pumpStopped),
  bound('water', 'drought', drought),
  bound('water', 'droughtSummer', droughtSummer),
  bound('design', 'sizing', sizing),
  bound('design', 'designAFarm', designAFarm),
  bound('trust', 'howSure', howSure),
  bound('trust', 'ownLog', ownLog),
  bound('trust', 'notKnown', notKnown),
];
