import { createEditor, type PrismEditor } from 'prism-code-editor';
import {
  autoComplete,
  type Completion,
  type CompletionContext,
  type CompletionResult,
  fuzzyFilter,
  registerCompletions,
} from 'prism-code-editor/autocomplete';
import { defaultKeymap, editHistory, editorCommands } from 'prism-code-editor/commands';
import { cursorPosition } from 'prism-code-editor/cursor';
import { editorHoverDescriptions } from 'prism-code-editor/hover';
import 'prism-code-editor/languages/yaml';
import 'prism-code-editor/prism/languages/yaml';
import { describeFault, type Fault } from '@leat/core';
import { keysAt, meaningAt, pathAt, valuesAt } from './schema.js';

/** Completes the key or the value at the cursor from the schema. */
function completeAt({ lineBefore, pos, explicit, before }: CompletionContext, editor: PrismEditor) {
  const lines = editor.value.split('\n');
  const line = before.split('\n').length - 1;
  const value = /^\s*(?:-\s+)*[^:#]+:\s+(\S*)$/.exec(lineBefore);
  if (value !== null) {
    const options = valuesAt(pathAt(lines, line)).map((label): Completion => ({ label, icon: 'enum' }));
    return options.length === 0 ? null : { from: pos - value[1].length, options };
  }
  const key = /^(\s*(?:-\s+)*)([\w-]*)$/.exec(lineBefore);
  if (key === null || (!explicit && key[2] === '')) return null;
  const blank = lines.map((each, i) => (i === line ? '' : each));
  const path = pathAt(blank, line, key[1].length);
  const options = [
    ...keysAt(key[1].includes('-') && path[path.length - 1] !== '-' ? [...path, '-'] : path),
  ].map(([label, info]): Completion => ({
    ...{ label, icon: 'property', insert: `${label}: ` },
    ...(info !== '' && { renderDocs: () => [info] }),
  }));
  const found: CompletionResult = { from: pos - key[2].length, options };
  return options.length === 0 ? null : found;
}

registerCompletions(['yaml'], { context: null, sources: [completeAt] });

/** What the page hears of its editor. */
export interface EditorHears {
  readonly onText: (text: string) => void;
  readonly onCursor: (at: number) => void;
}

/** An editor of a system file, with faults beside the line, completion and the meaning of keys. */
export class SystemEditor {
  private readonly view: PrismEditor;
  private faults: ReadonlyMap<number, readonly string[]> = new Map();

  constructor(parent: HTMLElement, text: string, label: string, { onText, onCursor }: EditorHears) {
    this.view = createEditor(
      parent,
      {
        ...{ language: 'yaml', value: text, wordWrap: true },
        onUpdate: (value, view) => {
          this.mark(view);
          onText(value);
        },
        onSelectionChange: ([start, end, direction]) => {
          onCursor(direction === 'backward' ? start : end);
        },
      },
      editorCommands(defaultKeymap),
      editHistory(),
      cursorPosition(),
      autoComplete({ filter: fuzzyFilter }),
      editorHoverDescriptions((_types, _language, _text, element) => this.explain(element), {
        ...{ above: true, delay: 300, maxWidth: '36rem' },
      }),
    );
    this.view.textarea.setAttribute('aria-label', label);
  }

  /** What is to be said of the line that an element stands in: its faults, and what its key means. */
  private explain(element: Element): HTMLElement[] | null {
    // The first child holds what lies over the lines.
    const line = [...this.view.lines].indexOf(element.closest('.pce-line') ?? this.view.wrapper) - 1;
    if (line < 0) return null;
    const path = pathAt(this.view.value.split('\n'), line);
    const text = path.length === 0 ? '' : meaningAt(path);
    const told = [
      ...(this.faults.get(line) ?? []),
      ...(text === '' ? [] : [`${path.filter((step) => step !== '-').join('.')}: ${text}`]),
    ].map((each) => {
      const part = document.createElement('div');
      part.className = 'meaning';
      part.textContent = each;
      return part;
    });
    return told.length === 0 ? null : told;
  }

  /** Marks the lines that have a fault: lines are drawn anew as they are typed. */
  private mark(view = this.view): void {
    const [, ...lines] = view.lines;
    lines.forEach((line, i) => line.classList.toggle('fault', this.faults.has(i)));
    view.textarea.setAttribute('aria-invalid', String(this.faults.size > 0));
  }

  /** Puts another text in place of this one. */
  write(text: string): void {
    if (this.view.value !== text) this.view.setOptions({ value: text });
  }

  /** Shows faults beside their lines; those of other files stand at the first. */
  tell(faults: readonly Fault[], file: string): void {
    const last = this.view.value.split('\n').length - 1;
    const found = new Map<number, string[]>();
    for (const fault of faults) {
      const line = fault.file === file ? Math.min(last, (fault.line ?? 1) - 1) : 0;
      found.set(line, [...(found.get(line) ?? []), describeFault(fault)]);
    }
    this.faults = found;
    this.mark();
  }

  /** Puts the cursor on a line, counted from 1, and looks there. */
  show(line: number): void {
    const { textarea, value, lines } = this.view;
    const before = value.split('\n').slice(0, line - 1);
    const at = before.reduce((length, each) => length + each.length + 1, 0);
    textarea.focus();
    textarea.setSelectionRange(at, at);
    lines[Math.min(lines.length - 1, line)].scrollIntoView({ block: 'nearest' });
  }

  end(): void {
    this.view.remove();
  }
}
