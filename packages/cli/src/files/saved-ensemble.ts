import { ensembleResult, openAccumulator } from '@leat/core';
import type { EnsembleSummary } from '@leat/view/report';
import { z } from 'zod';
import { isPart, mostBytes, readPart } from './ensemble-part.js';
import { checkLengths, savedLimit, savedNumber, wholeDocument } from './document-schema.js';
import { FileError, readBytes, reasonOf } from './read.js';
import { documentIn, formFault, sealFault } from './saved-document.js';

const numbers = z.array(savedNumber).transform((values) => Float64Array.from(values));
const edges = z.tuple([savedNumber, savedNumber]);
const bands = z.object({ median: savedNumber, band50: edges, band90: edges });
const note = z.object({ member: z.number(), reason: z.string() });

const limit = z.object({
  ...savedLimit,
  ...{ judged: z.number(), passed: z.number(), probability: savedNumber, first: bands, total: bands },
});

const asked = z.object({
  ...bands.shape,
  ...{ text: z.string(), unit: z.string(), unanswered: note.nullable(), answered: z.number() },
  ...{ mean: savedNumber, deviation: savedNumber, lowest: savedNumber, highest: savedNumber },
});

/** The document of `leat ensemble --json`, as far as a report reads it. */
const ensembleSchema = z
  .object({
    title: z.string(),
    manifest: z.object({
      scenario: z.string(),
      sampling: z.object({
        method: z.enum(['latin-hypercube', 'sobol']),
        members: z.number(),
        seed: z.number(),
      }),
    }),
    ran: z.number(),
    failed: z.array(note),
    drawn: z.array(z.object({ id: z.string() })),
    time: z.array(z.number()).nonempty(),
    series: z.record(
      z.string(),
      z.object({
        ...{ unit: z.string(), median: numbers, resolution: savedNumber },
        ...{ band50: z.tuple([numbers, numbers]), band90: z.tuple([numbers, numbers]) },
      }),
    ),
    limits: z.array(limit),
    measures: z.array(asked),
    conditions: z.array(asked.extend({ holds: z.number(), share: savedNumber })),
  })
  .superRefine(({ time, series }, context) => {
    const lists = Object.entries(series).map(
      ([name, { median, band50, band90 }]) => [name, [median, ...band50, ...band90]] as const,
    );
    checkLengths(context, time, Object.fromEntries(lists));
  });

/** An ensemble as it was kept. */
export interface SavedEnsemble {
  readonly file: string;
  /** Title of the system. */
  readonly title: string;
  /** Hash of the scenario, as in the manifest of its run. */
  readonly scenario: string;
  readonly result: EnsembleSummary;
}

const wanted = 'expected a document of leat ensemble --json, or a file of leat ensemble --out';

function fromDocument(file: string, document: unknown): SavedEnsemble {
  const data = wholeDocument(file, 'leat ensemble --json', ensembleSchema, document);
  const { title, manifest, time: times, series, ...rest } = data;
  const { scenario, sampling } = manifest;
  const named = Object.entries(series).map(([name, each]) => ({ name, ...each }));
  return { file, title, scenario, result: { ...rest, sampling, times, series: named } };
}

function fromPart(file: string): SavedEnsemble {
  const { outline, sampling, accumulated: state } = readPart(file);
  const accumulator = openAccumulator(outline, sampling.members);
  accumulator.merge(state);
  return {
    ...{ file, title: outline.title, scenario: outline.scenario },
    result: ensembleResult(outline, sampling, accumulator),
  };
}

/**
 * Reads what `leat ensemble` kept: the document of `--json`, or the file of `--out` (also one that is not whole: what it
 * says is of the members that ran). Throws FileError, naming the first place that is not as it should be.
 */
export function readEnsemble(file: string): SavedEnsemble {
  let bytes: Buffer;
  try {
    bytes = readBytes(file, mostBytes);
  } catch (error) {
    throw new FileError(`${file}: cannot be read: ${reasonOf(error)}`);
  }
  if (isPart(bytes)) return fromPart(file);
  const document = documentIn(file, bytes.toString('utf8'));
  const manifest =
    typeof document === 'object' && document !== null && 'manifest' in document
      ? document.manifest
      : undefined;
  if (typeof manifest !== 'object' || manifest === null)
    throw new FileError(`${file}: not an ensemble; ${wanted}`);
  if (!('ensemble' in manifest))
    throw new FileError(`${file}: the document of one run, not of an ensemble; ${wanted}`);
  const other = formFault(file, document, 'leat-ensemble');
  if (other !== undefined) throw other;
  const whole = fromDocument(file, document);
  const changed = sealFault(file, document);
  if (changed !== undefined) throw changed;
  return whole;
}
