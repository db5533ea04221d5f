// What a reader may ask of the page.
import { batch } from '@preact/signals';
import { describeFault, InputError } from '@leat/core';
import type { ReferencedFiles } from '@leat/core/tasks';
import { shipped } from 'virtual:leat';
import { Engine, searchWorkers, startSearch } from '../engine/workers.js';
import type { Watch } from '../engine/searches.js';
import { isSystem, readDropped } from '../files/drop.js';
import { keep } from '../files/kept.js';
import type { Bundle } from '../files/link.js';
import { withNumber, type TextNumber } from '../editor/numbers.js';
import * as state from './state.js';

const checker = new Engine();
const runner = new Engine();
const turner = new Engine();

/** Starts the workers, so that the first run does not wait for them. */
export function warm(): void {
  checker.warm();
  runner.warm();
}

let lookTimer: ReturnType<typeof setTimeout> | undefined;
let looking = 0;

/** Reads the system once typing rests, while runs go on. */
export function look(after = 300): void {
  clearTimeout(lookTimer);
  lookTimer = setTimeout(() => {
    const now = ++looking;
    const how = { language: state.language.value, units: state.units.value };
    checker.ask({ kind: 'look', texts: state.textsOf(), how }, (told) => {
      if (now !== looking) return;
      batch(() => {
        state.faults.value = told.kind === 'faults' ? told.faults : [];
        if (told.kind === 'looked') state.looked.value = told.looked;
        if (told.kind === 'failed') state.trouble.value = told.message;
      });
    });
  }, after);
}

/** Puts a text in place of that of the system. */
export function write(text: string, name = state.main.value): void {
  batch(() => {
    state.text.value = text;
    state.main.value = name;
    state.turned.value = undefined;
    state.tried.value = undefined;
  });
  look();
}

/** Begins with a shipped what-if; a log and a map that lie beside it come along. */
export async function beginWith(name: string): Promise<void> {
  write(shipped[`${name}.yaml`], `${name}.yaml`);
  const [csv, map] = [shipped[`${name}.csv`], shipped[`${name}.map`]] as readonly (string | undefined)[];
  if (map !== undefined) state.beside.value = new Map(state.beside.value).set(`${name}.map`, map);
  if (csv !== undefined) await take([new File([csv], `${name}.csv`)]);
}

/** Takes files that were dropped or chosen: systems, what they name, logs, maps, saved states. */
export async function take(files: readonly File[]): Promise<void> {
  const troubles: string[] = [];
  const beside = new Map(state.beside.value);
  const systems: string[] = [];
  for (const file of files) {
    try {
      const came = await readDropped(file);
      if (came.kind === 'log') state.log.value = { name: came.name, table: came.table };
      const { text } = came;
      if (text !== undefined) beside.set(came.name, text);
      if (came.kind === 'text' && isSystem(came.name)) systems.push(came.name);
    } catch (error) {
      troubles.push(error instanceof Error ? error.message : String(error));
    }
  }
  state.beside.value = beside;
  state.trouble.value = troubles.join('\n');
  // Of several systems the one that includes others is the one that is meant; what is missing was dropped for the one here.
  const missing = state.faults.value.length > 0 && files.length === systems.length && state.text.value !== '';
  const wanted = missing && systems.some((name) => state.text.value.includes(name));
  const first = systems.find((name) => /^include:/m.test(beside.get(name) ?? '')) ?? systems[0];
  if (first !== undefined && !wanted) write(beside.get(first) ?? '', first);
  else look(0);
}

const sayDay = (day: number, days: number): void => {
  const { busy, words } = state;
  if (busy.value === undefined) return;
  busy.value = { ...busy.value, text: words.value.running(day, days), share: day / days };
};

/** Runs a system in the worker. */
function runTexts(texts = state.textsOf(), letter = 'A'): Promise<state.Shown | undefined> {
  return new Promise((done) => {
    const end = (found: state.Shown | undefined): void => {
      state.busy.value = undefined;
      done(found);
    };
    state.trouble.value = '';
    state.busy.value = {
      ...{ text: state.words.value.running(0, 0), share: 0 },
      cancel: () => {
        runner.end();
        runner.warm();
        state.trouble.value = state.words.value.cancelled;
        end(undefined);
      },
    };
    runner.ask({ kind: 'run', texts }, (told) => {
      if (told.kind === 'day') sayDay(told.day, told.days);
      else if (told.kind === 'ran') end({ summary: state.summaryOf(told.ran, texts, letter), texts });
      else {
        if (told.kind === 'faults') state.trouble.value = told.faults.map(describeFault).join('\n');
        if (told.kind === 'failed') state.trouble.value = told.message;
        end(undefined);
      }
    });
  });
}

/** Runs the system and shows what it gives. */
export async function run(): Promise<void> {
  const found = await runTexts();
  if (found === undefined) return;
  batch(() => {
    if (state.shown.value !== undefined) state.before.value = state.shown.value;
    state.compared.value = undefined;
    state.shown.value = found;
  });
}

/** Puts another run beside the shown one: that of a what-if by its name, or the one before. */
export async function compareWith(name: string): Promise<void> {
  if (state.isStale.value || state.shown.value === undefined) await run();
  if (state.shown.value === undefined) return;
  const other =
    name === ''
      ? state.before.value
      : await runTexts(state.textsOf(shipped[`${name}.yaml`], `${name}.yaml`), 'B');
  if (other !== undefined) state.compared.value = { ...other, summary: { ...other.summary, letter: 'B' } };
}

let waiting: (() => void) | undefined;
let turning = false;

/** The system with another value of a number, in its own text or in a file that it includes. */
function textsWith(number: TextNumber, value: number): ReferencedFiles {
  const { file } = number;
  if (file === undefined) return state.textsOf(withNumber(state.text.value, number, value));
  const texts = state.textsOf();
  const own = withNumber(texts.beside.get(file) ?? '', number, value);
  return { ...texts, beside: new Map([...texts.beside, [file, own]]) };
}

/** Turns a number of the text: the run follows, the last place of the slider first. */
export function turn(number: TextNumber, value: number): void {
  state.turned.value = { number, value };
  const ask = (): void => {
    turning = true;
    turner.ask({ kind: 'try', texts: textsWith(number, value) }, (told) => {
      if (told.kind === 'day') return;
      turning = false;
      if (told.kind === 'tried' && state.turned.value !== undefined) state.tried.value = told.account;
      if (told.kind === 'faults') state.trouble.value = told.faults.map(describeFault).join('\n');
      else state.trouble.value = told.kind === 'failed' ? told.message : '';
      const next = waiting;
      waiting = undefined;
      next?.();
    });
  };
  if (turning) waiting = ask;
  else ask();
}

/** Puts the turned number into the text, or into the file that it stands in, which then lies on the page so changed. */
export function putTurned(): void {
  const { value: turned } = state.turned;
  if (turned === undefined) return;
  const { number, value } = turned;
  const { text, beside } = textsWith(number, value);
  if (number.file !== undefined)
    state.beside.value = new Map(state.beside.value).set(number.file, beside.get(number.file) ?? '');
  write(text);
}

/** Does a search in the pool, with progress; what is cancelled or fails is said. */
export async function search<Found>(work: (watch: Watch) => Promise<Found>): Promise<Found | undefined> {
  const stop = new AbortController();
  state.trouble.value = '';
  state.busy.value = {
    ...{ text: state.words.value.searching(0, 1), share: 0 },
    cancel: () => {
      stop.abort(new Error(state.words.value.cancelled));
    },
  };
  try {
    return await work({
      ...{ start: startSearch, signal: stop.signal, workers: searchWorkers() },
      onProgress: (done, of) => {
        if (state.busy.value !== undefined)
          state.busy.value = {
            ...state.busy.value,
            text: state.words.value.searching(done, of),
            share: done / of,
          };
      },
    });
  } catch (error) {
    const told = error instanceof InputError ? error.faults.map(describeFault).join('\n') : undefined;
    state.trouble.value = told ?? (error instanceof Error ? error.message : String(error));
    return undefined;
  } finally {
    state.busy.value = undefined;
  }
}

/** The system with the files that it names, and theirs, of those on the page. */
export function bundled(): Bundle {
  const files = { [state.main.value]: state.text.value, ...Object.fromEntries(state.named.value) };
  return { main: state.main.value, files };
}

/** Opens a system that was linked to or kept. */
export function openBundle({ main, files }: Bundle): void {
  const { [main]: own, ...rest } = files;
  state.beside.value = new Map([...state.beside.value, ...Object.entries(rest)]);
  write(own, main);
}

/** Keeps the system in the browser, or forgets it. */
export const keepSystem = (yes: boolean): void => {
  keep(yes ? bundled() : undefined);
};
