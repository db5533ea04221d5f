import { languages, metric } from '@leat/core/units';
import { type Display, displayOf } from '@leat/view/text';

/** What tells results in the language of an edition; in English where results are not told in it yet. */
export function displayFor(language: string): Display {
  return displayOf({ language: languages.find((each) => each === language) ?? 'en', units: metric });
}
