import { type Handbook, handbookOf, surfacesVaried } from '../analysis/design/handbook.js';
import { sizeReasons, type SizeReasons } from '../analysis/design/size-reasons.js';
import { findSize, type SizeAnswer } from '../analysis/design/size.js';
import { judgeRun, type Trial } from '../analysis/design/trial.js';
import { type Condition, conditionOf } from '../analysis/measures/condition.js';
import { InputError } from '../base/faults.js';
import type { Model } from '../model/model.js';
import { openModel } from '../model/open-model.js';
import type { Run } from '../run/run.js';
import { simulate } from '../run/stepping.js';
import type { ScenarioReading } from '../scenario/read-scenario.js';
import { openTexts, type ReferencedFiles } from './texts.js';
import { openAt, openFactor, readAll, type Varied } from './vary.js';

/** What is sought: one value, or several by one factor, between two ends. */
export interface SizeShared {
  readonly texts: ReferencedFiles;
  readonly vary: readonly string[];
  readonly from: string;
  readonly to: string;
  readonly keep: readonly string[];
  readonly want: 'smallest' | 'largest';
  /** How near the value must be, as a share of it. */
  readonly within: number;
}

/** What a search for a size found, and what handbooks say beside it. */
export interface SizeFound {
  readonly title: string;
  readonly varied: Varied;
  readonly want: 'smallest' | 'largest';
  readonly conditions: readonly Condition[];
  readonly answer: SizeAnswer;
  readonly handbook?: Handbook;
  /** Why the model differs, by the run at one value. */
  readonly reasons?: SizeReasons;
  /** The value at which the reasons hold, in the unit of what is varied. */
  readonly at?: number;
  /** Vessels whose surface is sized. */
  readonly sized?: readonly string[];
}

/** The system at one value; closure of the rows is checked at draws only where asked. */
function modelAt(texts: ReferencedFiles, varied: Varied, value: number, closureDraws?: number): Model {
  const { reading } = openAt(texts, [{ varied, value }]);
  return openModel(reading, closureDraws === undefined ? {} : { closureDraws }).model;
}

/** What handbooks say, and why the model differs, by a run. */
function besideOf(
  varied: Varied,
  ends: { readonly atFrom: Model; readonly atTo: Model },
  at: { readonly value: number; readonly run: Run },
): Pick<SizeFound, 'handbook' | 'reasons' | 'at' | 'sized'> {
  const sizeEnds = { ...ends, from: varied.from, to: varied.to };
  const cells = surfacesVaried(sizeEnds);
  const handbook = handbookOf(sizeEnds, at.run);
  return {
    ...(handbook === undefined ? {} : { handbook }),
    ...(cells.length === 0
      ? {}
      : {
          reasons: sizeReasons(at.run, cells),
          at: at.value,
          sized: cells.map((vessel) => at.run.model.layout.vessels[vessel]),
        }),
  };
}

/** A search that is opened: what was assumed, and the search itself. */
export interface OpenSize {
  readonly varied: Varied;
  readonly notes: readonly string[];
  /** How the file wants results told. */
  readonly display?: ScenarioReading['display'];
  /**
   * Searches.
   * @param alive is called before each run
   */
  readonly search: (alive?: () => void) => SizeFound;
}

/** Opens a search for the smallest or largest value at which every condition holds. Throws InputError with all faults. */
export function openSize({ texts, vary, from, to, keep, want, within }: SizeShared): OpenSize {
  const { notes, display } = openTexts(texts).reading;
  const varied = openFactor(texts, { paths: vary, from, to }, { from: '--from', to: '--to' });
  const ends = { atFrom: modelAt(texts, varied, varied.from), atTo: modelAt(texts, varied, varied.to) };
  const conditions = readAll(keep, (text) => conditionOf(text, ends.atFrom, '--keep'));
  const search = (alive: () => void = () => undefined): SizeFound => {
    let nearest: { readonly value: number; readonly holds: boolean; readonly run: Run } | undefined;
    const judge = (value: number): Trial => {
      alive();
      try {
        const run = simulate(modelAt(texts, varied, value, 0));
        const trial = judgeRun(run, value, conditions);
        const better = nearest === undefined || trial.holds || !nearest.holds;
        if (run.outcome.kind === 'done' && better) nearest = { value, holds: trial.holds, run };
        return trial;
      } catch (error) {
        if (!(error instanceof InputError)) throw error;
        return {
          value,
          holds: false,
          margins: conditions.map(() => Number.NaN),
          broke: error.message.replaceAll('\n', '; '),
        };
      }
    };
    const answer = findSize({ ...varied, want, within, judge });
    return {
      title: ends.atFrom.scenario.title,
      ...{ varied, want, conditions, answer },
      ...(nearest === undefined ? {} : besideOf(varied, ends, nearest)),
    };
  };
  const told = [...notes, ...ends.atFrom.parameters.warnings];
  return { varied, notes: told, search, ...(display !== undefined && { display }) };
}
