import { version, type Bands, type EnsembleResult } from '@leat/core';
import { cautions } from '../render/cautions.js';
import { ensembleId, type EnsemblePart } from './ensemble-part.js';
import { savedDocument } from '../render/saved-document.js';

const bands = ({ median, band50, band90 }: Bands): Bands => ({ median, band50, band90 });

/** An ensemble as one JSON document. Numbers that JSON lacks (nobody there) are null. */
export function ensembleDocument(part: EnsemblePart, result: EnsembleResult): string {
  const { outline, sampling } = part;
  const document = {
    title: outline.title,
    manifest: { version, scenario: outline.scenario, ensemble: ensembleId(part), sampling },
    members: sampling.members,
    ran: result.ran,
    failed: result.failed,
    drawn: result.drawn,
    time: result.times,
    series: Object.fromEntries(
      result.series.map(({ name, unit, median, band50, band90, resolution }) => [
        name,
        {
          unit,
          median: Array.from(median),
          band50: band50.map((edge) => Array.from(edge)),
          band90: band90.map((edge) => Array.from(edge)),
          resolution,
        },
      ]),
    ),
    keys: part.keys,
    limits: result.limits.map((limit) => ({
      ...limit,
      first: bands(limit.first),
      total: bands(limit.total),
    })),
    measures: result.measures,
    conditions: result.conditions,
    cautions,
  };
  return savedDocument('leat-ensemble', document);
}
