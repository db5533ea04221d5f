import type { SavedEnsemble } from '../../../packages/cli/src/files/saved-ensemble.js';
import type { RunSummary } from '@leat/view/report';

/** Texts that would do something if they were read as markup. */
export const nasty = [
  '<script>alert(1)</script>',
  '"><img src=x onerror=alert(1)>',
  "</title></style><svg onload='x()'>",
  '&lt;b&gt; & <b>',
  '--><!-- <![CDATA[ ]]>',
];

/** A run as a saved document may tell it, one text in every place that a document can put text. */
export function saying(text: string, { account, budgets, manifest, sources }: RunSummary): RunSummary {
  const placed = (name: string): string => name.replace('@tank', `@${text}`);
  const named = account.series.map(({ name, unit, values }) => ({
    name: placed(name),
    unit: `${unit}${text}`,
    values,
  }));
  const limits = account.limits.map((limit) => ({
    ...limit,
    ...{ place: text, whom: text, source: text, passed: true },
  }));
  return {
    letter: 'A',
    file: text,
    account: { ...account, title: text, series: named, limits, keys: account.keys.map(placed) },
    budgets,
    events: [{ time: 1, kind: text, place: text, text }],
    manifest: { ...manifest, integrator: text },
    sources: sources.map((source) => ({ ...source, key: text, citation: text })),
  };
}

/** An ensemble as its document may tell it, one text in every place that a document can put text. */
export function ensembleSaying(
  text: string,
  { series, limits, measures, conditions, ...rest }: SavedEnsemble['result'],
): SavedEnsemble['result'] {
  const words = { text, unit: text };
  return {
    ...rest,
    failed: [{ member: 1, reason: text }],
    drawn: [{ id: text }],
    series: series.map((each) => ({ ...each, unit: text })),
    limits: limits.map((each) => ({
      ...each,
      quantity: text,
      unit: text,
      place: text,
      whom: text,
      source: text,
    })),
    measures: measures.map((each) => ({ ...each, ...words })),
    conditions: conditions.map((each) => ({ ...each, ...words })),
  };
}
