import type { RepeatedAction } from '@leat/core';
import { percent, shown } from './numbers.js';

const litres = (volume: number): string => `${shown(volume * 1000)} L`;

/** An action that repeats, in words, such as `480 g potassium-bicarbonate into sump every 14 d`. */
export function actionPhrase({ action, every }: RepeatedAction): string {
  const often = `every ${shown(every)} d`;
  switch (action.kind) {
    case 'dose':
      return `${shown(action.mass)} g ${action.product} into ${action.vessel} ${often}`;
    case 'drain-solids':
      return `${percent(action.share)} of the solids of ${action.vessel} and ${litres(action.water)} ${often}`;
    case 'change-water': {
      const much = action.volume === undefined ? percent(action.share ?? 0) : litres(action.volume);
      return `${much} of ${action.vessel} changed for ${action.water} ${often}`;
    }
  }
}
