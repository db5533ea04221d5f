import type {
  BibliographyEntry,
  Budget,
  LimitResult,
  Manifest,
  Outcome,
  RunAccount,
  RunEvent,
} from '@leat/core';
import { FileError } from './read.js';
import { formFault } from './saved-document.js';

/** What a saved document says of a run. */
export interface SavedRun {
  readonly account: RunAccount;
  /** Of the system and of each vessel, of every quantity. */
  readonly budgets: readonly Budget[];
  readonly events: readonly RunEvent[];
  readonly manifest: Manifest;
  readonly sources: readonly BibliographyEntry[];
}

type Tree = Readonly<Record<string, unknown>>;

const isTree = (value: unknown): value is Tree =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** Where a document is not as `leat run --json` writes it. */
class Misfit extends Error {}

function check(holds: boolean, path: string): void {
  if (!holds) throw new Misfit(path);
}

function tree(value: unknown, path: string): Tree {
  if (!isTree(value)) throw new Misfit(path);
  return value;
}

function list(value: unknown, path: string): readonly unknown[] {
  if (!Array.isArray(value)) throw new Misfit(path);
  return value;
}

function text(value: unknown, path: string): string {
  if (typeof value !== 'string') throw new Misfit(path);
  return value;
}

/** A number; null stands for one that JSON lacks. */
function number(value: unknown, path: string): number {
  if (value === null) return Number.NaN;
  if (typeof value !== 'number') throw new Misfit(path);
  return value;
}

function fields(
  value: unknown,
  path: string,
  types: Readonly<Record<string, 'string' | 'number' | 'boolean'>>,
): Tree {
  const held = tree(value, path);
  for (const [key, type] of Object.entries(types)) check(typeof held[key] === type, `${path}.${key}`);
  return held;
}

function budgetFrom(value: unknown, quantity: string, place: string, path: string): Budget {
  const held = tree(value, path);
  const amount = (key: string): number => number(held[key], `${path}.${key}`);
  const lineTypes = { beyond: 'string', component: 'string', by: 'string', amount: 'number' } as const;
  const storeTypes = { component: 'string', amount: 'number' } as const;
  return {
    quantity: quantity as Budget['quantity'],
    place,
    in: amount('in'),
    out: amount('out'),
    stored: amount('stored'),
    residual: amount('residual'),
    throughput: amount('throughput'),
    lines: list(held['lines'], `${path}.lines`).map((line, i) =>
      fields(line, `${path}.lines[${i}]`, lineTypes),
    ) as unknown as Budget['lines'],
    stores: list(held['stores'], `${path}.stores`).map((store, i) =>
      fields(store, `${path}.stores[${i}]`, storeTypes),
    ) as unknown as Budget['stores'],
  };
}

function budgetsFrom(value: unknown, place: string, path: string): Budget[] {
  return Object.entries(tree(value, path)).map(([quantity, budget]) =>
    budgetFrom(budget, quantity, place, `${path}.${quantity}`),
  );
}

function limitFrom(value: unknown, path: string): LimitResult {
  const types = {
    id: 'string',
    quantity: 'string',
    unit: 'string',
    direction: 'string',
    value: 'number',
  } as const;
  const more = { whom: 'string', place: 'string', source: 'string', mark: 'string' } as const;
  const verdict = { judged: 'boolean', passed: 'boolean', total: 'number' } as const;
  const held = fields(value, path, { ...types, ...more, ...verdict });
  for (const key of ['first', 'worst', 'worstAt'])
    check(held[key] === undefined || typeof held[key] === 'number', `${path}.${key}`);
  return held as unknown as LimitResult;
}

function eventsFrom(value: unknown): readonly RunEvent[] {
  const types = { time: 'number', kind: 'string', place: 'string', text: 'string' } as const;
  return list(value, 'events').map((event, i) => fields(event, `events[${i}]`, types) as unknown as RunEvent);
}

function manifestFrom(value: unknown): Manifest {
  const types = { version: 'string', scenario: 'string', integrator: 'string', tolerance: 'number' } as const;
  const held = fields(value, 'manifest', types);
  check(held['seed'] === null || typeof held['seed'] === 'number', 'manifest.seed');
  return held as unknown as Manifest;
}

function sourcesFrom(value: unknown): readonly BibliographyEntry[] {
  return list(value, 'sources').map((source, i) => {
    const held = fields(source, `sources[${i}]`, { key: 'string', citation: 'string', mark: 'string' });
    list(held['ids'], `sources[${i}].ids`).forEach((id, j) => text(id, `sources[${i}].ids[${j}]`));
    return held as unknown as BibliographyEntry;
  });
}

function runFrom(document: Tree): SavedRun {
  const time = list(document['time'], 'time').map((each, i) => number(each, `time[${i}]`));
  check(
    time.length > 0 && time.every((each, i) => Number.isFinite(each) && (i === 0 || each > time[i - 1])),
    'time',
  );
  const series = Object.entries(tree(document['series'], 'series')).map(([name, each]) => {
    const { unit, values } = tree(each, `series.${name}`);
    const course = list(values, `series.${name}.values`).map((value) =>
      number(value, `series.${name}.values`),
    );
    check(course.length === time.length, `series.${name}.values`);
    return { name, unit: text(unit, `series.${name}.unit`), values: course };
  });
  const system = budgetsFrom(document['budget'], 'system', 'budget');
  const vessels = Object.entries(tree(document['vessels'], 'vessels')).flatMap(([place, budgets]) =>
    budgetsFrom(budgets, place, `vessels.${place}`),
  );
  const of = (quantity: string): Budget => {
    const found = system.find((budget) => budget.quantity === quantity);
    if (found === undefined) throw new Misfit(`budget.${quantity}`);
    return found;
  };
  return {
    account: {
      title: text(document['title'], 'title'),
      outcome: fields(document['outcome'], 'outcome', {
        kind: 'string',
        time: 'number',
      }) as unknown as Outcome,
      time,
      series,
      keys: list(document['keys'], 'keys').map((key, i) => text(key, `keys[${i}]`)),
      limits: list(document['limits'], 'limits').map((limit, i) => limitFrom(limit, `limits[${i}]`)),
      nitrogen: of('nitrogen'),
      water: of('water'),
    },
    budgets: [...system, ...vessels],
    events: eventsFrom(document['events']),
    manifest: manifestFrom(document['manifest']),
    sources: sourcesFrom(document['sources']),
  };
}

function parsed(source: string): unknown {
  try {
    return JSON.parse(source);
  } catch {
    return undefined;
  }
}

/**
 * Reads the text of a file as a document of `leat run --json`; undefined when it is none (a scenario).
 * Throws FileError, naming the first place that is not as it should be, when it is one but not whole.
 */
export function savedRun(file: string, source: string): SavedRun | undefined {
  if (!source.trimStart().startsWith('{')) return undefined;
  const document = parsed(source);
  if (!isTree(document) || !('manifest' in document) || !('series' in document)) return undefined;
  const other = formFault(file, document, 'leat-run');
  if (other !== undefined) throw other;
  try {
    return runFrom(document);
  } catch (error) {
    if (!(error instanceof Misfit)) throw error;
    throw new FileError(`${file}: not a whole document of leat run --json: see ${error.message}`);
  }
}
