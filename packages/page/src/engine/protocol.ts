import type { Fault, Run, RunAccount } from '@leat/core';
import type { ReferencedFiles } from '@leat/core/tasks';
import type { RunSummary, SystemSummary } from '@leat/view/report';
import type { DisplayChoice } from '@leat/view/text';

/** What the page asks of its engine. */
export type Ask =
  | {
      readonly kind: 'look';
      readonly id: number;
      readonly texts: ReferencedFiles;
      /** How the drawing says what it says. */
      readonly how: DisplayChoice;
    }
  | { readonly kind: 'run'; readonly id: number; readonly texts: ReferencedFiles }
  | { readonly kind: 'try'; readonly id: number; readonly texts: ReferencedFiles };

/** What a system file says before it is run. */
export interface Looked {
  readonly title: string;
  readonly notes: readonly string[];
  /** Absent: its first day could not be run, so that there are no flows to draw. */
  readonly drawn?: Pick<SystemSummary, 'vessels' | 'flows'>;
}

/** A run without its model, which does not cross between threads: the page compiles it anew where it is asked for. */
type PlainRun = Omit<Run, 'model'>;

/** A run and what is told of it. */
export interface Ran {
  readonly summary: Omit<RunSummary, 'system'> & { readonly system: Omit<SystemSummary, 'run'> };
  readonly run: PlainRun;
}

/** What the engine tells the page. */
export type Told =
  | { readonly kind: 'looked'; readonly id: number; readonly looked: Looked }
  | { readonly kind: 'faults'; readonly id: number; readonly faults: readonly Fault[] }
  | { readonly kind: 'day'; readonly id: number; readonly day: number; readonly days: number }
  | { readonly kind: 'ran'; readonly id: number; readonly ran: Ran }
  | { readonly kind: 'tried'; readonly id: number; readonly account: RunAccount }
  | { readonly kind: 'failed'; readonly id: number; readonly message: string };
