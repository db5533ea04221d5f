import { createParameters, handbookFilter } from '@leat/core';
import { printed, within } from '../tolerance.js';
import type { Topic } from '../published-check.js';

const parameters = createParameters();

/** 172 kg of feed a day; exchanged water takes the ammonia down from 5.16 to 4 kg. */
const trickling = () =>
  handbookFilter({
    feed: 172_000,
    ammoniaPerFeed: 0.03,
    dilution: 1160,
    arealRate: 0.2,
    specificSurface: 245,
  });

/** 200 g of 32 % feed; 0.61 of its nitrogen excreted; as NH3 (x 1.2). */
const gravel = () =>
  handbookFilter({
    feed: 200,
    ammoniaPerFeed: 0.32 * parameters.value('protein.nitrogen') * 0.61 * 1.2,
    arealRate: 0.57,
    specificSurface: 300,
  });

const miller = { source: 'miller-slides', where: 'worked sizing example, 15 degC', mark: 'R' } as const;
const fao = { source: 'fao-589', where: 'App. 4, worked example', mark: 'M' } as const;

/** Sizing by areal rate. */
export const filterSizing: Topic = {
  title: 'Sizing examples',
  kind: 'formula',
  note: 'By `handbookFilter`, which the model does not use: it stands beside the answer of the model.',
  checks: [
    {
      id: 'trickling-surface',
      ...miller,
      what: 'surface for 172 kg of feed a day',
      unit: 'm2',
      ...printed('20000'),
      compute: () => trickling().surface,
    },
    {
      id: 'trickling-volume',
      ...miller,
      what: 'trickling media at 245 m2/m3',
      unit: 'm3',
      ...printed('81.6'),
      compute: () => trickling().volume,
    },
    {
      id: 'gravel-load',
      ...fao,
      what: 'NH3 from 200 g of feed',
      unit: 'g/d',
      ...printed('7.50'),
      compute: () => gravel().load,
    },
    {
      id: 'gravel-surface',
      ...fao,
      what: 'surface for 200 g of feed a day',
      unit: 'm2',
      ...printed('13.15'),
      compute: () => gravel().surface,
    },
    {
      id: 'gravel-volume',
      ...fao,
      what: 'volcanic gravel at 300 m2/m3',
      unit: 'L',
      ...printed('43.8'),
      compute: () => 1000 * gravel().volume,
    },
    {
      id: 'design-rate-as-n',
      source: 'fao-589',
      where: 'App. 4: 0.57 g NH3/m2/d, as N',
      mark: 'C',
      what: 'design rate of the tables',
      unit: 'g N/(m2 d)',
      ...within(1, (0.57 * parameters.value('molar.nitrogen')) / parameters.value('molar.ammonia')),
      compute: () => parameters.value('limit.areal-rate-fao.value'),
    },
  ],
};
