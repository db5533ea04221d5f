import { seriesOf } from '@leat/core';
import type { Run } from '../../../packages/core/src/run/run.js';
import { lengthOf, nitrogenWith } from './last-days.js';
import type { SystemCase } from './system-case.js';
import { fed, feedMass } from './unit-quantities.js';

const ends = (run: Run, name: string): { start: number; end: number } => {
  const { values } = seriesOf(run, name);
  return { start: values[0], end: values[values.length - 1] };
};

/** Gain of the living fish, g. */
function gain(run: Run): number {
  const { start, end } = ends(run, 'fish-mass@fish');
  return end - start;
}

/** Nitrogen kept by the fish, dead ones too, % of the feed. */
function kept(run: Run): number {
  const body = run.model.parameters.value('fish.nile-tilapia.body-nitrogen');
  return (100 * (gain(run) * body - nitrogenWith(run, 'dead fish'))) / fed(run);
}

/** Nitrogen in faeces, % of the nitrogen eaten. */
const faecal = (run: Run): number =>
  100 * (1 - run.model.parameters.value('fish.nile-tilapia.protein-digestibility'));

/** Water that came in, % of the volume a day. */
function renewal(run: Run): number {
  const { carried } = run.samples[run.samples.length - 1];
  const into = run.model.streams.reduce(
    (sum, { kind }, stream) => (kind === 'top-up' ? sum + carried[stream] : sum),
    0,
  );
  return (100 * into) / lengthOf(run) / 2.25;
}

/** Fresh mass of a head of lettuce at the end, g. */
function head(run: Run): number {
  const { parameters } = run.model;
  const dry = ends(run, 'crop-mass@lettuce').end / 4;
  return (
    dry /
    parameters.value('crop.lettuce-butterhead.dry-matter') /
    parameters.value('crop.lettuce-butterhead.density')
  );
}

/** Tilapia and lettuce in a greenhouse. */
export const quillere1995: SystemCase = {
  name: 'Tilapia and lettuce, 2.25 m3',
  publication: 'Quillere et al. 1995, Agric. Ecosyst. Environ. 53:19-30',
  file: 'quillere-1995',
  draws: 61,
  runs: {
    adults: [],
    fingerlings: [
      { path: 'fish.fish.number', value: '370' },
      { path: 'fish.fish.mass', value: '20 g' },
      { path: 'fish.fish.ration', value: '3 %/d' },
      // While they weigh about the 7.4 kg that are published: they treble within 50 d.
      { path: 'days', value: '20' },
    ],
  },
  quantities: [
    {
      what: 'nitrogen kept by adults, of feed',
      unit: '%',
      published: { low: 18, high: 32 },
      where: 'all fish; 32 is for fingerlings',
      mark: 'S',
      value: ({ adults }) => kept(adults),
    },
    {
      what: 'nitrogen kept by fingerlings, of feed',
      unit: '%',
      published: { low: 18, high: 32 },
      where: 'all fish; 32 is for fingerlings',
      mark: 'S',
      value: ({ fingerlings }) => kept(fingerlings),
    },
    {
      what: 'nitrogen in faeces, of eaten',
      unit: '%',
      published: { low: 9.5, high: 10.5 },
      where: 'about 10 %',
      mark: 'S',
      value: ({ adults }) => faecal(adults),
      chosen: 'the digestibility of the library is from here',
    },
    {
      what: 'feed per gain, adults',
      unit: 'g/g',
      published: { low: 1.85, high: 1.95 },
      where: 'adults',
      mark: 'S',
      value: ({ adults }) => feedMass(adults) / gain(adults),
    },
    {
      what: 'feed per gain, fingerlings',
      unit: 'g/g',
      published: { low: 1.25, high: 1.61 },
      where: 'fingerlings',
      mark: 'S',
      value: ({ fingerlings }) => feedMass(fingerlings) / gain(fingerlings),
    },
    {
      what: 'renewal of water',
      unit: '%/d',
      published: { low: 3.5, high: 9 },
      where: 'share of the volume',
      mark: 'S',
      value: ({ adults }) => renewal(adults),
      chosen: 'all but what evaporates is a discharge of 4 %/d that was assumed',
    },
    {
      what: 'mass of a head of lettuce after 68 d in winter',
      unit: 'g',
      published: { low: 101, high: 325 },
      where: 'eight cultivars',
      mark: 'S',
      value: ({ adults }) => head(adults),
    },
  ],
};
