// Reads numbers as: start in a file

import { pow } from '../../base/elementary.js';
import { sum } from '../../base/sum.js';
import type { Parameters } from '../../library/parameters.js';
import { offerOf } from '../offer.js';
import type { Cohort, StartVessel } from '../scenario.js';

/** A cycled film at the start, the surface that it stands on, m2, its water, degC, and the share to which it is cycled, 0..1. */
export interface CycledFilm {
  readonly start: StartVessel;
  readonly surface: number;
  readonly temperature: number;
  readonly share: number;
}

/** TAN of what is fed at the start by the design rule, g N d-1: protein x `limit.tan-per-protein` (Timmons & Ebeling). */
function tanFed(parameters: Parameters, cohorts: Iterable<Cohort>): number {
  const protein = [...cohorts].map(({ ration, number, mass, feed }) => {
    const { fed, share } = offerOf(ration, number * mass, number);
    return (fed + share * number * mass) * feed.protein;
  });
  return sum(protein) * parameters.value('limit.tan-per-protein.value');
}

/**
 * How much of its usual share a group of all cycled films keeps, 0..1: growth on `tan`, g N d-1, stands against decay
 * where yield x tan = decay x cells. `biofilm.cycled-feed` times as many have grown, but no more than films usually hold.
 */
function kept(
  parameters: Parameters,
  films: readonly CycledFilm[],
  group: 'aob' | 'nob',
  tan: number,
): number {
  const room = parameters.value('biofilm.capacity');
  const cells = films.map(({ start, surface }) => start[group] * room * surface);
  const dying = films.map(
    ({ temperature }, i) =>
      cells[i] *
      parameters.value(`${group}.decay`) *
      pow(parameters.value(`${group}.decay-theta`), temperature - 20),
  );
  const growing = parameters.value('biofilm.cycled-feed') * parameters.value(`${group}.yield`) * tan;
  return growing < sum(dying) ? growing / sum(dying) : 1;
}

/**
 * Shares of cycled films, no more than what is fed at the start has grown: on a surface that is large for its feed, sand
 * or a bed of fine stones, a film is thin. Where nothing is fed yet they are as usual: something else has fed them.
 */
export function fedFilms(
  parameters: Parameters,
  films: readonly CycledFilm[],
  cohorts: Iterable<Cohort>,
): ReadonlyMap<string, Pick<StartVessel, 'aob' | 'nob'>> {
  const tan = tanFed(parameters, cohorts);
  const of = (group: 'aob' | 'nob'): number => (tan > 0 ? kept(parameters, films, group, tan) : 1);
  const [aob, nob] = [of('aob'), of('nob')];
  return new Map(films.map(({ start }) => [start.vessel, { aob: start.aob * aob, nob: start.nob * nob }]));
}
