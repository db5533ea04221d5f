import type { RepeatedDeed } from '@leat/core';
import { percent, shown } from './numbers.js';

const litres = (volume: number): string => `${shown(volume * 1000)} L`;

/** A deed that repeats, in words, such as `480 g potassium-bicarbonate into sump every 14 d`. */
export function deedWords({ deed, every }: RepeatedDeed): string {
  const often = `every ${shown(every)} d`;
  switch (deed.kind) {
    case 'dose':
      return `${shown(deed.mass)} g ${deed.product} into ${deed.vessel} ${often}`;
    case 'drain-solids':
      return `${percent(deed.share)} of the solids of ${deed.vessel} and ${litres(deed.water)} ${often}`;
    case 'change-water': {
      const much = deed.volume === undefined ? percent(deed.share ?? 0) : litres(deed.volume);
      return `${much} of ${deed.vessel} changed for ${deed.water} ${often}`;
    }
    default:
      return `${deed.kind} ${often}`;
  }
}
