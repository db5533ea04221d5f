import { cautions } from './cautions.js';
import type { SizeTold } from './size.js';
import { savedDocument } from './saved-document.js';

/** A search for a size as one JSON document. What has no number (a margin without an answer, a size beyond the range) is null. */
export function sizeDocument(told: SizeTold): string {
  const { title, varied, want, conditions, answer, handbook, reasons, at, drawn } = told;
  const document = {
    title,
    vary: varied,
    want,
    keep: conditions.map(({ text, unit }) => ({ text, unit })),
    ...answer,
    handbook: handbook ?? null,
    ...(reasons === undefined ? {} : { reasons: { at, ...reasons } }),
    ...(drawn === undefined ? {} : { drawn }),
    cautions,
  };
  return savedDocument('leat-size', document);
}
