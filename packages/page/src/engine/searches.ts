// Searches of many runs, done by a pool of workers: what each of them does for one input.
import {
  adviceOutcome,
  type AdviceOutcome,
  aimOf,
  basisOf,
  type ChangeName,
  ensembleResult,
  type EnsembleResult,
  fit,
  fitText,
  forecast,
  type Forecast,
  type Fit,
  guessLogMap,
  type LogTable,
  type MemberOutcome,
  openAccumulator,
  openMembers,
  openModel,
  outlineOf,
  type Outline,
  type PlainFile,
  planAim,
  type Proposal,
  readFit,
  readLog,
  readLogMap,
  readScenarioFully,
  type Sampling,
  type Scenario,
  searchPlan,
  simulate,
  type Situation,
  situationsOf,
} from '@leat/core';
import {
  type AdviseShared,
  changesThere,
  openAdviceTrials,
  openPlan,
  openPlanTrials,
  openSize,
  openTexts,
  type Plan,
  type PlanInput,
  planOf,
  type PlanOutput,
  type PlanShared,
  type ReferencedFiles,
  searchAdvice,
  type SizeFound,
  type SizeShared,
} from '@leat/core/tasks';
import { runJobs, type JobWorker } from '@leat/core/workers';

/** A log on the page, with the map of its columns where there is one. */
export interface PageLog {
  readonly table: LogTable;
  readonly map?: { readonly file: string; readonly text: string };
}

/** What a size search found, as plain data. */
export interface SizeTold extends Omit<SizeFound, 'conditions'> {
  readonly conditions: readonly string[];
}

interface LoggedShared {
  readonly texts: ReferencedFiles;
  readonly log: PageLog;
}

/** What a guess of the columns of a log needs to know of a system: fish tanks first. */
function systemOf({ vessels, fish }: Scenario): Parameters<typeof guessLogMap>[1] {
  const isTank = ({ kind }: Scenario['vessels'][number]): boolean => kind === 'fish-tank';
  const inOrder = [...vessels.filter(isTank), ...vessels.filter((each) => !isTank(each))];
  return { vessels: inOrder.map(({ name }) => name), cohorts: fish.map(({ name }) => name) };
}

function logged({ texts, log: { table, map } }: LoggedShared) {
  const read = (set: readonly { readonly path: string; readonly value: string }[], days?: number) =>
    readScenarioFully(texts.text, {
      file: texts.file,
      load: (path) => {
        const found = texts.beside.get(path);
        if (found === undefined) throw new Error('it is not on this page: drop it here too');
        return found;
      },
      set: [...set],
      ...(days !== undefined && { days }),
    });
  const { scenario } = read([]);
  const guessed = map ?? { file: 'map', text: guessLogMap(table, systemOf(scenario)).text };
  return { system: { read }, log: readLog(table, readLogMap(guessed.text, guessed.file, table)) };
}

const unlogged = { unloggedFeed: 'last' } as const;

/** What a worker of the pool is opened for. */
const searches = {
  outline: (texts: ReferencedFiles) => () =>
    outlineOf(basisOf(openTexts(texts), { measures: [], conditions: [] })),
  member: (shared: { texts: ReferencedFiles; rows: Outline['rows']; sampling: Sampling }) => {
    const { texts, rows, sampling } = shared;
    return openMembers(openTexts(texts), { rows, measures: [], conditions: [] }, sampling, {});
  },
  situation: (texts: ReferencedFiles) => () => {
    const { run } = { run: simulate(openModel(openTexts(texts).reading).model) };
    const before = adviceOutcome(run, []);
    const { startDate, title } = run.model.scenario;
    return { before, startDate, title, situations: situationsOf(run, before.verdict) };
  },
  changes: (shared: AdviseShared) => () => changesThere(shared),
  change: (shared: AdviseShared) => openAdviceTrials(shared),
  quantities: (shared: PlanShared) => () => {
    planAim(shared.aim, openModel(openTexts(shared.texts).reading, { closureDraws: 0 }).model);
    return openPlan(shared).quantities.map(({ apply: _, ...quantity }) => quantity);
  },
  choice: (shared: PlanShared) => openPlanTrials(shared),
  plan:
    (shared: PlanShared) =>
    ([found, drawn]: Parameters<typeof planOf> extends [unknown, infer F, infer D] ? [F, D] : never) => ({
      ...planOf(shared, found, drawn),
      file: openPlan(shared).fileOf(found.best.at),
    }),
  size: (shared: SizeShared) => (_: unknown, alive: () => void) => {
    const { conditions, ...found } = openSize(shared).search(alive);
    return { ...found, conditions: conditions.map(({ text }) => text) };
  },
  fit: (shared: LoggedShared & { free: readonly string[] }) => () =>
    fit({ ...logged(shared), ...unlogged, free: shared.free, furtherStarts: 1 }),
  forecast: (shared: LoggedShared & { fit: string; days: number; members: number }) => () =>
    forecast({
      ...logged(shared),
      ...unlogged,
      fit: readFit(shared.fit, 'fit.json'),
      ...{ days: shared.days, members: shared.members, seed: 1 },
    }),
} as const;

type Name = keyof typeof searches;

/** Opens what a worker of the pool does. */
export function openSearch({
  name,
  shared,
}: {
  readonly name: Name;
  readonly shared: never;
}): (input: unknown, alive: () => void) => unknown {
  return searches[name](shared) as (input: unknown, alive: () => void) => unknown;
}

/** How many are at work, and how far it has come. */
export interface Watch {
  readonly start: () => JobWorker;
  readonly signal: AbortSignal;
  readonly workers: number;
  /** @param what is counted: `runs` of a search, or nothing that can be counted */
  readonly onProgress: (done: number, of: number) => void;
}

async function jobs<Output>(
  watch: Watch,
  name: Name,
  shared: unknown,
  inputs: readonly unknown[],
): Promise<Output[]> {
  let done = 0;
  watch.onProgress(0, inputs.length);
  return runJobs<unknown, Output>(watch.start, { name, shared }, inputs, {
    signal: watch.signal,
    workers: watch.workers,
    onDone: () => {
      watch.onProgress(++done, inputs.length);
    },
  });
}

const one = async <Output>(watch: Watch, name: Name, shared: unknown, input: unknown = 0): Promise<Output> =>
  (await jobs<Output>(watch, name, shared, [input]))[0];

/** An ensemble of so many members, as `leat ensemble --members N` makes it. */
export async function findEnsemble(
  watch: Watch,
  texts: ReferencedFiles,
  members: number,
): Promise<EnsembleResult> {
  const outline = await one<Outline>(watch, 'outline', texts);
  const sampling: Sampling = { method: 'latin-hypercube', members, seed: 1 };
  const accumulator = openAccumulator(outline, members);
  const inputs = Array.from({ length: members }, (_, i) => i);
  const outcomes = await jobs<MemberOutcome>(
    watch,
    'member',
    { texts, rows: outline.rows, sampling },
    inputs,
  );
  outcomes.forEach((outcome, i) => {
    accumulator.add(i, outcome);
  });
  return ensembleResult(outline, sampling, accumulator);
}

/** What may be changed, as it is told. */
export interface AdviceTold {
  readonly startDate: string;
  readonly title: string;
  readonly before: AdviceOutcome;
  readonly aim: ReturnType<typeof aimOf>;
  readonly proposals: readonly Proposal[];
  readonly runs: number;
}

/** The least changes with which a run goes well, as `leat advise` finds them. */
export async function findAdvice(watch: Watch, texts: ReferencedFiles): Promise<AdviceTold> {
  const { before, situations, ...told } = await one<
    Pick<AdviceTold, 'before' | 'startDate' | 'title'> & { readonly situations: readonly Situation[] }
  >(watch, 'situation', texts);
  const aim = aimOf(before.harm);
  if (aim === 'nothing') return { ...told, before, aim, proposals: [], runs: 0 };
  const shared = { texts, before: before.harm, aim, keep: [], only: [] };
  const { proposals, runs } = await searchAdvice(shared, situations, {
    changes: (here) => one<readonly ChangeName[]>(watch, 'changes', here),
    tried: (here, inputs) => jobs<Proposal | null>(watch, 'change', here, inputs),
  });
  return { ...told, before, aim, proposals, runs };
}

/** A plan, and what the file says with it. */
export interface PlanAndFile extends Plan {
  readonly file: PlainFile;
}

/** The best choice of several quantities, as `leat plan` finds it. */
export async function findPlan(watch: Watch, shared: PlanShared): Promise<PlanAndFile> {
  const quantities = await one<readonly Parameters<typeof searchPlan>[0][number][]>(
    watch,
    'quantities',
    shared,
  );
  const points = searchPlan<PlanOutput>(quantities);
  let step = points.next();
  while (step.done !== true) {
    const inputs = step.value.map((at): PlanInput => ({ at }));
    step = points.next(await jobs<PlanOutput>(watch, 'choice', shared, inputs));
  }
  const { at } = step.value.best;
  const draws = Array.from({ length: shared.members }, (_, member): PlanInput => ({ at, member }));
  const drawn = await jobs<PlanOutput>(watch, 'choice', shared, draws);
  return one<PlanAndFile>(watch, 'plan', shared, [step.value, drawn]);
}

/** The smallest or largest value that keeps a condition, as `leat size` finds it. */
export const findSizeOf = (watch: Watch, shared: SizeShared): Promise<SizeTold> => one(watch, 'size', shared);

/** A fit to a log, as `leat fit` makes it, and the text that it is kept as. */
export async function findFit(
  watch: Watch,
  texts: ReferencedFiles,
  log: PageLog,
): Promise<{ fit: Fit; text: string }> {
  const found = await one<Fit>(watch, 'fit', { texts, log, free: [] });
  return { fit: found, text: fitText(found) };
}

/** What lies ahead of a log, as `leat forecast` tells it. */
export const findForecast = (
  watch: Watch,
  texts: ReferencedFiles,
  log: PageLog,
  kept: string,
  days: number,
): Promise<Forecast> => one(watch, 'forecast', { texts, log, fit: kept, days, members: 50 });
