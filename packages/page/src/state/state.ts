// What the page holds. Signals: a view that reads one is drawn anew when it changes.
import { computed, signal } from '@preact/signals';
import { openModel, type Fault, type LogTable, type Run, type RunAccount } from '@leat/core';
import { languages, metric, type Language, type UnitChoice } from '@leat/core/units';
import type { ReferencedFiles } from '@leat/core/tasks';
import { type RunSummary, wordedSystem } from '@leat/view/report';
import { displayOf, type Display } from '@leat/view/text';
import { shipped } from 'virtual:leat';
import { readingOf } from '../engine/engine.js';
import type { Looked, Ran } from '../engine/protocol.js';
import { numbersIn, type TextNumber } from '../editor/numbers.js';
import { pageWords, type PageWords } from '../words/index.js';

/** How results are told. */
export const language = signal<Language>(
  languages.find((each) => navigator.language.toLowerCase().startsWith(each)) ?? 'en',
);
export const units = signal<UnitChoice>(metric);
export const words = computed<PageWords>(() => pageWords[language.value]);
export const display = computed<Display>(() => displayOf({ language: language.value, units: units.value }));

/** The system: the name of its file, its text, and files that were put beside it. */
export const main = signal('system.yaml');
export const text = signal('');
export const beside = signal<ReadonlyMap<string, string>>(new Map());

/** A log of tests that was put on the page. */
export const log = signal<{ readonly name: string; readonly table: LogTable } | undefined>(undefined);
export const map = computed(() => {
  const found = [...beside.value].find(([name]) => /\.map$/i.test(name));
  return found === undefined ? undefined : { file: found[0], text: found[1] };
});

/** What the checker says of the text. */
export const faults = signal<readonly Fault[]>([]);
export const looked = signal<Looked | undefined>(undefined);
/** What went wrong that is no fault of the text. */
export const trouble = signal('');

/** A run with what it was a run of. */
export interface Shown {
  readonly summary: RunSummary;
  readonly texts: ReferencedFiles;
}

export const shown = signal<Shown | undefined>(undefined);
export const before = signal<Shown | undefined>(undefined);
/** The run beside which the shown one stands. */
export const compared = signal<Shown | undefined>(undefined);

/** What is under way: what to say of it, how far it is, and how it is ended. */
export interface Busy {
  readonly text: string;
  readonly share: number;
  readonly cancel: () => void;
}

export const busy = signal<Busy | undefined>(undefined);

/** The number that a slider turns, its value, and what the run gives with it. */
export const turned = signal<{ readonly number: TextNumber; readonly value: number } | undefined>(undefined);
export const tried = signal<RunAccount | undefined>(undefined);

/** The system with all that it may name, as plain data. */
export function textsOf(own = text.value, name = main.value): ReferencedFiles {
  return {
    ...{ file: name, text: own },
    beside: new Map([...Object.entries(shipped), ...beside.value]),
    options: { set: [] },
  };
}

/** Files that the system names, and those that they name in turn, of all that are on the page. */
export const named = computed<ReadonlyMap<string, string>>(() => {
  const all = textsOf().beside;
  const found = new Map<string, string>();
  const add = (from: string): void => {
    for (const [name, own] of all)
      if (name !== main.value && !found.has(name) && from.includes(name)) {
        found.set(name, own);
        add(own);
      }
  };
  add(text.value);
  return found;
});

/** Every number of the system: of its own text, and of what it includes where the text says nothing else. */
export const numbers = computed<readonly TextNumber[]>(() => {
  const included = [...named.value].filter(([name]) => /\.ya?ml$/i.test(name));
  const found = new Map<string, TextNumber>();
  for (const each of numbersIn(text.value)) found.set(each.path, each);
  for (const [file, own] of included)
    for (const each of numbersIn(own)) if (!found.has(each.path)) found.set(each.path, { ...each, file });
  return [...found.values()];
});

/** Whether the texts are no longer those of the shown run. */
export const isStale = computed(() => {
  if (shown.value === undefined) return false;
  const { text: ran, file, beside: lay } = shown.value.texts;
  if (ran !== text.value || file !== main.value) return true;
  return [...named.value].some(([name, own]) => lay.get(name) !== own);
});

/**
 * A run as the sections of a report take it. Its model is compiled when one of them asks for it; what is said of the system in
 * words is said as things are shown now.
 */
export function summaryOf({ summary, run }: Ran, texts: ReferencedFiles, letter: string): RunSummary {
  let whole: Run | undefined;
  const wholeRun = (): Run =>
    (whole ??= { ...run, model: openModel(readingOf(texts), { closureDraws: 0 }).model });
  let said: { readonly how: Display; readonly words: ReturnType<typeof wordedSystem> } | undefined;
  const worded = (): ReturnType<typeof wordedSystem> => {
    const how = display.value;
    if (said?.how !== how) said = { how, words: wordedSystem(wholeRun(), how) };
    return said.words;
  };
  const system = {
    ...summary.system,
    get facts() {
      return worded().facts;
    },
    get vessels() {
      return worded().vessels;
    },
    get flows() {
      return worded().flows;
    },
    get levels() {
      return worded().levels;
    },
    get run() {
      return wholeRun();
    },
  };
  return { ...summary, letter, system };
}
