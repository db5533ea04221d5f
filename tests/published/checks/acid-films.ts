import { createParameters } from '@leat/core';
import { carbonFromPh } from '../../../packages/core/src/chemistry/acid-base.js';
import {
  acclimation,
  acclimationCoefficients,
} from '../../../packages/core/src/processes/kernels/acclimation.js';
import { bareDecay } from '../../../packages/core/src/processes/kernels/resting.js';
import { aobDecay } from '../../../packages/core/src/processes/nitrifiers.js';
import { anyConditions } from '../../../packages/core/src/processes/process.js';
import { flankAfter, restingCells, restingRate, sameCells } from '../../support/held-film.js';
import { about, between, within } from '../tolerance.js';
import type { Topic } from '../published-check.js';

const parameters = createParameters();
const fresh = parameters.value('nitrifier.flank-fresh');

const biesterfeld = { source: 'biesterfeld-2003', mark: 'R' } as const;
/** Rate at pH 7.5 of a film grown there, with so much alkalinity, meq/L. */
const atAlkalinity = (alkalinity: number): number =>
  sameCells({ pH: 7.5, carbon: carbonFromPh(parameters, alkalinity, 7.5, 2, 25) });

/** A film grown in at a pH over the best of films grown in from pH 4 to 8, carbon 1 mol m-3. */
const best = Math.max(...[4, 4.5, 5, 5.5, 6, 6.5, 7, 7.5, 8].map((pH) => restingRate({ pH })));
const ofBest = (pH: number): number => restingRate({ pH }) / best;

/** The flank of a fresh film that has stood so many days in water of a pH: the law of acclimation by small steps. */
function flankIn(pH: number, days: number): number {
  const k = acclimationCoefficients(parameters);
  const v = Float64Array.of(pH, fresh);
  const steps = 1000 * days;
  for (let step = 0; step < steps; step++) v[1] += (days / steps) * acclimation.rate(v, [0, 1], k);
  return v[1];
}

const turnedAcid = (days: number): number =>
  sameCells({ pH: 4.5, flank: flankIn(4.5, days) }) / sameCells({ pH: 4.5, flank: flankAfter(4.5) });

/** Share of bare ammonia oxidisers that dies a day, of so much oxygen (g m-3) and at a temperature: the same at any pH. */
function dying(oxygen: number, temperature: number): number {
  const k = aobDecay.coefficients(parameters, { ...anyConditions, temperature, surface: 1 });
  return bareDecay.rate(Float64Array.of(oxygen, 1, 0), [0, 1, 2], k);
}

const siegrist = {
  source: 'siegrist-1999',
  where: 'abstract: about 0.2 a day with air and 0.03 without, 20 degC',
  mark: 'R',
  unit: '1/d',
} as const;

const tyson = {
  source: 'tyson-2008',
  where: 'abstract: 19 / 31 / 80 g/m3/d at pH 6 / 7 / 8',
  mark: 'R',
} as const;
const steep =
  'the bell of a fresh film falls by a factor of 4 from pH 8 to 6 but only by 1.2 from 8 to 7; no bell goes through 0.24 : 0.39 : 1';
const used =
  'a film at rest has got used to its water here, as films of four other papers had; those of this trial ran at their pH for 58 days and had not';

/** Films in acid water. */
export const acidFilms: Topic = {
  title: 'Nitrifying films in acid water',
  kind: 'process',
  note:
    'A square metre of film in water that is held: 25 degC, TAN 2 mg/L, oxygen 6 mg/L, inorganic carbon 1 mmol/L unless said ' +
    'otherwise. "The same cells" are a film of which only the water is changed, "grown in" one at rest, where growth meets ' +
    'decay. The sources are in conflict: see the row `nitrifier.flank-fresh`.',
  checks: [
    {
      id: 'biesterfeld-ph',
      ...biesterfeld,
      where: 'abstract: no effect of pH from 6.92 to 7.99',
      what: 'rate at pH 6.92 over that at 7.99, the same cells, grown at 7',
      unit: '1',
      ...within(10, 1),
      compute: () =>
        sameCells({ pH: 6.92, flank: flankAfter(7) }) / sameCells({ pH: 7.99, flank: flankAfter(7) }),
    },
    {
      id: 'biesterfeld-alkalinity',
      ...biesterfeld,
      where: 'abstract: no loss from 45 mg/L as CaCO3 on',
      what: 'rate at 45 mg/L of alkalinity over that at 308, pH 7.5',
      unit: '1',
      ...between(0.9, 1),
      chosen: 'aob.k-carbon',
      compute: () => atAlkalinity(0.9) / atAlkalinity(6.16),
    },
    {
      id: 'biesterfeld-impaired',
      ...biesterfeld,
      where: 'abstract: impaired at 40 mg/L as CaCO3 and less',
      what: 'rate at 40 mg/L of alkalinity over that at 45, pH 7.5, to be told apart: under 0.95',
      unit: '1',
      ...between(0, 0.95),
      miss: 'the Monod term falls by 1 % there: a limit as sharp as that is not in the law, and other papers find limits from 0.1 to 3 mmol/L of carbon',
      compute: () => atAlkalinity(0.8) / atAlkalinity(0.9),
    },
    {
      id: 'tarre-4.3',
      source: 'tarre-green-2004',
      where: 'abstract: 5.6 g/L/d at pH 4.3, as high as at neutral pH',
      mark: 'R',
      what: 'rate at pH 4.3 over the best at any pH, each grown in',
      unit: '1',
      ...between(0.8, 1),
      chosen: 'nitrifier.flank-distance, nitrifier.flank-lowest',
      compute: () => ofBest(4.3),
    },
    {
      id: 'chalk-bed-5',
      source: 'tarre-green-2004',
      where: 'abstract of the chalk bed: rates near pH 5 as high as elsewhere',
      mark: 'R',
      what: 'rate at pH 5 over the best at any pH, each grown in',
      unit: '1',
      ...between(0.8, 1),
      chosen: 'nitrifier.flank-distance',
      compute: () => ofBest(5),
    },
    {
      id: 'oligotropha-60',
      source: 'oligotropha-2007',
      where: 'abstract: pH 4.5 after 4 weeks, species exchanged within 60 d',
      mark: 'R',
      what: 'rate at pH 4.5 of a fresh film 60 d after the change, over that of one grown in, the same cells',
      unit: '1',
      ...between(0.8, 1),
      chosen: 'nitrifier.acclimation-time',
      compute: () => turnedAcid(60),
    },
    {
      id: 'oligotropha-14',
      source: 'oligotropha-2007',
      where: 'abstract: pH stayed above 6 for the first 2 weeks',
      mark: 'R',
      what: 'rate at pH 4.5 of a fresh film 14 d after the change, over that of one grown in, the same cells',
      unit: '1',
      ...between(0, 0.6),
      compute: () => turnedAcid(14),
    },
    {
      id: 'villaverde-5',
      source: 'villaverde-1997',
      where: 'abstract: 13 % more for each unit of pH from 5 to 9',
      mark: 'R',
      what: 'rate lost by a unit of pH, mean from pH 8 down to 5, each grown in',
      unit: '%',
      ...about(13, 4, 'points'),
      miss: 'a film that has got used to its water loses 1 % a unit here, as the four papers have it by which that was set; one that has not loses all but a thirtieth by pH 5',
      compute: () => (100 / 3) * (1 - restingRate({ pH: 5 }) / restingRate({ pH: 8 })),
    },
    {
      id: 'yue-back',
      source: 'yue-2023',
      where:
        'abstract: under pH 7 oxidation is impeded, activity not impaired, whatever the time; a day at pH 5 is taken',
      mark: 'R',
      what: 'rate back at pH 7.5 of a film that stood a day at pH 5, over that before, cells that died counted',
      unit: '1',
      ...within(15, 1),
      compute: () =>
        (Math.exp(-dying(6, 25)) * sameCells({ pH: 7.5, flank: flankIn(5, 1) })) /
        sameCells({ pH: 7.5, flank: fresh }),
    },
    {
      id: 'siegrist-air',
      ...siegrist,
      what: 'nitrifying activity that starved cells lose a day in aerated water, 20 degC',
      ...within(25, 0.2),
      miss: 'sludge lost 2.5 times what the sets of films have; so acid water, in which cells starve, kills here no faster than is published',
      compute: () => dying(6, 20),
    },
    {
      id: 'siegrist-no-air',
      ...siegrist,
      what: 'nitrifying activity that starved cells lose a day without oxygen, 20 degC',
      ...about(0.03, 0.01, '1/d'),
      miss: 'none dies without oxygen here: those that lack air for days are stunned instead',
      compute: () => dying(0, 20),
    },
    {
      id: 'wang-cells',
      source: 'wang-2023',
      where: 'abstract: copies unchanged at pH 6.0, 6.5, 7.0',
      mark: 'R',
      what: 'ammonia oxidisers at pH 6.0 over those at 7.0, grown in',
      unit: '1',
      ...within(15, 1),
      compute: () => restingCells({ pH: 6 }) / restingCells({ pH: 7 }),
    },
    {
      id: 'hoang-cold',
      source: 'hoang-2014',
      where: 'abstract: 18 +- 5.1 %',
      mark: 'R',
      what: 'rate at 1 degC over that at 20 degC, each grown in, pH 7.5',
      unit: '1',
      ...about(0.18, 0.051, 'of the rate'),
      compute: () => restingRate({ pH: 7.5, temperature: 1 }) / restingRate({ pH: 7.5, temperature: 20 }),
    },
    {
      id: 'tyson-6-fresh',
      ...tyson,
      what: 'rate at pH 6 over that at pH 8, the same cells, a fresh film',
      unit: '1',
      ...within(25, 19 / 80),
      chosen: 'nitrifier.flank-fresh',
      compute: () => sameCells({ pH: 6, flank: fresh }) / sameCells({ pH: 8, flank: fresh }),
    },
    {
      id: 'tyson-7-fresh',
      ...tyson,
      what: 'rate at pH 7 over that at pH 8, the same cells, a fresh film',
      unit: '1',
      ...within(25, 31 / 80),
      miss: steep,
      compute: () => sameCells({ pH: 7, flank: fresh }) / sameCells({ pH: 8, flank: fresh }),
    },
    {
      id: 'tyson-6-grown',
      ...tyson,
      what: 'rate at pH 6 over that at pH 8, each grown in',
      unit: '1',
      ...within(25, 19 / 80),
      miss: used,
      compute: () => restingRate({ pH: 6 }) / restingRate({ pH: 8 }),
    },
    {
      id: 'tyson-7-grown',
      ...tyson,
      what: 'rate at pH 7 over that at pH 8, each grown in',
      unit: '1',
      ...within(25, 31 / 80),
      miss: used,
      compute: () => restingRate({ pH: 7 }) / restingRate({ pH: 8 }),
    },
  ],
};
