import { ensembleResult, openTally, type EnsembleResult, type TableRow } from '@leat/core';
import type { z } from 'zod';
import { FileError, reasonOf } from '../file-error.js';
import { ensembleSchema } from './document-schema.js';
import { formFault } from '../form-fault.js';
import { readBytes } from '../read-bytes.js';
import { isPart, mostBytes, readPart } from './part-file.js';

/** An ensemble as it was kept. */
export interface KeptEnsemble {
  readonly file: string;
  /** Title of the system. */
  readonly title: string;
  /** Hash of the scenario, as in the manifest of its run. */
  readonly scenario: string;
  readonly result: Omit<EnsembleResult, 'drawn'> & { readonly drawn: readonly Pick<TableRow, 'id'>[] };
}

const wanted = 'expected a document of leat ensemble --json, or a file of leat ensemble --out';

/** Where a list of values is not as long as the list of times; undefined where all are. */
function shortSeries({ time, series }: z.infer<typeof ensembleSchema>): string | undefined {
  const fits = ({ length }: Float64Array): boolean => length === time.length;
  const bad = Object.entries(series).find(
    ([, { median, band50, band90 }]) => ![median, ...band50, ...band90].every(fits),
  );
  return bad === undefined ? undefined : `series.${bad[0]}`;
}

function fromDocument(file: string, document: unknown): KeptEnsemble {
  const { success, data, error } = ensembleSchema.safeParse(document);
  const where = success ? shortSeries(data) : error.issues[0].path.join('.');
  if (!success || where !== undefined)
    throw new FileError(`${file}: not a whole document of leat ensemble --json: see ${where ?? ''}`);
  const { title, manifest, time: times, series, ...rest } = data;
  const { scenario, sampling } = manifest;
  const named = Object.entries(series).map(([name, each]) => ({ name, ...each }));
  return { file, title, scenario, result: { ...rest, sampling, times, series: named } };
}

function fromPart(file: string): KeptEnsemble {
  const { outline, sampling, tally: state } = readPart(file);
  const tally = openTally(outline, sampling.members);
  tally.merge(state);
  return {
    ...{ file, title: outline.title, scenario: outline.scenario },
    result: ensembleResult(outline, sampling, tally),
  };
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}

/**
 * Reads what `leat ensemble` kept: the document of `--json`, or the file of `--out` (also one that is not whole: what it
 * says is of the members that ran). Throws FileError, naming the first place that is not as it should be.
 */
export function readEnsemble(file: string): KeptEnsemble {
  let bytes: Buffer;
  try {
    bytes = readBytes(file, mostBytes);
  } catch (error) {
    throw new FileError(`${file}: cannot be read: ${reasonOf(error)}`);
  }
  if (isPart(bytes)) return fromPart(file);
  const document = parsed(bytes.toString('utf8'));
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
  return fromDocument(file, document);
}
