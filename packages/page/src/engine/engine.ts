// The engine: reads, draws and runs a system in a worker of the page.
import {
  InputError,
  openModel,
  simulate,
  type OpenModel,
  type Scenario,
  type ScenarioReading,
} from '@leat/core';
import { openWith, type ReferencedFiles } from '@leat/core/tasks';
import { accountOf } from '@leat/view/documents';
import { drawnSystem, summarize } from '@leat/view/report';
import { displayOf, type DisplayChoice } from '@leat/view/text';
import type { Ask, Looked, Ran, Told } from './protocol.js';

/** Where the engine hears and tells: the global of its worker. */
export interface EnginePort {
  postMessage(told: Told): void;
  addEventListener(event: 'message', take: (event: { readonly data: Ask }) => void): void;
}

/** Progress is told at most so often, ms. */
const tellEvery = 50;

/** Opens a system from what is on the page; what is not there is said so. */
export function readingOf(texts: ReferencedFiles): ScenarioReading {
  return openWith(texts, (path) => {
    const text = texts.beside.get(path.replace(/^\.\//, ''));
    if (text === undefined) throw new Error('it is not on this page: drop it here too');
    return text;
  }).reading;
}

/** The first day of a system alone, with what is done on it. */
const firstDay = (scenario: Scenario): Scenario => ({
  ...scenario,
  days: Math.min(1, scenario.days),
  actions: scenario.actions.filter(({ at }) => at < Math.min(1, scenario.days)),
});

function lookedAt(texts: ReferencedFiles, how: DisplayChoice): Looked {
  const reading = readingOf(texts);
  const { scenario, notes } = reading;
  const looked = { title: scenario.title, notes };
  try {
    const { model } = openModel({ ...reading, scenario: firstDay(scenario) }, { closureDraws: 0 });
    return { ...looked, drawn: drawnSystem(simulate(model), displayOf(how)) };
  } catch {
    // A system whose first day does not run is told of by its run.
    return looked;
  }
}

function runOf(texts: ReferencedFiles, onDay: (day: number, days: number) => void) {
  const opened: OpenModel = openModel(readingOf(texts));
  const { days } = opened.model.scenario;
  let last = 0;
  const run = simulate(opened.model, {
    onDay: (day) => {
      const now = performance.now();
      if (now - last < tellEvery) return;
      last = now;
      onDay(day, days);
    },
  });
  return { run, opened };
}

function ranOf(texts: ReferencedFiles, onDay: (day: number, days: number) => void): Ran {
  const { run, opened } = runOf(texts, onDay);
  const { text, file } = texts;
  const { system, ...told } = summarize('A', file, run, { ...opened, text, changes: [] });
  if (system === undefined) throw new Error('a run without a system');
  const { run: ended, ...drawn } = system;
  const { model: _, ...plain } = ended;
  return { summary: { ...told, system: drawn }, run: plain };
}

/** Does what the page asks, one after another; faults of a file go back as they are. */
export function serveEngine(port: EnginePort): void {
  port.addEventListener('message', ({ data }) => {
    const { id, texts } = data;
    const onDay = (day: number, days: number): void => {
      port.postMessage({ kind: 'day', id, day, days });
    };
    try {
      switch (data.kind) {
        case 'look':
          port.postMessage({ kind: 'looked', id, looked: lookedAt(texts, data.how) });
          break;
        case 'run':
          port.postMessage({ kind: 'ran', id, ran: ranOf(texts, onDay) });
          break;
        case 'try':
          port.postMessage({ kind: 'tried', id, account: accountOf(runOf(texts, onDay).run) });
      }
    } catch (error) {
      if (error instanceof InputError) port.postMessage({ kind: 'faults', id, faults: error.faults });
      else
        port.postMessage({
          kind: 'failed',
          id,
          message: error instanceof Error ? error.message : String(error),
        });
    }
  });
}
