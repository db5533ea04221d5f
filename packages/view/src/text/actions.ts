import type { RepeatedAction } from '@leat/core';
import { type Display, plainDisplay } from '../display/display.js';
import { percent, shown } from './numbers.js';

/** An action that repeats, in words, such as `480 g potassium-bicarbonate into sump every 14 d`. */
export function actionPhrase({ action, every }: RepeatedAction, display: Display = plainDisplay): string {
  const { actions } = display.words.text;
  const often = actions.every(shown(every, display));
  const litres = (volume: number): string => display.amount(volume * 1000, 'L');
  switch (action.kind) {
    case 'dose': {
      const { product } = action;
      const told = display.words.names.terms[product] ?? product;
      return actions.dose(display.amount(action.mass, 'g'), told, action.vessel, often);
    }
    case 'drain-solids':
      return actions.drainSolids(percent(action.share, display), action.vessel, litres(action.water), often);
    case 'change-water': {
      const much = action.volume === undefined ? percent(action.share ?? 0, display) : litres(action.volume);
      return actions.changeWater(much, action.vessel, action.water, often);
    }
  }
}
