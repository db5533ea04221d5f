import { autocompletion, type CompletionContext, type CompletionResult } from '@codemirror/autocomplete';
import { defaultKeymap, history, historyKeymap, indentWithTab } from '@codemirror/commands';
import { yaml } from '@codemirror/lang-yaml';
import { HighlightStyle, indentOnInput, syntaxHighlighting } from '@codemirror/language';
import { type Diagnostic, lintGutter, setDiagnostics } from '@codemirror/lint';
import { EditorState } from '@codemirror/state';
import {
  drawSelection,
  EditorView,
  highlightActiveLine,
  hoverTooltip,
  keymap,
  lineNumbers,
} from '@codemirror/view';
import { tags } from '@lezer/highlight';
import { describeFault, type Fault } from '@leat/core';
import { keysAt, meaningAt, pathAt, valuesAt } from './schema.js';

const linesOf = (state: EditorState): readonly string[] => state.doc.toString().split('\n');

function completeAt(context: CompletionContext): CompletionResult | null {
  const { state, pos, explicit } = context;
  const line = state.doc.lineAt(pos);
  const before = line.text.slice(0, pos - line.from);
  const lines = linesOf(state);
  const value = /^\s*(?:-\s+)*[^:#]+:\s+(\S*)$/.exec(before);
  if (value !== null) {
    const options = valuesAt(pathAt(lines, line.number - 1)).map((label) => ({ label }));
    return options.length === 0 ? null : { from: pos - value[1].length, options };
  }
  const key = /^(\s*(?:-\s+)*)([\w-]*)$/.exec(before);
  if (key === null || (!explicit && key[2] === '')) return null;
  const blank = lines.map((each, i) => (i === line.number - 1 ? '' : each));
  const path = pathAt(blank, line.number - 1, key[1].length);
  const options = [
    ...keysAt(key[1].includes('-') && path[path.length - 1] !== '-' ? [...path, '-'] : path),
  ].map(([label, info]) => ({ label, type: 'property', apply: `${label}: `, info }));
  return options.length === 0 ? null : { from: pos - key[2].length, options };
}

const explained = hoverTooltip(({ state }, pos) => {
  const line = state.doc.lineAt(pos);
  const path = pathAt(linesOf(state), line.number - 1);
  const text = path.length === 0 ? '' : meaningAt(path);
  if (text === '') return null;
  return {
    pos: line.from + (line.text.length - line.text.trimStart().length),
    end: line.to,
    above: true,
    create: () => {
      const dom = document.createElement('div');
      dom.className = 'meaning';
      dom.textContent = `${path.filter((step) => step !== '-').join('.')}: ${text}`;
      return { dom };
    },
  };
});

const colours = HighlightStyle.define([
  { tag: tags.propertyName, color: 'var(--water)' },
  { tag: tags.definition(tags.propertyName), color: 'var(--water)' },
  { tag: tags.comment, color: 'var(--soft)', fontStyle: 'italic' },
  { tag: tags.string, color: 'var(--ink)' },
]);

/** What the page hears of its editor. */
export interface EditorHears {
  readonly onText: (text: string) => void;
  readonly onCursor: (at: number) => void;
}

/** An editor of a system file, with faults beside the line, completion and the meaning of keys. */
export class SystemEditor {
  private readonly view: EditorView;

  constructor(parent: HTMLElement, text: string, label: string, { onText, onCursor }: EditorHears) {
    this.view = new EditorView({
      parent,
      state: EditorState.create({
        doc: text,
        extensions: [
          lineNumbers(),
          history(),
          drawSelection(),
          highlightActiveLine(),
          indentOnInput(),
          yaml(),
          syntaxHighlighting(colours),
          autocompletion({ override: [completeAt] }),
          explained,
          lintGutter(),
          keymap.of([...defaultKeymap, ...historyKeymap, indentWithTab]),
          EditorView.lineWrapping,
          EditorView.contentAttributes.of({ 'aria-label': label }),
          EditorView.updateListener.of(({ docChanged, selectionSet, state }) => {
            if (docChanged) onText(state.doc.toString());
            if (selectionSet) onCursor(state.selection.main.head);
          }),
        ],
      }),
    });
    this.view.scrollDOM.tabIndex = 0;
  }

  /** Puts another text in place of this one. */
  write(text: string): void {
    const { state } = this.view;
    if (state.doc.toString() === text) return;
    this.view.dispatch({ changes: { from: 0, to: state.doc.length, insert: text } });
  }

  /** Shows faults beside their lines; those of other files stand at the first. */
  tell(faults: readonly Fault[], file: string): void {
    const { state } = this.view;
    const marks = faults.map((fault): Diagnostic => {
      const own = fault.file === file && fault.line !== undefined;
      const line = state.doc.line(Math.min(state.doc.lines, own ? (fault.line ?? 1) : 1));
      const from = Math.min(line.to, line.from + Math.max(0, (own ? (fault.column ?? 1) : 1) - 1));
      return { from, to: Math.max(from, line.to), severity: 'error', message: describeFault(fault) };
    });
    this.view.dispatch(setDiagnostics(state, marks));
  }

  /** Puts the cursor on a line and looks there. */
  show(line: number): void {
    const at = this.view.state.doc.line(Math.min(this.view.state.doc.lines, Math.max(1, line)));
    this.view.dispatch({ selection: { anchor: at.from }, scrollIntoView: true });
    this.view.focus();
  }

  end(): void {
    this.view.destroy();
  }
}
