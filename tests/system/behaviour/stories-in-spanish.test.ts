import { afterEvents, harvestOf, openModel, simulate, verdictOf } from '@leat/core';
import { metric } from '@leat/core/units';
import {
  afterLines,
  displayOf,
  harvestLines,
  plainDisplay,
  verdictLines,
  type Display,
} from '@leat/view/text';
import { expect, it } from 'vitest';
import { openStory, told } from '../../support/stories.js';

const spanish = displayOf({ language: 'es', units: metric });

/** Words that both languages write alike, and units. */
const shared = new Set(['tilapia', 'min', 'degc', 'tan']);

const { months } = spanish;

const wordsOf = (text: string): readonly string[] => text.toLowerCase().match(/[a-záéíóúñü]+/g) ?? [];

it.each(Object.entries(told))(
  'the story %s is told in Spanish without a word of English left',
  (_, story) => {
    const { reading } = openStory(story);
    const { scenario } = reading;
    const run = simulate(openModel(reading).model);
    const verdict = verdictOf(run);
    const [after, harvest] = [afterEvents(run), harvestOf(run)];
    const lines = (display: Display): string =>
      [
        ...verdictLines(verdict, scenario.startDate, display),
        ...afterLines(after, scenario.startDate, display),
        ...harvestLines(harvest, display),
      ].join('\n');
    const own = [scenario.vessels, scenario.pumps, scenario.fish, scenario.plantings]
      .flatMap((list) => list.map(({ name }) => name))
      .flatMap(wordsOf);
    const english = new Set(wordsOf(lines(plainDisplay)));
    const left = wordsOf(lines(spanish)).filter(
      (word) =>
        word.length > 2 &&
        english.has(word) &&
        !months.includes(word) &&
        !own.includes(word) &&
        !shared.has(word),
    );
    expect([...new Set(left)]).toEqual([]);
  },
);
