import type { ForecastWeights } from '@leat/core';

/** How much of the change that the model has a forecast takes over, 0..1: all of one way, half of another, none of habit. */
export const modelShare = ({ model, half }: ForecastWeights): number => model + half / 2;
